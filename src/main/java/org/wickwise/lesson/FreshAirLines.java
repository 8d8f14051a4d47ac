package org.wickwise.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wickwise.lesson.RoomVapours.Vapour;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;
import org.wickwise.substance.DilutionVentilation;
import org.wickwise.substance.VapourShare;
import org.wickwise.text.Figures;
import org.wickwise.text.Numbers;
import org.wickwise.text.Words;

/** What the fresh air of a room does to vapours: how they build up in a lesson, how long they take to clear, how much it takes. */
final class FreshAirLines {

    private static final String MIXING = "mixing factor of a room";
    private static final String REFERENCE =
            "Q = K G/C, C = C0 exp(-Q t/(K V)), ACGIH, Industrial Ventilation, from memory; no control for very toxic"
                    + " vapours, and no hood's stand-in";
    private static final double LITRES_PER_CUBIC_METRE = 1000;
    private static final double MINUTES_PER_HOUR = 60;

    private final LaidOutLesson laidOut;
    private final RoomVapours vapours;
    private final Room room;
    private final Uncovered uncovered;
    private final ReasonedLines lines = new ReasonedLines();

    FreshAirLines(LaidOutLesson laidOut, RoomVapours vapours, Room room, Uncovered uncovered) {
        this.laidOut = laidOut;
        this.vapours = vapours;
        this.room = room;
        this.uncovered = uncovered;
    }

    List<PlanLine> lines() {
        if (vapours.vapours().isEmpty()) {
            return List.of();
        }
        Optional<DilutionVentilation> fresh = fresh();
        fresh.ifPresentOrElse(this::clearing, this::airUnknown);
        if (laidOut.lesson().minutes().isPresent()) {
            double hours = laidOut.lesson().minutes().getAsDouble() / MINUTES_PER_HOUR;
            fresh.ifPresent(air -> builtUp(air, hours));
            airNeeded(hours);
        } else {
            lines.said(
                    Section.NEXT,
                    "no-minutes",
                    "How fast it evaporates is not known; write `lesson minutes` to see what the air holds when all of it"
                            + " evaporates evenly in the lesson.",
                    List.of());
        }
        return lines.all();
    }

    /** Empty where nobody knows the air changes, or there are none. */
    private Optional<DilutionVentilation> fresh() {
        return room.airChangesPerHour().isPresent() && room.airChangesPerHour().getAsDouble() > 0
                ? Optional.of(new DilutionVentilation(
                        room.airChangesPerHour().getAsDouble() * room.cubicMetres(), laidOut.value(MIXING)))
                : Optional.empty();
    }

    private void airUnknown() {
        boolean none = room.airChangesPerHour().isPresent();
        lines.said(
                none ? Section.DOUBTS : Section.NEXT,
                "no-fresh-air",
                none
                        ? "The room has no fresh air: what has evaporated stays until somebody opens it."
                        : "The air changes are not given; write `air changes per hour` to see how long vapour takes to"
                                + " clear.",
                List.of(stated()));
    }

    private Reason stated() {
        String changes = room.airChangesPerHour().isPresent()
                ? ", " + Numbers.plain(room.airChangesPerHour().getAsDouble(), 2) + " air changes an hour"
                : "";
        return new Reason.Stated(
                "the room has " + Numbers.plain(room.cubicMetres(), 1) + " m3" + changes, laidOut.place());
    }

    private List<Reason> grounds() {
        List<Reason> grounds =
                new ArrayList<>(List.of(stated(), laidOut.limit(MIXING).reason()));
        laidOut.lesson()
                .minutes()
                .ifPresent(minutes -> grounds.add(new Reason.Stated(
                        "the lesson takes " + Numbers.plain(minutes, 0) + " minutes", laidOut.place())));
        return grounds;
    }

    /** From the worst case down to the burning alarm and to the exposure limits, all vapours thinning out alike. */
    private void clearing(DilutionVentilation fresh) {
        double alarm = laidOut.value(AirLines.BURNING_ALARM);
        List<String> times = new ArrayList<>();
        List<String> terms = new ArrayList<>();
        falling(fresh, vapours.percentOfLowerExplosiveLimit() / alarm, terms)
                .ifPresent(time -> times.add(time + " to the burning alarm of "
                        + laidOut.limit(AirLines.BURNING_ALARM).shown() + " of the lower explosive limit"));
        for (String list : vapours.exposureLimits()) {
            falling(fresh, vapours.sumOfShares(list), terms)
                    .ifPresent(time -> times.add(time + " to the limits of the " + list));
        }
        if (times.isEmpty()) {
            lines.reckoned(
                    Section.BASIS,
                    "clearing",
                    "Even the worst case lies neither above the burning alarm nor above the exposure limits, so no time to"
                            + " clear is reckoned; air the room all the same." + uncovered.leftOut(),
                    "t = K V/Q ln(C0/C), reckoned where C0 is above C",
                    REFERENCE,
                    withAlarm());
            return;
        }
        String text = "If all of it evaporates at once, leave the room. With "
                + Numbers.plain(room.airChangesPerHour().orElseThrow(), 2) + " air changes an hour it takes "
                + Words.joined(times) + ".";
        lines.reckoned(
                Section.BASIS,
                "clearing",
                text,
                "t = K V/Q ln(C0/C) in hours, with C0/C " + String.join(", ", terms) + "; K V/Q = "
                        + Numbers.plain(room.cubicMetres() / fresh.effectiveCubicMetresPerHour(), 3),
                REFERENCE,
                withAlarm());
    }

