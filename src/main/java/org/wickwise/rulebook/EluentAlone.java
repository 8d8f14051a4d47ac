package org.wickwise.rulebook;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.wickwise.bench.Case;
import org.wickwise.rulebook.Conclusion.Reading;
import org.wickwise.rulebook.Conclusion.SpotVerdict;
import org.wickwise.rulebook.Conclusion.StripVerdict;
import org.wickwise.strip.Strip;
import org.wickwise.substance.Eluent;
import org.wickwise.text.ProblemsFound;

/**
 * What the rules can tell of one eluent by its own strips and its own values of the table. Two cases of which they tell the
 * same conclude the same of this eluent, so one of the two need not be judged. It is there only for conclusions that hang on
 * nothing else, as {@link Locality} reads from the rules.
 */
public final class EluentAlone {

    /** With so many strips a reading may be left out as out of line, which only the rules can say. */
    private static final int TOO_MANY_STRIPS = 3;

    private final List<Rule> rules;
    private final Judgement written;
    private final Eluent eluent;
    private final boolean hangsOnGaps;
    private final Set<String> limitsSpokenOf;
    private final List<Double> numbers;
    private final ReadingThresholds thresholds;

    private EluentAlone(Locality locality, Judgement written, Eluent eluent) {
        this.rules = locality.speaking();
        this.hangsOnGaps = locality.hangsOnGaps();
        this.limitsSpokenOf = limitsIn(rules);
        this.written = written;
        this.eluent = eluent;
        this.numbers = numbers();
        this.thresholds = ReadingThresholds.of(rules, written.limits());
    }

    /** Empty where the conclusion hangs on other eluents too. */
    static Optional<EluentAlone> of(Conclusion wanted, Eluent eluent, List<Rule> rules, Judgement written) {
        boolean isWritten = EluentFacts.eluents(written.judged()).contains(eluent);
        boolean fewStrips = strips(written.judged(), eluent).size() < TOO_MANY_STRIPS;
        Locality locality = new Locality(rules, written.tried(eluent));
        return isWritten && fewStrips && locality.isAlone(wanted)
                ? Optional.of(new EluentAlone(locality, written, eluent))
                : Optional.empty();
    }

    public Eluent eluent() {
        return eluent;
    }

    /**
     * Whether what is told of one reading is the same whatever the other readings say: there is one strip, and what lies
     * between two dyes does not matter. Then readings of which one alone tells the same do so beside any other.
     */
    public boolean isToldOneByOne() {
        return !hangsOnGaps && strips(written.judged(), eluent).size() == 1;
    }

    /**
     * Equal for two cases that conclude the same of this eluent.
     *
     * @param supposed the written case with other readings, as many strips as written
     * @param limits the written ones, or with one of them otherwise
     */
    public Object told(Case supposed, Map<String, Limit> limits) {
        List<Strip> strips = strips(supposed, eluent);
        List<Object> told = new ArrayList<>(toldOf(limits));
        boolean sameNumbers = told.isEmpty();
        try {
            StripSummary summary = StripSummary.of(supposed.with(strips), verdicts(strips), limits);
            ReadingThresholds compared = sameNumbers ? thresholds : ReadingThresholds.of(rules, limits);
            compared.told(hangsOnGaps ? summary : new StripSummary(summary.movements(), List.of()), Map.of())
                    .forEach((name, reading) -> {
                        told.add(name);
                        told.add(reading.sides());
                    });
        } catch (ProblemsFound contradiction) {
            told.add("contradiction");
        }
        return told;
    }

    /** The limits that are otherwise, and on which side of every number of this eluent and of the rules they lie. */
    private List<Object> toldOf(Map<String, Limit> limits) {
        List<Object> told = new ArrayList<>();
        limits.forEach((name, limit) -> {
            if (limitsSpokenOf.contains(name) && limit.value() != written.limit(name)) {
                told.add(name);
                numbers.forEach(number -> told.add(Double.compare(limit.value(), number)));
            }
        });
        return told;
    }

    /** What was concluded of the strips as written, said of the same strips read otherwise. */
    private Set<Conclusion> verdicts(List<Strip> strips) {
        List<Strip> before = strips(written.judged(), eluent);
        Set<Conclusion> verdicts = new HashSet<>();
        for (int i = 0; i < strips.size(); i++) {
            Strip strip = strips.get(i);
            if (written.holds(new StripVerdict(before.get(i), Reading.VOID))) {
                verdicts.add(new StripVerdict(strip, Reading.VOID));
            }
            for (var dye : written.judged().dyes()) {
                if (written.holds(new SpotVerdict(before.get(i), dye, Reading.VOID))) {
                    verdicts.add(new SpotVerdict(strip, dye, Reading.VOID));
                }
            }
        }
        return verdicts;
    }

    private static List<Strip> strips(Case of, Eluent eluent) {
        return of.strips().stream()
                .filter(strip -> strip.eluent().equals(eluent))
                .toList();
    }

    private static Set<String> limitsIn(List<Rule> rules) {
        return rules.stream()
                .flatMap(rule -> rule.when().stream())
                .flatMap(said -> said.slots().stream())
                .map(SlotKind.LIMIT::matcher)
                .filter(Matcher::matches)
                .map(limit -> limit.group(1))
                .collect(Collectors.toUnmodifiableSet());
    }

    /** Every number that a limit is or may be compared with, whatever it means. */
    private List<Double> numbers() {
        Stream<Double> ofTheRules = rules.stream()
                .flatMap(rule -> rule.when().stream())
                .flatMap(said -> said.slots().stream())
                .map(SlotKind.NUMBER::matcher)
                .filter(Matcher::matches)
                .map(number -> Double.valueOf(number.group(1)));
        Stream<Double> ofTheLimits = limitsSpokenOf.stream().map(written::limit);
        Stream<Double> ofTheFacts = written.facts().stream().flatMap(this::numbersOf);
        return Stream.of(ofTheRules, ofTheLimits, ofTheFacts)
                .flatMap(all -> all)
                .distinct()
                .sorted()
                .collect(Collectors.toUnmodifiableList());
    }

    private Stream<Double> numbersOf(Object fact) {
        if (fact instanceof Fact.PropertyOf property && property.eluent().equals(eluent)) {
            return Stream.of(property.percent(), property.value().number().orElseThrow());
        } else if (fact instanceof Fact.PartOf part && part.eluent().equals(eluent)) {
            return Stream.of(part.percent());
        } else if (fact instanceof Fact.ShareOf share && share.eluent().equals(eluent)) {
            return Stream.of(share.percent());
        } else if (fact instanceof Fact.OpenFor open && open.eluent().equals(eluent)) {
            return Stream.of(open.months());
        } else if (fact instanceof Fact.FrontOf front && front.strip().eluent().equals(eluent)) {
            return Stream.of(front.millimetres());
        }
        return Stream.empty();
    }
}
