package org.wickwise.lesson;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.wickwise.lesson.RoomVapours.Vapour;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Conclusion.Caution;
import org.wickwise.substance.MolarVolume;
import org.wickwise.substance.RoomAir;
import org.wickwise.substance.Solvent;
import org.wickwise.text.Figures;
import org.wickwise.text.Numbers;
import org.wickwise.text.Place;
import org.wickwise.text.Words;

/**
 * What the air of a room would hold at the worst: every jar open, everything spilled and evaporated, the hood off. A caution,
 * never a permission.
 */
public final class AirLines {

    static final String BURNING_ALARM = "burning alarm";
    private static final String USUAL_TEMPERATURE = "temperature of a classroom";
    private static final String RESERVE = "reserve of solvent";
    private static final String RESPONSIBILITY = "responsibility";
    private static final String IDEAL_GAS =
            "ideal gas at one atmosphere, V = 0.082057 (273.15 + T); all evaporated, evenly mixed, no fresh air";

    private final LaidOutLesson laidOut;
    private final Map<Solvent, Double> ofTheClass;
    private final Optional<Reason> stated;
    private final OptionalDouble measuredCelsius;
    private final double celsius;
    private final List<String> exposureLimits;
    private final Uncovered uncovered;
    private final VapoursInWords words;
    private final ReasonedLines lines = new ReasonedLines();

    private AirLines(LaidOutLesson laidOut, Map<Solvent, Double> ofTheClass, Optional<Reason> stated) {
        this.laidOut = laidOut;
        this.ofTheClass = ofTheClass;
        this.stated = stated;
        this.exposureLimits = laidOut.data().exposureLimits();
        this.uncovered = Uncovered.of(ofTheClass.keySet(), exposureLimits);
        this.words = new VapoursInWords(laidOut.limit(BURNING_ALARM), exposureLimits);
        this.measuredCelsius =
                laidOut.lesson().room().map(Room::temperatureCelsius).orElse(OptionalDouble.empty());
        this.celsius = measuredCelsius.orElse(laidOut.value(USUAL_TEMPERATURE));
    }

    /** With everything that the lesson keeps ready, its reserve included. */
    public static List<PlanLine> of(LaidOutLesson laidOut) {
        Map<Solvent, Double> ready = new TreeMap<>(Comparator.comparing(Solvent::name));
        Supplies.of(LiquidUses.of(laidOut), laidOut)
                .millilitresOfAGroupBySolvent()
                .forEach((solvent, millilitres) ->
                        ready.put(solvent, millilitres * laidOut.groups() * laidOut.timesWith(RESERVE)));
        return new AirLines(laidOut, ready, Optional.empty()).lines();
    }

    /** With so much of each solvent in the room, in millilitres, in place of what the lesson keeps ready. */
    public static List<PlanLine> of(LaidOutLesson laidOut, Map<Solvent, Double> inTheRoom) {
        Reason stated =
                new Reason.Stated("the amounts of liquid are those of the question", Place.wholeFile("--evaporates"));
        Map<Solvent, Double> sorted = new TreeMap<>(Comparator.comparing(Solvent::name));
        sorted.putAll(inTheRoom);
        return new AirLines(laidOut, sorted, Optional.of(stated)).lines();
    }

    private List<PlanLine> lines() {
        amounts();
        if (stated.isEmpty()) {
            lines.addAll(OnlyStrips.lines(laidOut));
        }
        Optional<Room> room = laidOut.lesson().room();
        if (room.isPresent()) {
            RoomVapours inTheRoom = vapours(ofTheClass, new RoomAir(room.get().cubicMetres()));
            inTheRoom.vapours().forEach(vapour -> vapour(vapour, room.get().cubicMetres()));
            together("room", "In the room, " + cubic(room.get().cubicMetres()) + ", all vapours together", inTheRoom);
            smallestSpace(room.get());
            lines.addAll(new FreshAirLines(laidOut, inTheRoom, room.get(), uncovered).lines());
        } else {
            withoutRoom();
        }
        lines.addAll(new BenchAmountLines(laidOut, ofTheClass, amountsReason()).lines());
        lines.addAll(new DustLines(laidOut).lines());
        notCovered();
        whoDecides();
        return lines.all();
    }

