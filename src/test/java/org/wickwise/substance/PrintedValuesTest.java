package org.wickwise.substance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.wickwise.Shipped;

/**
 * The values in use against printed ones. Each row of {@code printed-values.csv} was written down from the source it
 * names, not from the solvent files; the tables of IEC, NFPA, CRC, Perry and Yaws were read in an open transcription.
 * A source that is known to differ, such as another revision, grade or temperature, has no row.
 */
class PrintedValuesTest {

    private static final Path ROWS = Path.of("src/test/resources/printed-values.csv");
    private static final String ON_ALUMINA = "eluent strength on alumina";
    private static final String ON_SILICA = "eluent strength on silica";

    @ParameterizedTest(name = "{0}, {1}: {2} {3} ({5})")
    @CsvFileSource(resources = "/printed-values.csv", numLinesToSkip = 1)
    void theValueInUseIsThePrintedOne(
            String solvent, String property, double value, String unit, double tolerance, String source) {
        TableValue used =
                Shipped.data().solvent(solvent).orElseThrow().value(property).orElseThrow();
        assertThat(used.number().orElseThrow())
                .as("%s of %s, printed in %s", property, solvent, source)
                .isCloseTo(value, within(tolerance));
        assertThat(used.unit()).isEqualTo(unit);
    }

    @Test
    void theRowsReachAcrossTheTable() throws IOException {
        Pattern row = Pattern.compile("(?<solvent>\"[^\"]+\"|[^,]+),(?<property>[^,]+),.+");
        Set<String> solvents = new TreeSet<>();
        Set<String> properties = new TreeSet<>();
        List<String> lines = Files.readAllLines(ROWS);
        for (String line : lines.subList(1, lines.size())) {
            Matcher matcher = row.matcher(line);
            assertThat(matcher.matches()).as(line).isTrue();
            solvents.add(matcher.group("solvent"));
            properties.add(matcher.group("property"));
        }
        assertThat(lines).hasSizeGreaterThan(130).doesNotHaveDuplicates();
        assertThat(solvents).hasSizeGreaterThanOrEqualTo(25);
        assertThat(properties).hasSizeGreaterThanOrEqualTo(10);
    }

    /** Snyder 1968, table 8-1, as printed by Skoog and Leary and by a French university page; pentane is zero. */
    @Test
    void onAluminaTheSolventsStandInTheOrderOfSnydersSeries() {
        assertThat(strengths(
                        ON_ALUMINA,
                        "pentane",
                        "cyclohexane",
                        "toluene",
                        "diethyl ether",
                        "chloroform",
                        "dichloromethane",
                        "acetone",
                        "ethyl acetate",
                        "acetonitrile",
                        "pyridine",
                        "2-propanol",
                        "ethanol",
                        "methanol"))
                .doesNotContainNull()
                .isSorted()
                .doesNotHaveDuplicates();
    }

    /** Snyder, Kirkland and Glajch 1997, normal-phase solvents (set A); three of the values by Sadek 2004. */
    @Test
    void onSilicaTheSolventsStandInTheOrderOfSetA() {
        assertThat(strengths(
                        ON_SILICA,
                        "pentane",
                        "toluene",
                        "chloroform",
                        "dichloromethane",
                        "diethyl ether",
                        "ethyl acetate",
                        "acetone",
                        "2-propanol",
                        "methanol"))
                .doesNotContainNull()
                .isSorted()
                .doesNotHaveDuplicates();
    }

    /**
     * The classes of the two series above and, from memory, of the series of Trappe 1940. Older series put the ketone above
     * the ester; on alumina Snyder's figures put acetone 0.02 below ethyl acetate, nearer than lists agree.
     */
    @ParameterizedTest
    @ValueSource(strings = {ON_ALUMINA, ON_SILICA})
    void hydrocarbonsComeBeforeEthersAndChlorinatedOnesThenEstersAndKetonesThenAlcohols(String property) {
        List<List<Double>> classes = List.of(
                strengths(property, "pentane", "hexane", "heptane"),
                strengths(property, "diethyl ether", "chloroform", "dichloromethane"),
                strengths(property, "ethyl acetate", "acetone"),
                strengths(property, "2-propanol", "methanol"));
        for (int i = 1; i < classes.size(); i++) {
            double strongestBefore = classes.get(i - 1).stream()
                    .mapToDouble(Double::doubleValue)
                    .max()
                    .orElseThrow();
            assertThat(classes.get(i)).allMatch(strength -> strength > strongestBefore);
        }
    }

    @Test
    void onSilicaTheKetoneIsStrongerThanTheEsterAndOnAluminaTheyAreTooNearToTell() {
        assertThat(strengths(ON_SILICA, "ethyl acetate", "acetone")).isSorted().doesNotHaveDuplicates();
        List<Double> onAlumina = strengths(ON_ALUMINA, "acetone", "ethyl acetate");
        assertThat(onAlumina.get(0)).isCloseTo(onAlumina.get(1), within(0.03));
    }

    /** The printed series say "large" for both; a number would let them be ranked. */
    @ParameterizedTest
    @ValueSource(strings = {"water", "acetic acid"})
    void theStrengthOfWaterAndAceticAcidIsLargeAndNoNumberOnPurpose(String name) {
        Solvent solvent = Shipped.data().solvent(name).orElseThrow();
        for (String property : List.of(ON_ALUMINA, ON_SILICA)) {
            assertThat(solvent.value(property).orElseThrow().texts()).containsExactly("large");
            assertThat(solvent.number(property)).isEmpty();
        }
    }

    private static List<Double> strengths(String property, String... solvents) {
        return Stream.of(solvents)
                .map(name -> Shipped.data().solvent(name).orElseThrow().number(property))
                .map(strength -> strength.isPresent() ? Double.valueOf(strength.getAsDouble()) : null)
                .toList();
    }
}
