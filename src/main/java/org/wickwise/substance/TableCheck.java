package org.wickwise.substance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.wickwise.substance.FlammabilityScheme.LiquidClass;
import org.wickwise.text.Numbers;

/** The solvent table checked against itself: values that physics or a standard tie together must agree. */
public final class TableCheck {

    private static final double PER_CENT = 100;

    /**
     * Two things the table says that do not fit together.
     *
     * @param check which check found it
     * @param text the values, in words
     */
    public record Disagreement(String check, String solvent, String text) {}

    private TableCheck() {}

    /** Every disagreement of the table, solvent by solvent. */
    public static List<Disagreement> of(SolventData data, TableTolerances tolerances) {
        return data.solvents().stream()
                .flatMap(solvent -> of(solvent, data, tolerances))
                .toList();
    }

    private static Stream<Disagreement> of(Solvent solvent, SolventData data, TableTolerances tolerances) {
        List<Disagreement> found = new ArrayList<>();
        boilingPoints(solvent, tolerances.boilingKelvin(), found);
        vapourPressures(solvent, tolerances.pressurePercent(), found);
        data.flammability(FlammabilityScheme.OF_HAZARD_CODES)
                .flatMap(scheme -> flammability(solvent, scheme))
                .ifPresent(found::add);
        limits(solvent).ifPresent(found::add);
        flashPoints(solvent, tolerances, found);
        casNumbers(solvent, found);
        revisions(solvent).ifPresent(found::add);
        return found.stream();
    }

    private static void boilingPoints(Solvent solvent, double kelvin, List<Disagreement> found) {
        Antoine.of(solvent).ifPresent(antoine -> numbers(solvent, "boiling point")
                .filter(value -> Math.abs(number(value) - antoine.boilingPointCelsius()) > kelvin)
                .forEach(value -> found.add(new Disagreement(
                        "boiling point against Antoine",
                        solvent.name(),
                        value.shown() + " printed, " + Numbers.fixed(antoine.boilingPointCelsius(), 1)
                                + " degC by the Antoine constants"))));
    }

    private static void vapourPressures(Solvent solvent, double percent, List<Disagreement> found) {
        Antoine.of(solvent).ifPresent(antoine -> numbers(solvent, "vapour pressure")
                .forEach(value -> celsiusIn(value.condition()).ifPresent(celsius -> {
                    double fitted = antoine.kilopascalAt(celsius);
                    if (PER_CENT * Math.abs(number(value) / fitted - 1) > percent) {
                        found.add(new Disagreement(
                                "vapour pressure against Antoine",
                                solvent.name(),
                                value.shown() + " printed at " + Numbers.plain(celsius, 0) + " degC, "
                                        + Numbers.fixed(fitted, 2) + " kPa by the Antoine constants"));
                    }
                })));
    }

    private static OptionalDouble celsiusIn(String condition) {
        return condition.startsWith("20 ")
                ? OptionalDouble.of(20)
                : condition.startsWith("25 ") ? OptionalDouble.of(25) : OptionalDouble.empty();
    }

    private static Optional<Disagreement> flammability(Solvent solvent, FlammabilityScheme scheme) {
        OptionalDouble flash = solvent.number("flash point");
        OptionalDouble boiling = solvent.number("boiling point");
        Optional<TableValue> codes = solvent.value("hazard codes");
        if (flash.isEmpty() || boiling.isEmpty() || codes.isEmpty()) {
            return Optional.empty();
        }
        String expected = scheme.of(flash.getAsDouble(), boiling.getAsDouble())
                .flatMap(LiquidClass::hazardCode)
                .orElse("none");
        String printed = codes.get().texts().stream()
                .filter(scheme.hazardCodes()::contains)
                .findFirst()
                .orElse("none");
        return expected.equals(printed)
                ? Optional.empty()
                : Optional.of(new Disagreement(
                        "flammability code",
                        solvent.name(),
                        printed + " printed, " + expected + " by a flash point of "
                                + Numbers.plain(flash.getAsDouble(), 1) + " degC and a boiling point of "
                                + Numbers.plain(boiling.getAsDouble(), 1) + " degC"));
    }

    private static Optional<Disagreement> limits(Solvent solvent) {
        OptionalDouble lower = solvent.number("lower explosive limit");
        OptionalDouble upper = solvent.number("upper explosive limit");
        boolean wrong = lower.isPresent() && upper.isPresent() && lower.getAsDouble() >= upper.getAsDouble();
        return wrong
                ? Optional.of(new Disagreement(
                        "explosive limits",
                        solvent.name(),
                        lower.getAsDouble() + " is not below " + upper.getAsDouble()))
                : Optional.empty();
    }

    private static void flashPoints(Solvent solvent, TableTolerances tolerances, List<Disagreement> found) {
        List<TableValue> lower = numbers(solvent, "lower explosive limit").toList();
        if (lower.isEmpty()) {
            return;
        }
        Antoine.of(solvent).ifPresent(antoine -> numbers(solvent, "flash point").forEach(value -> {
            double vapour = antoine.percentInAirAt(number(value));
            boolean fits = lower.stream()
                    .mapToDouble(limit -> vapour / number(limit))
                    .anyMatch(factor ->
                            factor >= tolerances.leastFlashFactor() && factor <= tolerances.mostFlashFactor());
            if (!fits) {
                found.add(new Disagreement(
                        "vapour at the flash point",
                        solvent.name(),
                        Numbers.fixed(vapour, 2) + " % of vapour at " + value.shown() + ", lower explosive limit "
                                + lower.get(0).shown()));
            }
        }));
    }

    private static void casNumbers(Solvent solvent, List<Disagreement> found) {
        solvent.values().getOrDefault("CAS number", List.of()).stream()
                .flatMap(value -> value.texts().stream())
                .filter(text -> text.matches("\\d{2,7}-\\d{2}-\\d"))
                .filter(text -> !checkDigitFits(text))
                .forEach(text -> found.add(
                        new Disagreement("CAS check digit", solvent.name(), text + " fails its check digit")));
    }

    /** The last digit of a CAS number is the sum of the others, each times its place from the right, modulo 10. */
    static boolean checkDigitFits(String casNumber) {
        String digits = casNumber.replace("-", "");
        int sum = 0;
        for (int place = 1; place < digits.length(); place++) {
            sum += place * (digits.charAt(digits.length() - 1 - place) - '0');
        }
        return sum % 10 == digits.charAt(digits.length() - 1) - '0';
    }

    private static Optional<Disagreement> revisions(Solvent solvent) {
        return solvent.value("polarity index")
                .filter(value -> !value.condition().contains("1978"))
                .map(value -> new Disagreement(
                        "polarity index revision",
                        solvent.name(),
                        value.shown() + " is in use and not of the 1978 revision (" + value.condition() + ")"));
    }

    private static Stream<TableValue> numbers(Solvent solvent, String property) {
        return solvent.values().getOrDefault(property, List.of()).stream()
                .filter(value -> value.number().isPresent());
    }

    private static double number(TableValue value) {
        return value.number().orElseThrow();
    }
}
