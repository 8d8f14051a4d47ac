package org.wickwise.rulebook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.stream.Stream;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Conclusion.Behaves;
import org.wickwise.rulebook.Conclusion.Between;
import org.wickwise.strip.Apart;
import org.wickwise.strip.Uncertain;

/** How far the readings behind conclusions lie from the limits that the rules compared them with. */
public final class Margins {

    private final List<Rule> rules;
    private final Judgement judgement;

    Margins(List<Rule> rules, Judgement judgement) {
        this.rules = rules;
        this.judgement = judgement;
    }

    /** The margin of each of these conclusions that a measured Rf or gap decided, the smallest first. */
    public List<Margin> of(List<Conclusion> conclusions) {
        return conclusions.stream()
                .flatMap(conclusion -> nearest(conclusion).stream())
                .sorted(Comparator.comparingDouble(Margin::uncertainties)
                        .thenComparing(margin -> margin.conclusion().statement()))
                .toList();
    }

    private Optional<Margin> nearest(Conclusion conclusion) {
        if (conclusion instanceof Behaves behaves) {
            return judgement
                    .measured(behaves.dye(), behaves.eluent())
                    .flatMap(measured -> nearest(
                            behaves,
                            measured.retardationFactor().asNumber(),
                            measured.reason(),
                            ReadingThresholds::isAboutMovements));
        }
        if (conclusion instanceof Between between) {
            return judgement.gaps().stream()
                    .flatMap(gap -> gap instanceof Apart.MeasuredGap measured ? Stream.of(measured) : Stream.of())
                    .filter(gap -> gap.eluent().equals(between.eluent())
                            && gap.ahead().equals(between.ahead())
                            && gap.behind().equals(between.behind()))
                    .findFirst()
                    .flatMap(gap -> nearest(
                            between,
                            new Uncertain(gap.gap(), gap.uncertainty()),
                            gap.reason(),
                            ReadingThresholds::isAboutGaps));
        }
        return Optional.empty();
    }

    private Optional<Margin> nearest(Conclusion conclusion, Uncertain value, Reason reading, Predicate<Said> compares) {
        Reason.Concluded reason = judgement.reason(conclusion);
        List<Margin> margins = new ArrayList<>();
        for (Reason.Argument argument : reason.arguments()) {
            rules.stream()
                    .filter(rule -> rule.id().equals(argument.ruleId()))
                    .flatMap(rule -> rule.when().stream())
                    .filter(compares)
                    .flatMap(said -> compared(said).stream())
                    .forEach(limit -> {
                        double distance = Math.abs(value.value() - limit.value());
                        margins.add(new Margin(reason, reading, limit, distance, distance / value.uncertainty()));
                    });
        }
        return margins.stream().min(Comparator.comparingDouble(Margin::uncertainties));
    }

    /** The first limit of a sentence, which the reading itself is compared with; a second one is about its chance. */
    private Optional<Limit> compared(Said said) {
        return Stream.iterate(0, i -> i < said.slots().size(), i -> i + 1)
                .filter(i -> said.sentence().slots().get(i).kind().isNumber())
                .findFirst()
                .map(i -> SlotKind.LIMIT.matcher(said.slots().get(i)))
                .filter(Matcher::matches)
                .map(matcher -> judgement.limits().get(matcher.group(1)));
    }
}
