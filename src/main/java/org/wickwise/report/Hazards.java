package org.wickwise.report;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.wickwise.substance.Additive;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.Eluent.Addition;
import org.wickwise.substance.HazardStatement;
import org.wickwise.substance.Solvent;
import org.wickwise.substance.SolventData;
import org.wickwise.substance.TableValue;

/** What a solvent or a blend can do to people and waters, by the hazard codes of every part. */
final class Hazards {

    private static final String CODES = "hazard codes";
    private static final String NOT_KNOWN = "not known here; read the safety data sheet";

    /** As the statements are numbered; a table may also say in words that there is none. */
    private static final Pattern CODE = Pattern.compile("H\\d{3}\\w*");

    /** The kinds of harm that have a letter, in the order of a legend. */
    private enum Harm {
        BURNS("F", "burns", "burns"),
        TOXIC("T", "toxic", "toxic"),
        HARMS_WITH_TIME("L", "harms with time", "harms with time"),
        SKIN_OR_EYES("S", "skin or eyes", "hurts skin or eyes"),
        LIFE_IN_WATERS("W", "life in waters", "harms life in waters"),
        UNKNOWN("?", "", "not known here");

        private final String letter;
        private final String group;
        private final String words;

        Harm(String letter, String group, String words) {
            this.letter = letter;
            this.group = group;
            this.words = words;
        }

        private static Harm of(HazardStatement statement) {
            return Stream.of(values())
                    .filter(harm -> harm.group.equals(statement.group()))
                    .findFirst()
                    .orElse(UNKNOWN);
        }
    }

    private Hazards() {}

    /** A sentence for a neat solvent; one for each part of a blend and for each of its additives. */
    static List<String> inWords(Eluent contents, SolventData data) {
        if (contents.isNeat()) {
            return List.of(inWords(contents.parts().get(0).solvent(), data));
        }
        Stream<String> parts = contents.parts().stream()
                .map(part -> "Hazards of " + part.solvent().name() + ": " + words(codes(part.solvent()), data) + ".");
        Stream<String> additives = contents.additions().stream()
                .map(Addition::additive)
                .map(additive -> "Hazards of " + additive.name() + ": " + words(codes(additive, data), data) + ".");
        return Stream.concat(parts, additives).toList();
    }

    static String inWords(Solvent solvent, SolventData data) {
        return "Hazards: " + words(codes(solvent), data) + ".";
    }

    private static String words(Optional<TableValue> codes, SolventData data) {
        return codes.isEmpty()
                ? NOT_KNOWN
                : codes.get().texts().stream()
                        .map(code ->
                                data.hazard(code).map(HazardStatement::words).orElse(code))
                        .collect(Collectors.joining(", "));
    }

    /** "F S T": a letter for each kind of harm of any part, and a question mark where one is not known. */
    static String letters(Eluent contents, SolventData data) {
        Stream<Optional<TableValue>> parts = contents.parts().stream().map(part -> codes(part.solvent()));
        Stream<Optional<TableValue>> additives =
                contents.additions().stream().map(addition -> codes(addition.additive(), data));
        return Stream.concat(parts, additives)
                .flatMap(codes -> harms(codes, data))
                .distinct()
                .sorted()
                .map(harm -> harm.letter)
                .collect(Collectors.joining(" "));
    }

    private static Stream<Harm> harms(Optional<TableValue> codes, SolventData data) {
        return codes.isEmpty()
                ? Stream.of(Harm.UNKNOWN)
                : codes.get().texts().stream()
                        .filter(text -> CODE.matcher(text).matches())
                        .map(code -> data.hazard(code).map(Harm::of).orElse(Harm.UNKNOWN));
    }

    private static Optional<TableValue> codes(Solvent solvent) {
        return solvent.value(CODES);
    }

    /** An additive that the table has as a solvent too has the codes of that. */
    private static Optional<TableValue> codes(Additive additive, SolventData data) {
        return Stream.concat(Stream.of(additive.name()), additive.also().stream())
                .flatMap(name -> data.solvent(name).stream())
                .findFirst()
                .flatMap(Hazards::codes);
    }

    /** What the letters mean. */
    static String legend() {
        return Stream.of(Harm.values())
                .map(harm -> harm.letter + " " + harm.words)
                .collect(Collectors.joining("; ", "", "; no letter: not classified"));
    }
}
