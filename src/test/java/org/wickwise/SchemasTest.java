package org.wickwise;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.wickwise.bench.CaseReader;
import org.wickwise.substance.ShelfReader;
import org.wickwise.text.Problem;
import org.wickwise.text.ProblemsFound;

/** The JSON Schemas that help an editor: every shipped file obeys its own and names it, and they know the readers' keys. */
class SchemasTest {

    private static final Path SCHEMAS = Path.of("docs/schemas");
    private static final ObjectMapper YAML = new ObjectMapper(new YAMLFactory());

    /** Which schema the files of a folder, or one file, obey. */
    private static final List<String[]> KINDS = List.of(
            new String[] {"docs/examples", "ferry-ink.*", "case"},
            new String[] {"docs/examples", ".*shelf", "shelf"},
            new String[] {"src/test/resources/published", ".*", "case"},
            new String[] {"solvent-data/solvents", ".*", "solvent"},
            new String[] {"solvent-data/stationary-phases", ".*", "stationary-phase"},
            new String[] {"solvent-data", "sources", "sources"},
            new String[] {"solvent-data", "properties", "properties"},
            new String[] {"solvent-data", "families", "families"},
            new String[] {"solvent-data", "additives", "additives"},
            new String[] {"solvent-data", "miscibility", "miscibility"},
            new String[] {"solvent-data", "hazard-statements", "hazard-statements"},
            new String[] {"solvent-data", "known-disagreements", "known-disagreements"},
            new String[] {"rules/layers", ".*", "rule-layer"},
            new String[] {"rules/words", ".*", "words"},
            new String[] {"rules/examples", ".*", "rule-examples"},
            new String[] {"rules/examples/shelves", ".*", "shelf"},
            new String[] {"rules", "limits", "limits"},
            new String[] {"rules", "preferences", "preferences"},
            new String[] {"rules", "topics", "topics"});

    record Shipped(Path file, String schema) {}

    @TestFactory
    Stream<DynamicTest> everyShippedFileObeysItsSchema() throws IOException {
        return shipped().stream()
                .map(shipped -> DynamicTest.dynamicTest(shipped.file().toString(), () -> assertThat(messages(
                                shipped.schema(), YAML.readTree(shipped.file().toFile())))
                        .isEmpty()));
    }

    @Test
    void everyShippedFileNamesItsSchema() throws IOException {
        List<String> silent = new ArrayList<>();
        for (Shipped shipped : shipped()) {
            if (shipped.file().startsWith("src")) {
                continue;
            }
            String up = "../".repeat(shipped.file().getNameCount() - 1);
            String line = "# yaml-language-server: $schema=" + up + "docs/schemas/" + shipped.schema() + ".schema.json";
            if (Files.readAllLines(shipped.file()).stream().noneMatch(line::equals)) {
                silent.add(shipped.file() + " lacks " + line);
            }
        }
        assertThat(silent).isEmpty();
    }

    @Test
    void everyShippedFileHasAKind() throws IOException {
        Set<Path> known = new TreeSet<>(shipped().stream().map(Shipped::file).toList());
        for (String folder : List.of("rules", "solvent-data", "docs")) {
            try (Stream<Path> files = Files.walk(Path.of(folder))) {
                assertThat(files.filter(file -> file.toString().endsWith(".yaml")))
                        .allMatch(known::contains);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "unknown-case-key",
                "unknown-strip-key",
                "unknown-dye-key",
                "unknown-gap-key",
                "unknown-column-key",
                "no-title",
                "no-column",
                "one-dye",
                "nine-dyes",
                "unknown-setting",
                "unknown-dye-class",
                "an-unknown-movement",
                "an-unknown-mishap",
                "an-rf-above-one",
                "front-in-centimetres",
                "an-empty-strip-list"
            })
    void whatTheReaderRefusesTheSchemaRefusesToo(String broken) throws IOException {
        JsonNode file = YAML.readTree(
                Path.of("src/test/resources/broken", broken + ".yaml").toFile());
        assertThat(messages("case", file)).isNotEmpty();
    }

    /** The reader is provoked with an unknown key; its message lists the keys it takes. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "a case | /properties | zzz: 1",
                "a mixture | /properties/mixture/properties | mixture: {zzz: 1}",
                "a dye | /properties/mixture/properties/dyes/items/anyOf/1/properties | mixture: {dyes: [{zzz: 1}]}",
                "a column | /properties/column/properties | column: {zzz: 1}",
                "a strip | /properties/strips/items/properties | strips: [{zzz: 1}]",
                "a gap | /properties/strips/items/properties/gaps/items/properties | strips: [{gaps: [{zzz: 1}]}]"
            })
    void theSchemaKnowsTheKeysOfACase(String what, String pointer, String yaml) throws IOException {
        assertThat(propertiesAt("case", pointer))
                .isEqualTo(
                        keysTold(what, () -> CaseReader.parse("case.yaml", yaml + "\n", org.wickwise.Shipped.data())));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "a shelf | /properties | zzz: 1",
                "a bottle | /properties/bottles/items/properties | bottles: [{zzz: 1}]",
                "a value | /properties/values/items/properties | values: [{zzz: 1}]"
            })
    void theSchemaKnowsTheKeysOfAShelf(String what, String pointer, String yaml, @TempDir Path folder)
            throws IOException {
        Path file = Files.writeString(folder.resolve("shelf.yaml"), yaml + "\n");
        assertThat(propertiesAt("shelf", pointer))
                .isEqualTo(keysTold(what, () -> ShelfReader.read(file, org.wickwise.Shipped.data())));
    }

    private static Set<String> keysTold(String what, Runnable reading) {
        try {
            reading.run();
        } catch (ProblemsFound told) {
            return told.problems().stream()
                    .filter(problem -> problem.found().equals("`zzz` is not a key of " + what))
                    .map(Problem::expected)
                    .findFirst()
                    .map(keys -> (Set<String>) new TreeSet<>(
                            List.of(keys.substring("one of ".length()).split(", "))))
                    .orElseThrow();
        }
        throw new AssertionError("the key zzz was taken");
    }

    private static Set<String> propertiesAt(String schema, String pointer) throws IOException {
        Set<String> names = new TreeSet<>();
        new ObjectMapper()
                .readTree(schemaFile(schema).toFile())
                .at(pointer)
                .fieldNames()
                .forEachRemaining(names::add);
        return names;
    }

    private static List<Shipped> shipped() throws IOException {
        List<Shipped> shipped = new ArrayList<>();
        for (String[] kind : KINDS) {
            try (Stream<Path> files = Files.list(Path.of(kind[0]))) {
                files.filter(file -> file.getFileName().toString().matches(kind[1] + "\\.yaml"))
                        .sorted()
                        .forEach(file -> shipped.add(new Shipped(file, kind[2])));
            }
        }
        return shipped;
    }

    private static Set<ValidationMessage> messages(String schema, JsonNode file) throws IOException {
        JsonSchema compiled = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                .getSchema(Files.readString(schemaFile(schema)));
        return compiled.validate(file);
    }

    private static Path schemaFile(String schema) {
        return SCHEMAS.resolve(schema + ".schema.json");
    }
}
