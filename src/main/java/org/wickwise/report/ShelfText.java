package org.wickwise.report;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.commons.text.WordUtils;
import org.wickwise.substance.Bottle;
import org.wickwise.substance.ShelfLadder;
import org.wickwise.substance.ShelfLadder.Rung;
import org.wickwise.substance.Solvent;
import org.wickwise.substance.SolventData;
import org.wickwise.substance.StationaryPhase;
import org.wickwise.substance.TableValue;
import org.wickwise.text.Numbers;
import org.wickwise.text.Words;

/** A shelf as a ladder, or one solvent with every value, as plain text. */
public final class ShelfText {

    private static final int WIDTH = 100;
    private static final int MOST_NAMED = 4;
    private static final String MEMORY = "memory";

    private ShelfText() {}

    /** The ladder, weakest first. */
    public static String of(ShelfLadder ladder, SolventData data, Heading heading) {
        StringBuilder text = new StringBuilder();
        text.append(heading.marked("Ladder for " + ladder.phase().name() + ", weakest first"))
                .append("\n");
        text.append(wrapped(
                "Scale: " + ladder.scale().property() + ". Values nearer than "
                        + Numbers.plain(ladder.scale().margin(), 3) + " are not ranked: "
                        + ladder.scale().because() + ".",
                0));
        for (Rung rung : ladder.rungs()) {
            String memory = rung.value().confidence().equals(MEMORY) ? ", from memory" : "";
            text.append("\n")
                    .append(heading.marked(rung.bottle().name()))
                    .append("  ")
                    .append(rung.value().shown())
                    .append(" (")
                    .append(rung.value().condition())
                    .append(memory)
                    .append(")")
                    .append(stock(rung.bottle()))
                    .append("\n");
            Hazards.inWords(rung.bottle().contents(), data).forEach(words -> text.append(wrapped(words, 2)));
            rung.differences()
                    .forEach(difference -> text.append(wrapped(
                            "By " + difference.scale() + " it would stand below "
                                    + some(difference.weakerHereStrongerThere()) + ".",
                            2)));
        }
        if (!ladder.unranked().isEmpty()) {
            text.append("\n").append(heading.marked("Not on this ladder")).append("\n");
            for (Bottle bottle : ladder.unranked()) {
                text.append(wrapped(bottle.name() + ": " + whyUnranked(bottle, ladder), 2));
                Hazards.inWords(bottle.contents(), data).forEach(words -> text.append(wrapped(words, 4)));
            }
        }
        return text.toString();
    }

    /** What a stationary phase holds, what to keep away from it, and which strips speak for it. */
    public static String of(StationaryPhase phase, Heading heading) {
        StringBuilder text = new StringBuilder();
        if (phase.ladder().isEmpty()) {
            text.append(wrapped("No table ranks solvents on " + phase.name() + "; only strips tell.", 0));
        }
        if (!phase.holds().isEmpty()) {
            text.append("\n")
                    .append(heading.marked("How " + phase.name() + " holds dyes"))
                    .append("\n");
            phase.holds().forEach((dyeClass, words) -> text.append(wrapped(dyeClass + ": " + words, 2)));
        }
        if (!phase.keepAway().isEmpty()) {
            text.append("\n").append(heading.marked("Keep away from it")).append("\n");
            phase.keepAway().forEach(words -> text.append(wrapped(words, 2)));
        }
        text.append("\n").append(heading.marked("Before the load")).append("\n");
        text.append(wrapped(phase.conditioning(), 2));
        if (!phase.stripsThatSpeakForIt().isEmpty()) {
            text.append(wrapped(
                    "Strips on " + String.join(", ", phase.stripsThatSpeakForIt())
                            + " give at least the order of neutral dyes on it.",
                    2));
        }
        return text.toString();
    }

    /** One solvent with every value, those in use first. */
    public static String of(Solvent solvent, SolventData data, Heading heading) {
        StringBuilder text = new StringBuilder();
        text.append(heading.marked(solvent.name()))
                .append("  (")
                .append(solvent.family())
                .append(solvent.also().isEmpty() ? "" : "; also " + String.join(", ", solvent.also()))
                .append(")\n");
        text.append(wrapped(Hazards.inWords(solvent, data), 0));
        for (Map.Entry<String, List<TableValue>> entry : solvent.values().entrySet()) {
            text.append("\n").append(heading.marked(entry.getKey())).append("\n");
            boolean inUse = entry.getValue().stream().anyMatch(TableValue::used);
            if (!inUse) {
                text.append(wrapped(
                        "none of these is used: " + entry.getValue().get(0).note(), 2));
            }
            entry.getValue().stream().filter(TableValue::used).forEach(value -> text.append(line(value)));
            entry.getValue().stream().filter(value -> !value.used()).forEach(value -> text.append(line(value)));
        }
        List<String> unknown = data.properties().stream()
                .filter(property -> !solvent.values().containsKey(property))
                .toList();
        if (!unknown.isEmpty()) {
            text.append("\n").append(heading.marked("Not known")).append("\n");
            text.append(wrapped(String.join(", ", unknown), 2));
        }
        return text.toString();
    }

    private static String line(TableValue value) {
        String used = value.used() ? "used: " : "also printed: ";
        String why = value.used() && !value.note().isEmpty() ? " Chosen because " + value.note() + "." : "";
        String confidence = value.confidence().equals(MEMORY) ? "from memory, not seen in print" : value.confidence();
        return wrapped(
                used + value.shown() + withoutUnit(value) + ", " + value.condition() + " [" + confidence + ": "
                        + String.join("; ", value.sources()) + "]" + why,
                2);
    }

    /** A bare number says that it has no unit on purpose. */
    private static String withoutUnit(TableValue value) {
        return value.unit().equals("none") && value.number().isPresent() ? " (no unit)" : "";
    }

    private static String stock(Bottle bottle) {
        String amount = bottle.millilitres().stream()
                .mapToObj(millilitres -> ", " + Numbers.plain(millilitres, 0) + " mL")
                .collect(Collectors.joining());
        return amount + bottle.banned().map(reason -> ", BANNED: " + reason).orElse("");
    }

    private static String whyUnranked(Bottle bottle, ShelfLadder ladder) {
        if (bottle.isHouseholdBlend()) {
            return "a blend (" + bottle.contents() + "), somewhere between its parts" + stock(bottle);
        }
        String value = bottle.contents()
                .parts()
                .get(0)
                .solvent()
                .value(ladder.scale().property())
                .map(known -> "printed as \"" + known.shown() + "\", which is no number")
                .orElse("no value is known on this scale");
        return value + stock(bottle);
    }

    private static String some(List<String> names) {
        if (names.size() <= MOST_NAMED) {
            return Words.joined(names);
        }
        return String.join(", ", names.subList(0, MOST_NAMED)) + " and " + (names.size() - MOST_NAMED) + " more";
    }

    private static String wrapped(String text, int indent) {
        String blanks = " ".repeat(indent);
        return blanks + WordUtils.wrap(text, WIDTH - indent, "\n" + blanks + "  ", false) + "\n";
    }
}
