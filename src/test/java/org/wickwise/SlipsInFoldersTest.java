package org.wickwise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wickwise.rulebook.Rulebook;
import org.wickwise.substance.SolventData;
import org.wickwise.substance.SolventDataReader;
import org.wickwise.text.Problem;
import org.wickwise.text.ProblemsFound;

/** One slip in a copy of the shipped rules or solvent data: it is heard, or told with its place and a way out. */
class SlipsInFoldersTest {

    private static final Path DATA = Path.of("solvent-data");
    private static final Path RULES = Path.of("rules");

    @TempDir
    private Path copy;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "stationary-phases/silica.yaml | lowest value | lowets value | `lowets value` is no end of a ladder"
                        + " | did you mean `lowest value`?",
                "stationary-phases/silica.yaml | property: eluent strength on silica | property: strength on silica"
                        + " | `strength on silica` is not a known property | did you mean `eluent strength on silica`?",
                "stationary-phases/silica.yaml | total porosity: 0.775 | '' | a stationary phase has no `total porosity`"
                        + " | add the key",
                "stationary-phases/silica.yaml | porosity: 0.775 | porosity: 77.5 | `total porosity` is 77.5"
                        + " | write the share as a number without unit",
                "stationary-phases/silica.yaml | porosity: 0.775 | porosity: 1 | `total porosity` is 1"
                        + " | write the share as a number without unit",
                "stationary-phases/silica.yaml | packed density g per mL: 0.5 | ''"
                        + " | a stationary phase has no `packed density g per mL` | add the key",
                "stationary-phases/silica.yaml | g per mL: 0.5 | g per mL: 0 | `packed density g per mL` is 0 g/mL"
                        + " | weigh what a millilitre of packed bed holds",
                "stationary-phases/silica.yaml | g per mL: 0.5 | g per mL: 500 | `packed density g per mL` is 500 g/mL"
                        + " | weigh what a millilitre of packed bed holds",
                "stationary-phases/silica.yaml | margin: 0.05 | '' | a ladder has no `margin` | add the key",
                "stationary-phases/silica.yaml | margin: 0.05 | margin: -1 | `margin` is -1 | write 0 where",
                "stationary-phases/silica.yaml | activity: 0.57 | activity: 5.7 | the adsorbent activity is 5.7"
                        + " | leave the line out",
                "stationary-phases/silica.yaml | dust: 100 | dust: 101 | `mineral percent of the dust` is 101"
                        + " | leave the line out",
                "stationary-phases/silica.yaml | mm: 100 | mm: 0 | `mm` is 0 | correct it",
                "miscibility.yaml | every brine | every brin | `brin` is no family of solvents"
                        + " | did you mean `brine`?",
                "miscibility.yaml | solvents: [ethyl acetate | solvents: [ethyl acetat"
                        + " | the solvent `ethyl acetat` is not in the table | did you mean",
                "miscibility.yaml | lesser part percent: 20 | lesser part percent: 60 | a lesser part of 60 %"
                        + " | write the share by volume",
                "solvents/hexane.yaml | use: yes | use: perhaps | `use` is `perhaps` | write yes or no",
                "families.yaml | alcohol: {aqueous: \"no\"} | alcohol: {aqueous: hardly} | `aqueous` is `hardly`"
                        + " | write yes or no",
                "solvents/hexane.yaml | unit: degC | unit: none | `boiling point` is given in none | convert the value",
                "stationary-phases/cyano-silica.yaml | strips that speak for it: [silica]"
                        + " | strips that speak for it: [silca] | `silca` is not a known stationary phase"
                        + " | did you mean `silica`?",
                "properties.yaml | margin: 0.5 | margin: 0 | the margin of polarity index is no number above 0"
                        + " | write for example",
                "properties.yaml | dielectric constant: {margin | dielectric: {margin"
                        + " | `dielectric` is not a known property | did you mean",
                "properties.yaml | [OSHA PEL, | [OHSA PEL, | `OHSA PEL` is not a known property"
                        + " | did you mean `OSHA PEL`?",
                "properties.yaml | [OSHA PEL, | [density, | `density` comes in g/mL | take it out of this list",
                "sources.yaml | seen: no | seen: partly | `seen` is `partly` | write yes, no or in part",
            })
    void a_slip_in_the_solvent_data_is_told(String file, String stands, String slip, String found, String wayOut) {
        Path folder = copied(DATA, file, stands, slip);
        assertThat(problems(() -> SolventDataReader.read(folder))).anySatisfy(problem -> {
            assertThat(problem.place().toString()).startsWith("solvent-data/" + file + ":");
            assertThat(problem.found()).isEqualTo(found);
            assertThat(problem.wayOut()).startsWith(wayOut);
        });
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "preferences.yaml | highly hazardous: 6 | highly hazardus: 6"
                        + " | `highly hazardus` is not a greenness ranking | did you mean `highly hazardous`?",
                "preferences.yaml | highly hazardous: 6 | highly hazardous: -6 | `highly hazardous` weighs -6"
                        + " | write 0 if it should not count",
                "preferences.yaml | '  unranked: 1' | '' | no burden of a solvent that is unranked"
                        + " | write 0 if it should not count",
                "preferences.yaml | '  highly hazardous: 6' | ''"
                        + " | no burden of a solvent that is highly hazardous | write 0 if it should not count",
                "preferences.yaml | step: 5 | '' | the cost of a plan has no `step` | add the key",
                "preferences.yaml | minute: 0.05 | minute: -1 | `minute` weighs -1 | write 0 if it should not count",
                "words/1-strips.yaml | {S: strip} is void | {S: stripe} is void"
                        + " | `stripe` is no kind of slot | did you mean `strip`?",
            })
    void a_slip_in_the_rules_is_told(String file, String stands, String slip, String found, String wayOut) {
        Path folder = copied(RULES, file, stands, slip);
        assertThat(problems(() -> Rulebook.read(folder, Shipped.data()))).anySatisfy(problem -> {
            assertThat(problem.place().toString()).startsWith("rules/" + file + ":");
            assertThat(problem.found()).isEqualTo(found);
            assertThat(problem.wayOut()).startsWith(wayOut);
        });
    }

    @ParameterizedTest
    @CsvSource({"true", "True", "YES"})
    void yes_may_be_written_as_editors_write_it(String yes) {
        SolventData data = SolventDataReader.read(copied(DATA, "solvents/hexane.yaml", "use: yes", "use: " + yes));
        assertThat(data.solvent("hexane").orElseThrow().value("boiling point")).isPresent();
        SolventData families = SolventDataReader.read(
                copied(DATA, "families.yaml", "water: {aqueous: \"yes\"}", "water: {aqueous: " + yes + "}"));
        assertThat(families.solvent("water").orElseThrow().aqueous()).isTrue();
    }

    @Test
    void a_source_that_was_not_seen_may_say_false() {
        SolventData data = SolventDataReader.read(copied(DATA, "sources.yaml", "seen: no", "seen: false"));
        assertThat(data.solvent("hexane")
                        .orElseThrow()
                        .value("surface tension")
                        .orElseThrow()
                        .sources())
                .containsExactly("CRC Handbook of Chemistry and Physics, from memory [not seen]");
    }

    private static List<Problem> problems(org.assertj.core.api.ThrowableAssert.ThrowingCallable reading) {
        ProblemsFound found = catchThrowableOfType(ProblemsFound.class, reading);
        assertThat(found).as("nothing was told").isNotNull();
        return found.problems();
    }

    private Path copied(Path folder, String file, String stands, String slip) {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path one : all.filter(Files::isRegularFile).toList()) {
                Path target =
                        copy.resolve(folder).resolve(folder.relativize(one).toString());
                Files.createDirectories(target.getParent());
                Files.writeString(target, Files.readString(one));
            }
            Path changed = copy.resolve(folder).resolve(file);
            String content = Files.readString(changed);
            assertThat(content).contains(stands);
            Files.writeString(changed, content.replace(stands, slip));
            return copy.resolve(folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
