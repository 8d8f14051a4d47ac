package org.wickwise.reason;

import java.util.List;
import org.wickwise.text.Place;

/**
 * Why a statement holds. A tree: the leaves can be checked with a ruler, a handbook or the case file. Immutable,
 * comparable, recorded when the conclusion is drawn; reports only print it.
 */
public sealed interface Reason {

    String statement();

    /** What it rests on directly; nothing for what a person checks with a ruler, a handbook or the case file. */
    default List<Reason> grounds() {
        return List.of();
    }

    /** What somebody measured or saw, with the line where it was written down. */
    record Observed(String statement, Place place) implements Reason {}

    /** What the case simply states: the column, the setting, the class of a dye. */
    record Stated(String statement, Place place) implements Reason {}

    /**
     * A value of the solvent table.
     *
     * @param sources full citations
     * @param confidence how well the value is known, in words
     */
    record Tabled(String statement, List<String> sources, String confidence) implements Reason {
        public Tabled {
            sources = List.copyOf(sources);
        }
    }

    /** A limit that an instructor may change, with the line where it stands. */
    record Limited(String statement, Place place, String source) implements Reason {}

    /** A number that was computed: the formula with its inputs filled in, and where the formula comes from. */
    record Calculated(String statement, String formula, String reference, List<Reason> grounds) implements Reason {
        public Calculated {
            grounds = List.copyOf(grounds);
        }
    }

    /** What the rules concluded; more than one rule may have said it. */
    record Concluded(String statement, List<Argument> arguments) implements Reason {
        public Concluded {
            arguments = List.copyOf(arguments);
        }

        /** What the rules went by, each once. */
        @Override
        public List<Reason> grounds() {
            return arguments.stream()
                    .flatMap(argument -> argument.grounds().stream())
                    .distinct()
                    .toList();
        }
    }

    /** What the planner chose among several sound ways, and what the others were worse at. */
    record Chosen(String statement, List<String> comparisons, List<Reason> grounds) implements Reason {
        public Chosen {
            comparisons = List.copyOf(comparisons);
            grounds = List.copyOf(grounds);
        }
    }

    /**
     * One rule that led to a conclusion.
     *
     * @param ruleId the name of the rule
     * @param place where the rule stands
     * @param because the rule's own reason, names filled in
     * @param sentences its conditions, names filled in
     * @param source what the rule rests on
     */
    record Argument(
            String ruleId, Place place, String because, List<String> sentences, String source, List<Reason> grounds) {
        public Argument {
            sentences = List.copyOf(sentences);
            grounds = List.copyOf(grounds);
        }
    }
}
