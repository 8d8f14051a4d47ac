package org.wickwise.notebook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.hipparchus.stat.descriptive.rank.Median;
import org.wickwise.notebook.Memory.RememberedSpot;
import org.wickwise.reason.Reason;
import org.wickwise.strip.RetardationFactor;
import org.wickwise.strip.Spot;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Numbers;
import org.wickwise.text.Place;

/**
 * What earlier strips say of one dye in one eluent: where it will probably lie on the next strip.
 *
 * @param retardationFactor the median of the days' medians, with the standard uncertainty of the next class's strips
 * @param strips how many strips it rests on
 * @param days on how many days they were run
 * @param lowest the lowest Rf among them
 * @param highest the highest Rf among them
 * @param mixtures what the mixtures were called
 * @param seen every spot it rests on, by date
 */
public record Recollection(
        Dye dye,
        Eluent eluent,
        RetardationFactor retardationFactor,
        int strips,
        int days,
        double lowest,
        double highest,
        List<String> mixtures,
        List<Seen> seen,
        Reason reason) {

    /**
     * One spot, beside the others of its day.
     *
     * @param distance from the median of its day, in units of the scatter within a class, the usual one or its own where that is
     *     wider
     */
    public record Seen(double retardationFactor, double distance, LocalDate date, Place place) {}

    public Recollection {
        seen = List.copyOf(seen);
    }

    /** Makes the median absolute deviation of normal values their standard deviation. */
    private static final double OF_NORMAL_VALUES = 1.4826;

    private static final int MOST_SHOWN = 12;

    /**
     * The centre is the median of the days' medians, so neither a wild strip nor a large class outweighs the rest. Two kinds
     * of scatter are told apart, each begun with the usual one, which counts as one strip, and as one class:
     * s_w^2 = (usual^2 + (n - d) (1.4826 MAD)^2)/(1 + n - d), s_b^2 = (usual^2 + sum (median of day - centre)^2)/d, and
     * u^2 = s_w^2 + s_b^2 (1 + 1/d). The usual scatter between classes is one of RM, u(Rf) = 2.3026 Rf (1 - Rf) u(RM), and so
     * vanishes at the origin and the front.
     */
    static Recollection of(Dye dye, Eluent eluent, List<RememberedSpot> spots, Scatter usual) {
        Map<LocalDate, List<Double>> byDay = spots.stream()
                .collect(Collectors.groupingBy(
                        RememberedSpot::date,
                        TreeMap::new,
                        Collectors.mapping(RememberedSpot::retardationFactor, Collectors.toList())));
        List<Double> medians = byDay.values().stream().map(Recollection::median).toList();
        double centre = median(medians);
        double within = within(byDay, usual.withinAClass());
        double between = between(medians, centre, usual.betweenClasses());
        int days = byDay.size();
        double uncertainty = Math.sqrt(within * within + between * between * (1 + 1.0 / days));
        RetardationFactor value = new RetardationFactor(centre, uncertainty);
        List<Double> all =
                spots.stream().map(RememberedSpot::retardationFactor).sorted().toList();
        List<String> mixtures =
                spots.stream().map(RememberedSpot::mixture).distinct().sorted().toList();
        return new Recollection(
                dye,
                eluent,
                value,
                spots.size(),
                days,
                all.get(0),
                all.get(all.size() - 1),
                mixtures,
                spots.stream()
                        .map(spot -> seen(spot, median(byDay.get(spot.date())), Math.max(within, usual.withinAClass())))
                        .toList(),
                reason(dye, eluent, value, spots, days, within, between, usual));
    }

    private static Seen seen(RememberedSpot spot, double medianOfItsDay, double scatter) {
        return new Seen(
                spot.retardationFactor(),
                Numbers.steady(Math.abs(spot.retardationFactor() - medianOfItsDay) / scatter),
                spot.date(),
                spot.place());
    }

    private static double within(Map<LocalDate, List<Double>> byDay, double usual) {
        List<Double> distances = new ArrayList<>();
        byDay.values().forEach(day -> {
            double middle = median(day);
            day.forEach(value -> distances.add(Math.abs(value - middle)));
        });
        double robust = OF_NORMAL_VALUES * median(distances);
        int freedom = distances.size() - byDay.size();
        return Math.sqrt((usual * usual + freedom * robust * robust) / (1 + freedom));
    }

    private static double between(List<Double> medians, double centre, double usualOfRm) {
        double usual = Math.log(10) * centre * (1 - centre) * usualOfRm;
        double squares = medians.stream()
                .mapToDouble(median -> (median - centre) * (median - centre))
                .sum();
        return Math.sqrt((usual * usual + squares) / medians.size());
    }

    private static double median(List<Double> values) {
        return new Median()
                .evaluate(values.stream().mapToDouble(Double::doubleValue).toArray());
    }

    private static Reason reason(
            Dye dye,
            Eluent eluent,
            RetardationFactor value,
            List<RememberedSpot> spots,
            int days,
            double within,
            double between,
            Scatter usual) {
        List<Reason> grounds = new ArrayList<>();
        spots.stream()
                .limit(MOST_SHOWN)
                .forEach(spot -> grounds.add(new Reason.Observed(
                        dye + " at Rf " + Numbers.fixed(spot.retardationFactor(), 2) + " in " + eluent + " on "
                                + spot.date() + (spot.how().isEmpty() ? "" : ", " + spot.how()),
                        spot.place())));
        grounds.addAll(usual.reasons());
        String more = spots.size() > MOST_SHOWN ? "; the first " + MOST_SHOWN + " strips are shown" : "";
        return new Reason.Calculated(
                "Rf of " + dye + " in " + eluent + " is remembered as " + value.shown() + " from "
                        + from(spots.size(), days),
                "median of the days' medians; u^2 = s_w^2 + s_b^2 (1 + 1/days), scatter within a class s_w = "
                        + Numbers.fixed(within, 3) + ", between classes s_b = " + Numbers.fixed(between, 3) + more,
                "analysis of variance of one factor, medians in the place of means; the usual scatter counts as one class,"
                        + " our choice",
                grounds);
    }

    private static String from(int strips, int days) {
        return strips + (strips == 1 ? " strip" : " strips") + " of " + days + (days == 1 ? " day" : " days");
    }

    /** "12 strips of 2 days". */
    public String from() {
        return from(strips, days);
    }

    /** As the spot of a strip that nobody ran. */
    public Spot.Position position() {
        return new Spot.Remembered(retardationFactor, from(), reason);
    }
}
