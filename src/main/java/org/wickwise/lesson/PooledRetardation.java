package org.wickwise.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.hipparchus.stat.descriptive.rank.Median;
import org.wickwise.lesson.GroupOutcome.PooledReading;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Limit;
import org.wickwise.strip.Outliers;
import org.wickwise.strip.RandomEffects;
import org.wickwise.strip.RetardationFactor;
import org.wickwise.strip.VarianceComponents;
import org.wickwise.text.Numbers;
import org.wickwise.text.Words;

/**
 * Rf of one dye in one eluent over the groups of a class.
 *
 * @param byGroup the groups with what each says, in their order; at least one
 * @param overall every group taken in, whatever lies far out
 * @param farOut groups whose reading does not look like the others'
 * @param withoutFarOut the same without these; empty where there are none
 * @param repeats scatter within and between groups, where some group ran repeats
 */
record PooledRetardation(
        String dye,
        String eluent,
        String phase,
        List<Of> byGroup,
        RandomEffects overall,
        List<FarOut> farOut,
        Optional<RandomEffects> withoutFarOut,
        Optional<VarianceComponents> repeats) {

    private static final int FEWEST = 3;
    private static final int MOST_GROUNDS = 60;

    /** What one group says. */
    record Of(String group, PooledReading reading) {
        double value() {
            return reading.factor().value();
        }
    }

    /** A reading that lies far from those of the other groups, and how that was found. */
    record FarOut(String group, PooledReading reading, String words, Reason reason) {}

    static PooledRetardation of(List<Of> byGroup, Map<String, Limit> limits) {
        List<FarOut> farOut =
                byGroup.size() >= limits.get("strips that outvote one").value()
                        ? farFromTheMedian(byGroup, limits.get("outlier limit"))
                        : byGroup.size() >= FEWEST
                                ? suspect(byGroup, limits.get("false alarm rate of the Grubbs test"))
                                : List.of();
        Set<String> groupsFarOut = farOut.stream().map(FarOut::group).collect(Collectors.toSet());
        List<RetardationFactor> kept = byGroup.stream()
                .filter(one -> !groupsFarOut.contains(one.group()))
                .map(one -> one.reading().factor())
                .toList();
        List<double[]> repeated = byGroup.stream()
                .map(one -> one.reading().strips().stream()
                        .mapToDouble(Double::doubleValue)
                        .toArray())
                .toList();
        boolean anyRepeat = repeated.stream().anyMatch(strips -> strips.length > 1);
        PooledReading first = byGroup.get(0).reading();
        return new PooledRetardation(
                first.dye(),
                first.eluent(),
                first.phase(),
                List.copyOf(byGroup),
                RandomEffects.of(
                        byGroup.stream().map(one -> one.reading().factor()).toList()),
                farOut,
                farOut.isEmpty() || kept.isEmpty() ? Optional.empty() : Optional.of(RandomEffects.of(kept)),
                anyRepeat && repeated.size() > 1 ? Optional.of(VarianceComponents.of(repeated)) : Optional.empty());
    }

    private static List<FarOut> farFromTheMedian(List<Of> byGroup, Limit limit) {
        List<Double> values = byGroup.stream().map(Of::value).toList();
        List<FarOut> found = new ArrayList<>();
        Outliers.Robust ofAll =
                Outliers.robust(values, byGroup.get(0).reading().factor().uncertainty());
        for (Of one : byGroup) {
            Outliers.Robust robust =
                    ofAll.withLeastScatter(one.reading().factor().uncertainty());
            double times = Numbers.steady(Math.abs(robust.modifiedZ(one.value())));
            if (times > limit.value()) {
                String words = "Rf " + Numbers.fixed(one.value(), 2) + " lies " + Numbers.fixed(times, 1)
                        + " times the usual scatter from the median " + Numbers.fixed(robust.median(), 2) + " of "
                        + values.size() + " groups";
                found.add(new FarOut(
                        one.group(),
                        one.reading(),
                        words,
                        new Reason.Calculated(
                                words,
                                "|Rf - median| / scatter = |" + Numbers.fixed(one.value(), 3) + " - "
                                        + Numbers.fixed(robust.median(), 3) + "| / "
                                        + Numbers.fixed(robust.scatter(), 3)
                                        + "; scatter = 1.4826 times the median distance from the median, "
                                        + Numbers.fixed(robust.medianDeviation(), 3)
                                        + ", and at least the reading's own u, "
                                        + Numbers.fixed(one.reading().factor().uncertainty(), 3),
                                "B. Iglewicz and D. C. Hoaglin, How to Detect and Handle Outliers, 1993, from memory",
                                grounds(byGroup, limit.reason()))));
            }
        }
        return found;
    }

    /** Of three or four groups it is only asked whether one looks wrong. */
    private static List<FarOut> suspect(List<Of> byGroup, Limit falseAlarms) {
        List<Double> values = byGroup.stream().map(Of::value).toList();
        double critical = Outliers.criticalTwoSided(values.size(), falseAlarms.value() / 100);
        List<FarOut> found = new ArrayList<>();
        for (int i = 0; i < values.size(); i++) {
            Of one = byGroup.get(i);
            double statistic = Outliers.grubbsStatistics(
                            values, one.reading().factor().uncertainty())
                    .get(i);
            if (Numbers.steady(statistic) > critical) {
                String words = "Rf " + Numbers.fixed(one.value(), 2) + " lies " + Numbers.fixed(statistic, 2)
                        + " standard deviations from the mean of " + values.size() + " groups, where "
                        + Numbers.fixed(critical, 2) + " is critical";
                found.add(new FarOut(
                        one.group(),
                        one.reading(),
                        words,
                        new Reason.Calculated(
                                words,
                                "G = |Rf - mean| / s; s is at least the reading's own u, "
                                        + Numbers.fixed(one.reading().factor().uncertainty(), 3)
                                        + "; critical value for either side",
                                "F. E. Grubbs, Technometrics 1969, 11, 1, from memory; Student's t",
                                grounds(byGroup, falseAlarms.reason()))));
            }
        }
        return found;
    }

    private static List<Reason> grounds(List<Of> byGroup, Reason... others) {
        List<Reason> grounds = new ArrayList<>();
        byGroup.stream()
                .limit(MOST_GROUNDS)
                .forEach(one -> grounds.add(new Reason.Observed(
                        "group " + one.group() + ": Rf of " + one.reading().dye() + " is "
                                + one.reading().factor().shown(),
                        one.reading().place())));
        if (byGroup.size() > MOST_GROUNDS) {
            grounds.add(new Reason.Stated(
                    (byGroup.size() - MOST_GROUNDS)
                            + " more groups, all of them in the table of readings that --csv writes",
                    byGroup.get(MOST_GROUNDS).reading().place()));
        }
        grounds.addAll(List.of(others));
        return grounds;
    }

    /** Whether a reading would not lie far out among these, by the robust distance from their median. */
    boolean wouldHold(RetardationFactor reading, Limit outlierLimit) {
        List<Double> values = byGroup.stream().map(Of::value).toList();
        double times = Outliers.robust(values, reading.uncertainty())
                .withLeastScatter(reading.uncertainty())
                .modifiedZ(reading.value());
        return Numbers.steady(Math.abs(times)) <= outlierLimit.value();
    }

    double median() {
        return new Median().evaluate(byGroup.stream().mapToDouble(Of::value).toArray());
    }

    /** Root mean square of the groups' own standard uncertainties. */
    double ownUncertainty() {
        return Math.sqrt(byGroup.stream()
                .mapToDouble(one -> Math.pow(one.reading().factor().uncertainty(), 2))
                .average()
                .orElseThrow());
    }

    String label() {
        return "pooled-" + Words.slug(eluent) + "-" + Words.slug(dye);
    }

    /** "0.33 ± 0.01 from 12 groups; ...". */
    String inWords() {
        String groups = byGroup.size() == 1 ? "1 group" : byGroup.size() + " groups";
        if (byGroup.size() == 1) {
            return "Rf " + byGroup.get(0).reading().factor().shown() + " from 1 group.";
        }
        String within = repeats.map(found ->
                        "; repeats within a group scatter by " + Numbers.fixed(Math.sqrt(found.withinVariance()), 3))
                .orElse("");
        String others = withoutFarOut
                .map(kept -> " Without "
                        + Words.joined(farOut.stream()
                                .map(out -> "group " + out.group())
                                .toList()) + ": Rf " + shown(kept) + ", between groups "
                        + Numbers.fixed(kept.between(), 3) + ".")
                .orElse("");
        return "Rf " + shown(overall) + " from " + groups + ", median " + Numbers.fixed(median(), 3)
                + "; between groups " + (overall.between() > 0 ? Numbers.fixed(overall.between(), 3) : "nothing")
                + " beyond the " + Numbers.fixed(ownUncertainty(), 3) + " of one reading" + within + "." + others;
    }

    private static String shown(RandomEffects effects) {
        return Numbers.fixed(effects.mean(), 3) + " \u00b1 " + Numbers.fixed(2 * effects.uncertainty(), 3);
    }

    Reason reason() {
        List<String> terms =
                new ArrayList<>(List.of("mean = sum w Rf / sum w with w = 1/(u^2 + between^2); between^2 = (Q - "
                        + (overall.groups() - 1) + ") / (S1 - S2/S1), Q = " + Numbers.fixed(overall.heterogeneity(), 2)
                        + " = sum of (Rf - mean)^2/u^2, S1 and S2 the sums of 1/u^2 and 1/u^4; not below 0; \u00b1 is twice the"
                        + " standard uncertainty " + Numbers.fixed(overall.uncertainty(), 4)));
        repeats.ifPresent(found -> terms.add("within a group: mean square of repeats "
                + Numbers.fixed(found.withinVariance(), 6) + " with " + found.degreesOfFreedomWithin()
                + " degrees of freedom"));
        return new Reason.Calculated(
                "Rf of " + dye + " in " + eluent + " over the class is " + shown(overall),
                String.join("; ", terms),
                "R. DerSimonian and N. Laird, Control. Clin. Trials 1986, 7, 177",
                grounds(byGroup, farOut.stream().map(FarOut::reason).toArray(Reason[]::new)));
    }
}
