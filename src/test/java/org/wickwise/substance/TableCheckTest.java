package org.wickwise.substance;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.wickwise.Shipped;
import org.wickwise.substance.KnownDisagreements.Explained;
import org.wickwise.substance.TableCheck.Disagreement;
import org.wickwise.text.Place;

/** The solvent table against itself; what disagrees is explained in {@code solvent-data/known-disagreements.yaml}. */
class TableCheckTest {

    private static final Path FOLDER = Path.of("solvent-data");
    private static final Path DOCUMENT = Path.of("docs/solvent-table.md");

    @Test
    void everyDisagreementIsExplainedAndEveryExplanationIsNeeded() {
        assertThat(explained().stream()
                        .map(one -> one.check() + ": " + one.solvent())
                        .collect(Collectors.toSet()))
                .isEqualTo(found(Shipped.data()).stream()
                        .map(one -> one.check() + ": " + one.solvent())
                        .collect(Collectors.toSet()));
    }

    @Test
    void theDocumentListsEveryDisagreementInItsTable() throws IOException {
        assertThat(explained()).doesNotHaveDuplicates();
        List<String> table = Files.readAllLines(DOCUMENT).stream()
                .filter(line -> line.startsWith("|"))
                .toList();
        assertThat(explained()).allSatisfy(one -> assertThat(table)
                .anyMatch(line ->
                        line.contains("| " + one.solvent() + " |") && line.contains("| " + one.check() + " |")));
    }

    /** UN GHS chapter 2.6 and 29 CFR 1910.106(a)(19): below 23, to 60, to 93; category 1 boils at 35 or below. */
    @ParameterizedTest(name = "flash {0}, boiling {1}: {2}")
    @CsvSource({
        "22.9, 35, H224",
        "22.9, 35.1, H225",
        "23, 35, H226",
        "23, 150, H226",
        "60, 150, H226",
        "60.1, 150, H227",
        "93, 200, H227",
        "93.1, 200, none"
    })
    void theFlammableCodeChangesAtTheLimitsOfTheStandard(double flash, double boiling, String code) {
        FlammabilityScheme scheme =
                Shipped.data().flammability(FlammabilityScheme.OF_HAZARD_CODES).orElseThrow();
        assertThat(scheme.of(flash, boiling)
                        .flatMap(FlammabilityScheme.LiquidClass::hazardCode)
                        .orElse("none"))
                .isEqualTo(code);
    }

    @ParameterizedTest
    @ValueSource(strings = {"64-17-5", "141-78-6", "7732-18-5", "110-54-3"})
    void aCasNumberAsRegisteredFitsItsCheckDigit(String number) {
        assertThat(TableCheck.checkDigitFits(number)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"64-17-6", "141-87-6", "7732-18-4", "110-45-3"})
    void aSlipInACasNumberDoesNotFitItsCheckDigit(String number) {
        assertThat(TableCheck.checkDigitFits(number)).isFalse();
    }

    @Test
    void everyPolarityIndexInUseIsOfThe1978Revision() {
        assertThat(Shipped.data().solvents())
                .flatExtracting(
                        solvent -> solvent.value("polarity index").map(List::of).orElse(List.of()))
                .hasSizeGreaterThan(25)
                .allMatch(value -> value.condition().contains("1978 revision"));
    }

    @Test
    void limitsInTheWrongOrderAMistypedCasNumberAndAnOlderPolarityIndexAreFound() {
        SolventData wrong = Shipped.data()
                .with(List.of(
                        ofAcetone("lower explosive limit", "12.8", OptionalDouble.of(12.8), "in air"),
                        ofAcetone("upper explosive limit", "2.5", OptionalDouble.of(2.5), "in air"),
                        ofAcetone("polarity index", "5.4", OptionalDouble.of(5.4), "1974 revision"),
                        ofAcetone("CAS number", "67-64-2", OptionalDouble.empty(), "as listed")));
        assertThat(found(wrong))
                .filteredOn(found -> found.solvent().equals("acetone"))
                .extracting(Disagreement::check)
                .containsExactly("explosive limits", "CAS check digit", "polarity index revision");
    }

    @Test
    void boilingPointsPressuresAndFlashPointsAreFoundFromTheTolerancesOfTheFileOn() {
        TableTolerances written = KnownDisagreements.read(FOLDER).tolerances();
        TableTolerances boiling = new TableTolerances(0.001, written.pressurePercent(), 0.6, 1.6);
        TableTolerances pressure = new TableTolerances(written.boilingKelvin(), 0.001, 0.6, 1.6);
        TableTolerances flash = new TableTolerances(written.boilingKelvin(), written.pressurePercent(), 0.999, 1.001);
        assertThat(checks(boiling, "boiling point against Antoine"))
                .isGreaterThan(checks(written, "boiling point against Antoine"));
        assertThat(checks(pressure, "vapour pressure against Antoine"))
                .isGreaterThan(checks(written, "vapour pressure against Antoine"));
        assertThat(checks(flash, "vapour at the flash point"))
                .isGreaterThan(checks(written, "vapour at the flash point"));
    }

    private static long checks(TableTolerances tolerances, String check) {
        return TableCheck.of(Shipped.data(), tolerances).stream()
                .filter(found -> found.check().equals(check))
                .count();
    }

    private static List<Disagreement> found(SolventData data) {
        return TableCheck.of(data, KnownDisagreements.read(FOLDER).tolerances());
    }

    private static List<Explained> explained() {
        return KnownDisagreements.read(FOLDER).explained();
    }

    private static TableValue ofAcetone(String property, String text, OptionalDouble number, String condition) {
        return new TableValue(
                "acetone",
                property,
                List.of(text),
                number,
                Map.of(),
                "none",
                condition,
                List.of(),
                "memory",
                true,
                "",
                new Place("test", 1));
    }
}