    private void amounts() {
        String list = ofTheClass.entrySet().stream()
                .map(entry -> ReadyAmount.shown(entry.getValue()) + " of " + entry.getKey())
                .collect(Collectors.joining(", "));
        String text = (list.isEmpty() ? "No liquid is reckoned" : "The worst case: " + list)
                + ". All jars open, all of it evaporated, the hood off, the air still and evenly mixed at "
                + Numbers.plain(celsius, 1)
                + " degC. Near a spill and near the floor there is more vapour than that.";
        lines.add(Section.VERDICT, "air", text, amountsReason(text));
    }

    private Reason amountsReason() {
        return amountsReason("the liquids of the lesson");
    }

    private Reason amountsReason(String statement) {
        List<Reason> grounds = new ArrayList<>();
        if (stated.isPresent()) {
            grounds.add(stated.get());
        } else {
            grounds.add(laidOut.groupsStated());
            grounds.add(laidOut.limit(RESERVE).reason());
            LiquidUses.of(laidOut).forEach(use -> grounds.add(use.reason()));
        }
        return new Reason.Calculated(
                statement, "groups x what a group pours x (1 + reserve), or as asked", "by definition", grounds);
    }

    private static String cubic(double cubicMetres) {
        return Numbers.plain(cubicMetres, 3) + " m3";
    }

    private void vapour(Vapour vapour, double cubicMetres) {
        List<String> shares = new ArrayList<>();
        List<Reason> grounds = new ArrayList<>(List.of(amountsReason()));
        for (String property : properties()) {
            vapour.limit(property).ifPresent(limit -> {
                shares.add(Figures.three(vapour.share().percentOf(limit)) + " % of the " + property + " ("
                        + vapour.printed(property).orElseThrow().shown() + ")");
                grounds.add(vapour.printed(property).orElseThrow().reason());
            });
        }
        grounds.add(0, vapour.solvent().value("density").orElseThrow().reason());
        grounds.add(1, vapour.solvent().value("molar mass").orElseThrow().reason());
        if (measuredCelsius.isEmpty()) {
            grounds.add(laidOut.limit(USUAL_TEMPERATURE).reason());
        }
        String cap = "";
        if (vapour.capped()) {
            vapour.saturation().ifPresent(over -> grounds.add(over.from().reason()));
            cap = "; more does not stay in the air, which is saturated then";
        }
        String text = Words.capital(vapour.solvent().name()) + ": " + Figures.three(vapour.litres())
                + " L of vapour; in " + cubic(cubicMetres) + " that is "
                + Figures.three(vapour.share().partsPerMillion()) + " ppm"
                + (shares.isEmpty() ? "" : ", " + Words.joined(shares)) + cap + ".";
        String formula = "vapour = mL x density / molar mass x V, ppm = 1e6 x vapour / room: "
                + Numbers.plain(vapour.liquid().millilitres(), 1) + " mL x "
                + Numbers.plain(vapour.liquid().gramsPerMillilitre(), 4) + " / "
                + Numbers.plain(vapour.liquid().gramsPerMole(), 3) + " x "
                + Numbers.fixed(MolarVolume.at(celsius).litresPerMole(), 2)
                + "; per cent of a limit = 100 x ppm / limit";
        lines.reckoned(
                Section.BASIS, "vapour-" + Words.slug(vapour.solvent().name()), text, formula, IDEAL_GAS, grounds);
    }

    private RoomVapours vapours(Map<Solvent, Double> millilitres, RoomAir space) {
        return RoomVapours.of(millilitres, space, celsius, exposureLimits);
    }

    private List<String> properties() {
        List<String> properties = new ArrayList<>(List.of(RoomVapours.LOWER_EXPLOSIVE_LIMIT));
        properties.addAll(exposureLimits);
        return properties;
    }

    /** All vapours in one space: fire by the rule of Le Chatelier, people by the sum of shares. */
    private void together(String label, String where, RoomVapours vapours) {
        together(label, where, vapours, List.of());
    }