    private List<Reason> withAlarm() {
        List<Reason> grounds = grounds();
        grounds.add(laidOut.limit(AirLines.BURNING_ALARM).reason());
        return grounds;
    }

    /** How long until what is so many times too much is just enough; empty where it is not too much. */
    private Optional<String> falling(DilutionVentilation fresh, double times, List<String> terms) {
        if (!(times > 1)) {
            return Optional.empty();
        }
        terms.add(Figures.three(times));
        // Shares over their limits thin out alike, so that only their ratio counts.
        VapourShare end = new VapourShare(1);
        VapourShare start = new VapourShare(Math.min(times, 1e6));
        double hours = fresh.hoursToFall(start, end, vapours.air());
        return Optional.of(Figures.three(hours) + " h");
    }

    private double cubicMetresPerHour(Vapour vapour, double hours) {
        return vapour.litres() / LITRES_PER_CUBIC_METRE / hours;
    }

    /** What the air holds at the end of a lesson in which everything evaporates evenly. */
    private void builtUp(DilutionVentilation fresh, double hours) {
        double exposed = 0;
        for (String list : vapours.exposureLimits()) {
            exposed = Math.max(exposed, builtUp(fresh, hours, list));
        }
        double burning = 100 * builtUp(fresh, hours, RoomVapours.LOWER_EXPLOSIVE_LIMIT);
        double steady = 1 / -Math.expm1(-fresh.effectiveCubicMetresPerHour() * hours / room.cubicMetres());
        String text = "If all of it evaporates evenly in the lesson, the air holds "
                + Figures.three(burning) + " % of the lower explosive limit at its end, and " + Figures.three(exposed)
                + " times what the stricter exposure limits allow; if that went on, " + Figures.three(burning * steady)
                + " % and " + Figures.three(exposed * steady) + " times." + uncovered.leftOut();
        lines.reckoned(
                exposed > 1 || burning > laidOut.value(AirLines.BURNING_ALARM) ? Section.DOUBTS : Section.BASIS,
                "build-up",
                text,
                "C = K G/Q (1 - exp(-Q t/(K V))), each vapour over its limit, added up; going on: C = K G/Q",
                REFERENCE,
                withAlarm());
    }

    private double builtUp(DilutionVentilation fresh, double hours, String property) {
        return vapours.vapours().stream()
                .filter(vapour -> vapour.limit(property).isPresent())
                .mapToDouble(vapour -> fresh.builtUp(hours, cubicMetresPerHour(vapour, hours), vapours.air())
                                .partsPerMillion()
                        / vapour.limit(property).orElseThrow().partsPerMillion())
                .sum();
    }

    /** The fresh air that would keep the vapours of a lesson at the exposure limits. */
    private void airNeeded(double hours) {
        double needed = 0;
        for (String list : vapours.exposureLimits()) {
            double ofTheList = vapours.vapours().stream()
                    .filter(vapour ->
                            vapour.limit(list).isPresent() && vapour.liquid().millilitres() > 0)
                    .mapToDouble(vapour -> DilutionVentilation.toKeep(
                                    vapour.limit(list).orElseThrow(),
                                    cubicMetresPerHour(vapour, hours),
                                    laidOut.value(MIXING))
                            .cubicMetresPerHour())
                    .sum();
            needed = Math.max(needed, ofTheList);
        }
        if (needed > 0) {
            String text = "To keep it at the stricter exposure limits while it all evaporates, " + Figures.three(needed)
                    + " m3 of fresh air an hour would be needed, " + Figures.three(needed / room.cubicMetres())
                    + " air changes: "
                    + (needed / room.cubicMetres() > room.airChangesPerHour().orElse(0)
                            ? "more than the room has, so it is the hood and the lid that protect, not the window."
                            : "the room has that, but only where the air mixes; use the hood all the same.");
            lines.reckoned(
                    Section.BASIS,
                    "fresh-air",
                    text,
                    "Q = sum of K 1e6 G/C, with G the vapour of the lesson over its hours and C the exposure limit",
                    REFERENCE,
                    grounds());
        }
    }
}
