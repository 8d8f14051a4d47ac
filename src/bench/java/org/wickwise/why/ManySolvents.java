package org.wickwise.why;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.wickwise.bench.Case;
import org.wickwise.bench.CaseReader;
import org.wickwise.substance.SolventData;

/**
 * An invented mixture of eight neutral dyes with every solvent of the table at hand and a blend: forty eluents. Twelve
 * strips were run, one in the blend. RM of each dye falls along a straight line with the strength of the eluent on silica and
 * scatters about it.
 */
final class ManySolvents {

    private static final int DYES = 8;

    private static final double FRONT_MILLIMETRES = 90;
    private static final double SCATTER_OF_RM = 0.05;

    /** Strengths as the lines need them, not as the table prints them. */
    private record Run(String eluent, double strength) {}

    private static final List<Run> STRIPS = List.of(
            new Run("heptane", 0.01),
            new Run("toluene", 0.22),
            new Run("chloroform", 0.26),
            new Run("dichloromethane", 0.30),
            new Run("heptane + ethyl acetate 1:1", 0.38),
            new Run("diethyl ether", 0.43),
            new Run("ethyl acetate", 0.48),
            new Run("1,4-dioxane", 0.51),
            new Run("acetonitrile", 0.52),
            new Run("acetone", 0.53),
            new Run("2-propanol", 0.60),
            new Run("methanol", 0.70));

    private ManySolvents() {}

    static Case in(SolventData data) {
        Random random = new Random(40);
        String dyes = IntStream.range(0, DYES)
                .mapToObj(dye -> "{name: " + name(dye) + ", class: neutral}")
                .collect(Collectors.joining(", "));
        String strips = STRIPS.stream()
                .map(run -> "  - {solvent: '" + run.eluent() + "', front mm: 90, travel mm: {"
                        + IntStream.range(0, DYES)
                                .mapToObj(dye -> name(dye) + ": " + travel(dye, run.strength(), random))
                                .collect(Collectors.joining(", "))
                        + "}}\n")
                .collect(Collectors.joining());
        return CaseReader.parse(
                "many-solvents.yaml",
                "title: many solvents (invented)\nmixture: {load mg: 40, dyes: [" + dyes + "]}\n"
                        + "column: {stationary phase: silica}\nsetting: research\nstrips:\n" + strips,
                data);
    }

    private static String name(int dye) {
        return "dye " + (char) ('a' + dye);
    }

    private static String travel(int dye, double strength, Random random) {
        double rm = 0.6 + 0.45 * dye - 6 * strength + SCATTER_OF_RM * random.nextGaussian();
        return String.format(Locale.ROOT, "%.1f", FRONT_MILLIMETRES / (1 + Math.pow(10, rm)));
    }
}
