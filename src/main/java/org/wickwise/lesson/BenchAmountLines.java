package org.wickwise.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.wickwise.bench.Setting;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Limit;
import org.wickwise.substance.Solvent;
import org.wickwise.text.Numbers;

/** Flammable liquid at a bench and in the room beside what is common; no fire code, which only the local one is. */
final class BenchAmountLines {

    private static final String AT_A_BENCH = "flammable liquid at a bench";
    private static final String IN_THE_ROOM = "flammable liquid in the room";
    private static final String CODE = "flammable liquid the code asks about";
    private static final String SCHEME = "UN GHS";
    private static final String DEFER = " Local code and the fire authority decide.";

    private final LaidOutLesson laidOut;
    private final Map<Solvent, Double> ofTheClass;
    private final Reason amounts;
    private final ReasonedLines lines = new ReasonedLines();

    BenchAmountLines(LaidOutLesson laidOut, Map<Solvent, Double> ofTheClass, Reason amounts) {
        this.laidOut = laidOut;
        this.ofTheClass = ofTheClass;
        this.amounts = amounts;
    }

    List<PlanLine> lines() {
        double inTheRoom = ofTheClass.entrySet().stream()
                .filter(entry -> isFlammable(entry.getKey()))
                .mapToDouble(Map.Entry::getValue)
                .sum();
        if (inTheRoom > 0) {
            boolean school = laidOut.plan().judged().setting() == Setting.SECONDARY_SCHOOL;
            compared(
                    "bench-amount",
                    "One group's share is " + ReadyAmount.shown(inTheRoom / laidOut.groups()) + " of flammable liquid",
                    laidOut.limit(AT_A_BENCH),
                    Numbers.steady(inTheRoom / laidOut.groups()) > laidOut.value(AT_A_BENCH),
                    school ? "a school aims at no more than " : "a school would aim at no more than ",
                    "hand it out step by step, from the hood");
            compared(
                    "room-amount",
                    "All together there are " + ReadyAmount.shown(inTheRoom) + " of flammable liquid",
                    laidOut.limit(IN_THE_ROOM),
                    Numbers.steady(inTheRoom) > laidOut.value(IN_THE_ROOM),
                    school ? "a school aims at no more than " : "a school would aim at no more than ",
                    "share the lesson, take smaller columns, or keep the rest in a flammables cupboard outside");
            compared(
                    "code-amount",
                    "Of flammable liquid " + ReadyAmount.shown(inTheRoom) + " are in the room",
                    laidOut.limit(CODE),
                    Numbers.steady(inTheRoom) >= laidOut.value(CODE),
                    "a fire code for laboratories begins to ask at ",
                    "ask the fire authority first");
        }
        return lines.all();
    }

    /** Whether the classes of the United Nations name it flammable, by its flash and boiling points. */
    private boolean isFlammable(Solvent solvent) {
        return solvent.number("flash point").isPresent()
                && solvent.number("boiling point").isPresent()
                && laidOut.data()
                        .flammability(SCHEME)
                        .flatMap(scheme -> scheme.of(
                                solvent.number("flash point").getAsDouble(),
                                solvent.number("boiling point").getAsDouble()))
                        .isPresent();
    }

    private void compared(String label, String amount, Limit most, boolean tooMuch, String whose, String wayOut) {
        String text = amount + "; " + whose + most.shown() + (tooMuch ? ": " + wayOut + "." : ".") + DEFER;
        List<Reason> grounds = new ArrayList<>(List.of(most.reason(), laidOut.groupsStated(), amounts));
        ofTheClass.keySet().stream().filter(this::isFlammable).forEach(solvent -> solvent.value("flash point")
                .ifPresent(value -> grounds.add(value.reason())));
        lines.reckoned(
                tooMuch ? Section.DOUBTS : Section.BASIS,
                label,
                text,
                "sum over the solvents that UN GHS classes as flammable by flash and boiling point",
                grounds);
    }
}
