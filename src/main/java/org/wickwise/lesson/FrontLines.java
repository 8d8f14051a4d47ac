package org.wickwise.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wickwise.lesson.FrontSpeeds.Speed;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;
import org.wickwise.strip.Strip;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.StationaryPhase;
import org.wickwise.text.Numbers;
import org.wickwise.text.Words;

/** How long each strip takes, and when to look at it. */
final class FrontLines {

    private static final String DIP = "origin above the liquid";

    private final LaidOutLesson laidOut;
    private final FrontSpeeds speeds;
    private final ReasonedLines lines = new ReasonedLines();
    private final List<Eluent> unknown = new ArrayList<>();
    private double longest;

    FrontLines(LaidOutLesson laidOut, FrontSpeeds speeds) {
        this.laidOut = laidOut;
        this.speeds = speeds;
        laidOut.stripEluents().forEach(this::front);
    }

    List<PlanLine> lines() {
        return lines.all();
    }

    /** Until the last front has arrived, in minutes; empty where the speed of no front is known. */
    OptionalDouble longestMinutes() {
        return longest > 0 ? OptionalDouble.of(longest) : OptionalDouble.empty();
    }

    /** Eluents whose fronts nobody can tell. */
    List<Eluent> unknown() {
        return List.copyOf(unknown);
    }

    private void front(Eluent eluent) {
        StationaryPhase phase = phase(eluent);
        Optional<Speed> speed = speeds.of(eluent, phase);
        if (speed.isEmpty()) {
            unknown.add(eluent);
            lines.said(
                    Section.NEXT,
                    label(eluent),
                    Words.capital(eluent.name()) + ": how fast its front climbs on " + phase
                            + " is not known; run one strip with a clock and write `minutes` beside its front.",
                    List.of());
            return;
        }
        told(eluent, speed.get());
    }

    private void told(Eluent eluent, Speed speed) {
        double front = speeds.frontMillimetres(eluent);
        double way = front + laidOut.value(DIP);
        double minutes = speed.constant().minutesTo(way);
        double doubt = speed.doubt().value();
        double look = FrontWatch.lookAt(speed.constant(), way, laidOut);
        longest = Math.max(longest, minutes);
        String text = Words.capital(eluent.name()) + ": about " + Minutes.shown(minutes) + " to a front of "
                + Numbers.plain(front, 0) + " mm (" + Minutes.number(minutes / doubt) + " to "
                + Minutes.number(minutes * doubt) + "), " + speed.from() + ". Look at it after "
                + Minutes.shown(Math.max(0, look / doubt)) + " at the latest, and stay by it from then on.";
        lines.reckoned(
                Section.BASIS,
                label(eluent),
                text,
                "t = (front + origin above the liquid)^2 / kappa = " + Numbers.plain(way, 1) + "^2 / "
                        + Numbers.plain(speed.constant().squareMillimetresPerMinute(), 1)
                        + "; to be looked at by the shorter end, before "
                        + laidOut.limit(FrontWatch.SHARE).shown()
                        + " of the way and "
                        + laidOut.limit(FrontWatch.MINUTES_BEFORE).shown() + " before the end",
                "Lucas and Washburn; an open jar and a cut edge depart from it",
                List.of(
                        speed.reason(),
                        speed.doubt().reason(),
                        laidOut.limit(DIP).reason(),
                        laidOut.limit(FrontWatch.SHARE).reason(),
                        laidOut.limit(FrontWatch.MINUTES_BEFORE).reason()));
    }

    private static String label(Eluent eluent) {
        return "front-" + Words.slug(eluent.name());
    }

    /** What the strips in an eluent are made of: as on the strips so far, or as the column is filled. */
    private StationaryPhase phase(Eluent eluent) {
        List<Strip> strips = laidOut.plan().judged().strips();
        return strips.stream()
                .filter(strip -> strip.eluent().equals(eluent))
                .findFirst()
                .or(() -> strips.stream().findFirst())
                .map(Strip::phase)
                .orElse(laidOut.plan().judged().column().phase());
    }

    /** Where the times of strips come from, for the line that rests on the longest of them. */
    List<Reason> reasons() {
        return lines.all().stream().map(PlanLine::reason).toList();
    }
}