    private void together(String label, String where, RoomVapours vapours, List<Reason> also) {
        if (vapours.vapours().isEmpty()) {
            return;
        }
        List<Reason> grounds = new ArrayList<>(also);
        grounds.add(amountsReason());
        grounds.add(laidOut.limit(BURNING_ALARM).reason());
        vapours.vapours().forEach(vapour -> properties()
                .forEach(property -> vapour.printed(property).ifPresent(value -> grounds.add(value.reason()))));
        String text = where + ": " + words.fire(vapours) + " " + words.people(vapours)
                + (vapours.vapours().stream().anyMatch(Vapour::capped)
                        ? " No vapour is reckoned above what stands over its liquid."
                        : "")
                + uncovered.leftOut();
        boolean danger = words.isBurningAlarm(vapours) || vapours.worstExposure() > 1;
        lines.reckoned(
                danger ? Section.DOUBTS : Section.BASIS,
                label,
                text,
                "per cent of the limit of the mixture = 100 x sum of (ppm / lower explosive limit); E = sum of (ppm /"
                        + " exposure limit): " + VapoursInWords.terms(vapours),
                "Le Chatelier's rule, fair for vapours that are alike; 29 CFR 1910.1000(d)(2); saturated vapour: Prudent"
                        + " Practices, 1981, p. 196",
                grounds);
    }

    private void smallestSpace(Room room) {
        if (room.smallestSpaceCubicMetres().isEmpty()) {
            lines.said(
                    Section.NEXT,
                    "no-smallest-space",
                    "The smallest closed space is not given; write `smallest space cubic metres` (a cupboard, a drying box,"
                            + " a fridge), since a little spilled there is worse than much in the room.",
                    List.of());
            return;
        }
        double cubicMetres = room.smallestSpaceCubicMetres().getAsDouble();
        RoomAir space = new RoomAir(cubicMetres);
        together(
                "smallest-space",
                "In the smallest closed space, " + cubic(cubicMetres) + ", everything at once",
                vapours(ofTheClass, space));
        if (laidOut.groups() > 1) {
            together(
                    "smallest-space-group",
                    "In the smallest closed space, one group's share alone",
                    vapours(ofAGroup(), space),
                    List.of(laidOut.groupsStated()));
        }
    }

    private Map<Solvent, Double> ofAGroup() {
        Map<Solvent, Double> share = new TreeMap<>(Comparator.comparing(Solvent::name));
        ofTheClass.forEach((solvent, millilitres) -> share.put(solvent, millilitres / laidOut.groups()));
        return share;
    }

    /** Without a room there are only litres of vapour, and what they would be in rooms of a usual size. */
    private void withoutRoom() {
        String small = "small classroom";
        String large = "large classroom";
        RoomVapours inASmall = vapours(ofTheClass, new RoomAir(laidOut.value(small)));
        RoomVapours inALarge = vapours(ofTheClass, new RoomAir(laidOut.value(large)));
        lines.said(
                Section.NEXT,
                "no-room",
                "The room is not given; write `room: {cubic metres: ..., air changes per hour: ..., smallest space cubic"
                        + " metres: ...}` (length x width x height in metres). All of it makes "
                        + Figures.three(inASmall.litres()) + " L of vapour.",
                List.of(amountsReason()));
        inASmall.vapours().forEach(vapour -> vapour(vapour, laidOut.value(small)));
        together(
                "small-room",
                "In a small classroom of " + laidOut.limit(small).shown(),
                inASmall,
                List.of(laidOut.limit(small).reason()));
        together(
                "large-room",
                "In a large classroom of " + laidOut.limit(large).shown(),
                inALarge,
                List.of(laidOut.limit(large).reason()));
    }

    private void notCovered() {
        if (!uncovered.isEmpty()) {
            lines.said(
                    Section.DOUBTS,
                    "not-covered",
                    "Not covered, since the table has no number: " + uncovered.inDetail()
                            + ". That is no sign of harmlessness; look into the safety data sheet.",
                    List.of(amountsReason()));
        }
    }

    /** The last word, whatever was reckoned. */
    private void whoDecides() {
        List<Reason> grounds = new ArrayList<>();
        laidOut.plan().judgement().all(Caution.class).stream()
                .filter(caution -> caution.topic().equals(RESPONSIBILITY))
                .forEach(caution -> grounds.add(laidOut.plan().judgement().reason(caution)));
        lines.said(
                Section.SAFETY,
                "who-decides",
                "This is a caution and never a permission. Follow the safety data sheets, the local codes and the fire"
                        + " authority, and the person responsible for the room; where they differ from this page, they are"
                        + " right. Work in the hood, jars covered, no flame and no hot wire.",
                grounds);
    }
}
