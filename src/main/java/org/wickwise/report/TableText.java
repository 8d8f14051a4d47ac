package org.wickwise.report;

import java.util.List;
import org.apache.commons.text.WordUtils;
import org.wickwise.substance.KnownDisagreements;
import org.wickwise.substance.Shelf;
import org.wickwise.substance.ShelfLadder;
import org.wickwise.substance.SolventData;
import org.wickwise.substance.TableCheck.Disagreement;
import org.wickwise.text.Place;

/** What the solvent table says against itself, as plain text. */
public final class TableText {

    private static final int WIDTH = 100;

    private TableText() {}

    public static String of(SolventData data, List<Disagreement> found, KnownDisagreements known, Heading heading) {
        StringBuilder text = new StringBuilder();
        long values = data.solvents().stream()
                .flatMap(solvent -> solvent.values().values().stream())
                .mapToLong(List::size)
                .sum();
        text.append(
                data.solvents().size() + " solvents, " + values + " values, " + found.size() + " disagreements\n\n");
        for (Disagreement disagreement : found) {
            text.append(heading.marked(disagreement.solvent() + ", " + disagreement.check()))
                    .append("\n")
                    .append(wrapped(disagreement.text() + "."))
                    .append(
                            wrapped(
                                    known.explanationOf(disagreement)
                                            .map(because -> "Explained: " + because)
                                            .orElse(
                                                    "NOT EXPLAINED: look it up, and write it into solvent-data/known-disagreements.yaml.")));
        }
        text.append("\n")
                .append(heading.marked("Where other scales order solvents differently"))
                .append("\n");
        Shelf whole = Shelf.wholeTable(data, Place.wholeFile("solvent-data"));
        data.stationaryPhases().stream()
                .filter(phase -> phase.ladder().isPresent())
                .map(phase -> ShelfLadder.of(whole, phase, data.otherScales()))
                .forEach(ladder -> inversions(ladder, text));
        return text.toString();
    }

    private static void inversions(ShelfLadder ladder, StringBuilder text) {
        for (ShelfLadder.Rung rung : ladder.rungs()) {
            for (ShelfLadder.Difference difference : rung.differences()) {
                text.append(wrapped(ladder.phase().name() + ": " + rung.bottle().name() + " stands above "
                        + String.join(", ", difference.weakerHereStrongerThere()) + "; by " + difference.scale()
                        + " it would stand below."));
            }
        }
    }

    private static String wrapped(String text) {
        return "  " + WordUtils.wrap(text, WIDTH - 2, "\n    ", false) + "\n";
    }
}
