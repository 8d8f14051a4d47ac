package org.wickwise.substance;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.wickwise.text.Numbers;

/**
 * What runs up a strip or is poured through a column: one solvent or a blend, with or without additives. However it
 * was written down, the same eluent has the same name; two eluents are the same when their names are.
 *
 * @param parts the largest share first
 */
public record Eluent(String name, List<Part> parts, List<Addition> additions) implements Comparable<Eluent> {

    private static final int LARGEST_RATIO = 100;
    private static final double SHARE_TOLERANCE = 1e-3;

    /** @param percent by volume, 0 to 100 */
    public record Part(Solvent solvent, double percent) {}

    /** @param percent of the whole; empty when nobody wrote how much */
    public record Addition(Additive additive, OptionalDouble percent) {}

    /** @param parts whose percentages add up to 100 */
    public static Eluent of(List<Part> parts, List<Addition> additions) {
        List<Part> ordered = parts.stream()
                .sorted(Comparator.comparing(Part::percent).reversed().thenComparing(part -> part.solvent()
                        .name()))
                .toList();
        return new Eluent(nameOf(ordered, additions), ordered, List.copyOf(additions));
    }

    public static Eluent neat(Solvent solvent) {
        return of(List.of(new Part(solvent, 100)), List.of());
    }

    public boolean isNeat() {
        return parts.size() == 1 && additions.isEmpty();
    }

    public boolean contains(Solvent solvent) {
        return parts.stream().anyMatch(part -> part.solvent().equals(solvent));
    }

    /** The share of a solvent in per cent by volume, 0 when it is not in. */
    public double percentOf(Solvent solvent) {
        return parts.stream()
                .filter(part -> part.solvent().equals(solvent))
                .mapToDouble(Part::percent)
                .sum();
    }

    private static String nameOf(List<Part> parts, List<Addition> additions) {
        String base = parts.stream().map(part -> part.solvent().name()).collect(Collectors.joining(" + "));
        if (parts.size() > 1) {
            base += " " + ratioOf(parts);
        }
        if (additions.isEmpty()) {
            return base;
        }
        return base + " with " + additions.stream().map(Eluent::nameOf).collect(Collectors.joining(" and "));
    }

    private static String nameOf(Addition addition) {
        String amount = addition.percent().isPresent()
                ? " " + Numbers.plain(addition.percent().getAsDouble(), 3) + " %"
                : "";
        return addition.additive().name() + amount;
    }

    private static String ratioOf(List<Part> parts) {
        for (int whole = 1; whole <= LARGEST_RATIO; whole++) {
            int total = whole;
            if (parts.stream().allMatch(part -> isWhole(part.percent() * total / 100))) {
                return parts.stream()
                        .map(part -> Long.toString(Math.round(part.percent() * total / 100)))
                        .collect(Collectors.joining(":"));
            }
        }
        return parts.stream().map(part -> Numbers.plain(part.percent(), 2)).collect(Collectors.joining(":"));
    }

    private static boolean isWhole(double share) {
        return Math.round(share) > 0 && Math.abs(share - Math.round(share)) < SHARE_TOLERANCE;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Eluent eluent && name.equals(eluent.name);
    }

    @Override
    public int hashCode() {
        return name.hashCode();
    }

    @Override
    public int compareTo(Eluent other) {
        return name.compareTo(other.name);
    }

    @Override
    public String toString() {
        return name;
    }
}
