package org.wickwise.rulebook;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.wickwise.bench.Case;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Conclusion.Reading;
import org.wickwise.rulebook.Conclusion.StripVerdict;
import org.wickwise.strip.Outliers;
import org.wickwise.strip.RetardationFactor;
import org.wickwise.strip.Strip;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Numbers;

/**
 * How far each reading lies from the other strips of the same dye in the same eluent on the same stationary phase. Void
 * strips are left out. Many strips outvote one by their median; of a few it is only asked whether one looks wrong. What
 * the ruler alone makes of equal strips is never called scatter, so readings of a few divisions apart are not told apart.
 */
final class ReplicateScatter {

    private static final int FEWEST = 3;
    private static final String ROBUST =
            "B. Iglewicz and D. C. Hoaglin, How to Detect and Handle Outliers, 1993, from memory";
    private static final String GRUBBS = "F. E. Grubbs, Technometrics 1969, 11, 1, from memory; Student's t";

    private final Map<String, Limit> limits;
    private final RulerReadings readings;

    private ReplicateScatter(Map<String, Limit> limits) {
        this.limits = limits;
        this.readings = new RulerReadings(limits);
    }

    /** @param verdicts what has been concluded from what happened to the strips */
    static Collection<Object> facts(Case written, Set<Conclusion> verdicts, Map<String, Limit> limits) {
        ReplicateScatter scatter = new ReplicateScatter(limits);
        Map<Eluent, Map<String, List<Strip>>> groups = written.strips().stream()
                .filter(strip -> !verdicts.contains(new StripVerdict(strip, Reading.VOID)))
                .sorted(Comparator.comparing(Strip::place))
                .collect(Collectors.groupingBy(
                        Strip::eluent,
                        TreeMap::new,
                        Collectors.groupingBy(strip -> strip.phase().name(), TreeMap::new, Collectors.toList())));
        List<Object> facts = new ArrayList<>();
        groups.values().forEach(phases -> phases.values()
                .forEach(strips -> written.dyes().forEach(dye -> facts.addAll(scatter.of(dye, strips)))));
        return facts;
    }

    /** A strip with what it says of the dye. */
    private record Read(Strip strip, RetardationFactor factor) {
        private double value() {
            return factor.value();
        }
    }

    private List<Fact> of(Dye dye, List<Strip> strips) {
        List<Read> read = strips.stream()
                .filter(strip -> strip.spotOf(dye).isPresent())
                .flatMap(
                        strip -> readings.retardationFactor(strip, dye).map(factor -> new Read(strip, factor)).stream())
                .toList();
        if (read.size() < FEWEST) {
            return List.of();
        }
        boolean many = read.size() >= limits.get("strips that outvote one").value();
        return read.stream()
                .map(one -> many ? outOfLine(dye, one, read) : suspect(dye, one, read))
                .toList();
    }

    private Fact outOfLine(Dye dye, Read one, List<Read> all) {
        Outliers.Robust robust = Outliers.robust(values(all), one.factor().uncertainty());
        double times = Numbers.steady(Math.abs(robust.modifiedZ(one.value())));
        Reason reason = new Reason.Calculated(
                "on " + one.strip() + " " + dye + " lies " + Numbers.fixed(times, 1)
                        + " times the usual scatter from the median of " + all.size() + " strips",
                "|Rf - median| / scatter = |" + Numbers.fixed(one.value(), 3) + " - "
                        + Numbers.fixed(robust.median(), 3) + "| / " + Numbers.fixed(robust.scatter(), 3)
                        + "; scatter = 1.4826 times the median distance from the median, "
                        + Numbers.fixed(robust.medianDeviation(), 3) + ", and at least the reading's own u, "
                        + Numbers.fixed(one.factor().uncertainty(), 3),
                ROBUST,
                observed(dye, all));
        return new Fact.OutOfLine(one.strip(), dye, times, reason);
    }

    private Fact suspect(Dye dye, Read one, List<Read> all) {
        Limit falseAlarms = limits.get("false alarm rate of the Grubbs test");
        double critical = Outliers.criticalTwoSided(all.size(), falseAlarms.value() / 100);
        double statistic = Outliers.grubbsStatistics(values(all), one.factor().uncertainty())
                .get(all.indexOf(one));
        double share = Numbers.steady(statistic / critical);
        List<Reason> grounds = new ArrayList<>(observed(dye, all));
        grounds.add(falseAlarms.reason());
        Reason reason = new Reason.Calculated(
                "on " + one.strip() + " " + dye + " lies " + Numbers.fixed(statistic, 3)
                        + " standard deviations from the mean of " + all.size() + " strips, where "
                        + Numbers.fixed(critical, 3) + " is critical",
                "G = |Rf - mean| / s; s is at least the reading's own u, "
                        + Numbers.fixed(one.factor().uncertainty(), 3) + "; critical value for either side",
                GRUBBS,
                grounds);
        return new Fact.SuspectReading(one.strip(), dye, share, reason);
    }

    private static List<Double> values(List<Read> all) {
        return all.stream().map(Read::value).toList();
    }

    private static List<Reason> observed(Dye dye, List<Read> all) {
        return all.stream().map(one -> RulerReadings.observed(one.strip(), dye)).toList();
    }
}
