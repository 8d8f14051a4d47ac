package org.wickwise.lesson;

import java.util.List;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Limit;
import org.wickwise.strip.FrontConstant;
import org.wickwise.strip.FrontForecast;
import org.wickwise.strip.FrontReading;
import org.wickwise.text.Figures;
import org.wickwise.text.Numbers;
import org.wickwise.text.Place;

/** A front that is being watched: two looks tell when it arrives and when to look again. */
public final class FrontWatch {

    static final String SHARE = "share of the way at which to look";
    static final String MINUTES_BEFORE = "time before the end to look";
    private static final String DIVISION = "usual ruler division";

    private FrontWatch() {}

    /**
     * When a front is to be looked at: at a share of its way or some minutes before its end, whichever comes first; in minutes
     * from first contact, 0 or more.
     *
     * @param way in millimetres above the liquid
     */
    static double lookAt(FrontConstant constant, double way, LaidOutLesson laidOut) {
        double atShare = constant.minutesTo(way * laidOut.value(SHARE) / 100);
        return Math.max(0, Math.min(atShare, constant.minutesTo(way) - laidOut.value(MINUTES_BEFORE)));
    }

    /**
     * What two looks say of the rest of the way; heights in millimetres above the liquid.
     *
     * @param end not below the later look
     * @throws IllegalArgumentException if the looks or the end are out of order
     */
    public static List<PlanLine> of(FrontReading earlier, FrontReading later, double end, LaidOutLesson laidOut) {
        FrontForecast forecast = new FrontForecast(earlier, later);
        double arrives = forecast.minutesAt(end);
        double atShare = Math.max(end * laidOut.value(SHARE) / 100, later.millimetres());
        double look = Math.max(
                later.minutes(), Math.min(forecast.minutesAt(atShare), arrives - laidOut.value(MINUTES_BEFORE)));
        Limit division = laidOut.limit(DIVISION);
        double doubt = 100 * forecast.relativeUncertainty(division.value() / 2);
        String text = "The front reaches " + Numbers.plain(end, 1) + " mm at " + Figures.three(arrives)
                + " minutes, " + Figures.three(forecast.minutesLeftTo(end))
                + " minutes after the second look. Look again at "
                + Figures.three(look) + " minutes. Its constant is "
                + Figures.three(forecast.constant().squareMillimetresPerMinute()) + " mm2/min, to about "
                + Figures.three(doubt) + " %.";
        Reason looks = new Reason.Stated(
                "the front was at " + Numbers.plain(earlier.millimetres(), 1) + " mm after "
                        + Numbers.plain(earlier.minutes(), 1) + " min and at "
                        + Numbers.plain(later.millimetres(), 1) + " mm after "
                        + Numbers.plain(later.minutes(), 1) + " min",
                Place.wholeFile("--seen"));
        ReasonedLines lines = new ReasonedLines();
        lines.reckoned(
                Section.NEXT,
                "front",
                text,
                "kappa = (z2^2 - z1^2) / (t2 - t1), t = t2 + (z^2 - z2^2) / kappa; u(kappa)/kappa = 2 u sqrt(z1^2 +"
                        + " z2^2)/(z2^2 - z1^2) with u half a division",
                "Lucas 1918; Washburn, Phys. Rev. 1921, 17, 273; JCGM 100:2008, equation 10",
                List.of(
                        looks,
                        division.reason(),
                        laidOut.limit(SHARE).reason(),
                        laidOut.limit(MINUTES_BEFORE).reason()));
        return lines.all();
    }
}
