package org.wickwise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SchemaId;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.wickwise.bench.CaseReader;
import org.wickwise.bench.Setting;
import org.wickwise.column.ColumnSizes;
import org.wickwise.column.Setup;
import org.wickwise.lesson.LessonReader;
import org.wickwise.notebook.EntryReader;
import org.wickwise.notebook.RunMishap;
import org.wickwise.plan.Planner;
import org.wickwise.rulebook.Lessons;
import org.wickwise.rulebook.OwnRules;
import org.wickwise.rulebook.Rulebook;
import org.wickwise.rulebook.Wishes;
import org.wickwise.strip.Behaviour;
import org.wickwise.strip.BlendWishes;
import org.wickwise.strip.GapLook;
import org.wickwise.strip.Mishap;
import org.wickwise.substance.DyeClass;
import org.wickwise.substance.KnownDisagreements;
import org.wickwise.substance.ShelfReader;
import org.wickwise.substance.Solvent;
import org.wickwise.substance.SolventDataReader;
import org.wickwise.substance.StationaryPhase;
import org.wickwise.text.Place;
import org.wickwise.text.Problem;
import org.wickwise.text.ProblemsFound;

/**
 * Holds the schemas that editors check with ({@code docs/schemas}) against the shipped files, against broken files, and
 * against the keys and words the readers take.
 */
class SchemasTest {

    private static final Path SCHEMAS = Path.of("docs/schemas");
    private static final Path BROKEN = Path.of("src/test/resources");
    private static final String SHARED = "shared";
    /** A part of an entry, in a file of its own because examples of rules have it too. */
    private static final String RUN = "column-run";

    /** The shipped preferences follow it too, and leave nothing out. */
    private static final String OWN_PREFERENCES = "own-preferences";

    private static final List<Path> FOLDERS =
            List.of(Path.of("docs/examples"), Path.of("rules"), Path.of("solvent-data"), Shipped.PUBLISHED);
    private static final ObjectMapper YAML = new ObjectMapper(new YAMLFactory());
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final JsonSchemaFactory FACTORY = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012);

    /** @param files a glob; the first row that fits a file says which schema it follows */
    record Follows(String files, String schema) {}

    private static final List<Follows> TABLE = List.of(
            new Follows("docs/examples/*-rules/examples/*.yaml", "rule-examples"),
            new Follows("docs/examples/*-rules/limits.yaml", "own-limits"),
            new Follows("docs/examples/*-rules/switched-off.yaml", "switched-off"),
            new Follows("docs/examples/*-rules/*.yaml", "own-rules"),
            new Follows("docs/examples/notebook/*.yaml", "notebook-entry"),
            new Follows("docs/examples/*shelf.yaml", "shelf"),
            new Follows("docs/examples/*-{lesson,class}.yaml", "lesson"),
            new Follows("docs/examples/*-run.yaml", "notebook-entry"),
            new Follows("docs/examples/*.yaml", "case"),
            new Follows("docs/published/*.yaml", "case"),
            new Follows("rules/examples/shelves/*.yaml", "shelf"),
            new Follows("rules/examples/*.yaml", "rule-examples"),
            new Follows("rules/layers/*.yaml", "rule-layer"),
            new Follows("rules/words/*.yaml", "words"),
            new Follows("rules/blends.yaml", "blends"),
            new Follows("rules/column-sizes.yaml", "column-sizes"),
            new Follows("rules/lessons.yaml", "lessons"),
            new Follows("rules/limits.yaml", "limits"),
            new Follows("rules/preferences.yaml", "preferences"),
            new Follows("rules/topics.yaml", "topics"),
            new Follows("solvent-data/solvents/*.yaml", "solvent"),
            new Follows("solvent-data/stationary-phases/*.yaml", "stationary-phase"),
            new Follows("solvent-data/additives.yaml", "additives"),
            new Follows("solvent-data/families.yaml", "families"),
            new Follows("solvent-data/flammability.yaml", "flammability"),
            new Follows("solvent-data/hazard-statements.yaml", "hazard-statements"),
            new Follows("solvent-data/known-disagreements.yaml", "known-disagreements"),
            new Follows("solvent-data/miscibility.yaml", "miscibility"),
            new Follows("solvent-data/properties.yaml", "properties"),
            new Follows("solvent-data/sources.yaml", "sources"));

    @TestFactory
    Stream<DynamicTest> everyShippedFileFollowsItsSchema() {
        return shippedFiles().stream()
                .map(file ->
                        DynamicTest.dynamicTest(file.toString(), () -> assertThat(errors(schemaOf(file), yaml(file)))
                                .isEmpty()));
    }

    @Test
    void everyShippedFileNamesItsSchema() throws IOException {
        List<String> silent = new ArrayList<>();
        for (Path file : shippedFiles()) {
            String up = "../".repeat(file.getNameCount() - 1);
            String line = "# yaml-language-server: $schema=" + up + SCHEMAS + "/" + schemaOf(file) + ".schema.json";
            if (!file.startsWith("src") && !Files.readAllLines(file).contains(line)) {
                silent.add(file + " lacks " + line);
            }
        }
        assertThat(silent).isEmpty();
    }

    @TestFactory
    Stream<DynamicTest> noSchemaTakesAnUnknownKey() {
        return TABLE.stream()
                .flatMap(row ->
                        shippedFiles().stream()
                                .filter(file -> schemaOf(file).equals(row.schema()))
                                .findFirst()
                                .stream())
                .distinct()
                .map(file -> DynamicTest.dynamicTest(schemaOf(file), () -> {
                    JsonNode changed = ((ObjectNode) yaml(file)).put("zzz", 1);
                    assertThat(errors(schemaOf(file), changed)).hasSize(1);
                }));
    }

    @Test
    void everySchemaIsForSomeFiles() {
        Set<String> inTable = TABLE.stream().map(Follows::schema).collect(Collectors.toCollection(TreeSet::new));
        inTable.add(SHARED);
        inTable.add(RUN);
        inTable.add(OWN_PREFERENCES);
        assertThat(schemaNames()).isEqualTo(inTable);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "a-bed-of-zero",
                "a-blend-on-the-shelf",
                "a-blend-without-shares",
                "a-decimal-comma-in-braces",
                "a-front-and-no-spots",
                "a-front-of-eight-point-two",
                "a-front-of-five-metres",
                "a-front-of-zero",
                "a-gap-without-a-dye-behind",
                "a-gap-without-looks",
                "a-list-instead-of-keys",
                "a-mishap-outside-a-list",
                "a-negative-bore",
                "a-negative-front",
                "a-negative-travel",
                "a-plus-in-a-dye-name",
                "a-ruler-of-fifty-millimetres",
                "a-sentence-instead-of-keys",
                "a-share-of-one-solvent",
                "a-shelf-of-one-word",
                "a-solvent-name-with-a-comma-in-braces",
                "a-solvent-with-a-short-name-inside",
                "a-strip-of-one-word",
                "an-empty-strip-list",
                "an-empty-title",
                "an-rf-above-one",
                "an-rf-in-hundredths",
                "an-unknown-gap-word",
                "an-unknown-mishap",
                "an-unknown-movement",
                "an-unknown-solvent",
                "an-unknown-solvent-on-the-shelf",
                "bore-in-words",
                "brackets-in-brackets",
                "column-is-a-word",
                "dyes-in-a-sentence",
                "fades-perhaps",
                "front-in-centimetres",
                "many-mistakes-at-once",
                "misspelt-case-key",
                "misspelt-dyes",
                "misspelt-front",
                "misspelt-looks",
                "misspelt-mixture",
                "misspelt-solvent",
                "misspelt-stationary-phase",
                "misspelt-travel",
                "mixture-is-a-word",
                "nine-dyes",
                "no-column",
                "no-dye-name",
                "no-mixture",
                "no-setting",
                "no-solvent",
                "no-stationary-phase",
                "no-strips",
                "no-title",
                "not-seen-is-a-word",
                "one-dye",
                "one-strip-without-its-dash",
                "replicate-zero",
                "travel-in-words",
                "travel-of-two-numbers",
                "travel-with-a-decimal-comma",
                "travel-with-its-unit",
                "travel-without-a-front",
                "travel-without-names",
                "unknown-case-key",
                "unknown-column-key",
                "unknown-dye-class",
                "unknown-dye-key",
                "unknown-gap-key",
                "unknown-mixture-key",
                "unknown-phase-on-a-strip",
                "unknown-setting",
                "unknown-stationary-phase",
                "unknown-strip-key"
            })
    void aBrokenCaseIsRefused(String name) {
        assertThat(errors("case", yaml(BROKEN.resolve("broken/" + name + ".yaml"))))
                .isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "a-bottle-of-nothing",
                "a-date-in-another-order",
                "a-household-bottle-without-a-name",
                "a-negative-amount",
                "a-negative-price",
                "a-price-in-words",
                "a-property-nobody-knows",
                "a-solvent-nobody-knows",
                "a-value-in-another-unit",
                "a-value-without-a-source",
                "a-value-without-unit-and-condition",
                "an-unknown-bottle-key"
            })
    void aBrokenShelfIsRefused(String name) {
        assertThat(errors("shelf", yaml(BROKEN.resolve("broken-shelves/" + name + ".yaml"))))
                .isNotEmpty();
    }

    /** One slip in a shipped file: what stands there, and what somebody wrote instead. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "rules/layers/1-reading.yaml | - rule: short-run | - rule: Short run",
                "rules/layers/1-reading.yaml | then: [S is usable] | then: []",
                "rules/layers/1-reading.yaml | when: [\"S went wrong: jar left open\"] | when: [{S went wrong: jar}]",
                "rules/limits.yaml | value: 0.05, unit | value: low, unit",
                "rules/limits.yaml | lowest: 0.01, | ''",
                "rules/blends.yaml | 19:1 | 19 to 1",
                "rules/lessons.yaml | lines: [fitness] | lines: []",
                "rules/blends.yaml | from: 0.2 | from: low",
                "rules/preferences.yaml | - cost | - costs",
                "rules/preferences.yaml | hazardous: 3 | dangerous: 3",
                "rules/preferences.yaml | highly hazardous: 6 | highly hazardous: -6",
                "rules/preferences.yaml | '  unranked: 1' | ''",
                "rules/preferences.yaml | '  not listed: 1' | ''",
                "rules/preferences.yaml | step: 5 | ''",
                "rules/preferences.yaml | minute: 0.05 | minute: -1",
                "rules/words/1-strips.yaml | {S: strip} is void | {S: stripe} is void",
                "rules/examples/1-reading.yaml | setting: college | setting: colledge",
                "rules/examples/6-cautions.yaml | silent: never | silent: always",
                "solvent-data/solvents/water.yaml | unit: degC | unit: degF",
                "solvent-data/solvents/water.yaml | confidence: memory | confidence: hearsay",
                "solvent-data/solvents/water.yaml | boiling point: | boiling pont:",
                "solvent-data/solvents/water.yaml | - value: 9.0 | - use: yes\\n      value: 9.0",
                "solvent-data/solvents/water.yaml | family: water | family: waters",
                "solvent-data/stationary-phases/silica.yaml | lowest value | lowest",
                "solvent-data/stationary-phases/silica.yaml | 0.775 | 77.5",
                "solvent-data/stationary-phases/silica.yaml | 0.775 | 1",
                "solvent-data/stationary-phases/silica.yaml | 'total porosity: 0.775' | ''",
                "solvent-data/stationary-phases/silica.yaml | g per mL: 0.5 | g per mL: 500",
                "solvent-data/stationary-phases/silica.yaml | 'packed density g per mL: 0.5' | ''",
                "solvent-data/stationary-phases/silica.yaml | '  margin: 0.05' | ''",
                "solvent-data/miscibility.yaml | every brine | every brin",
                "solvent-data/hazard-statements.yaml | group: burns | group: hot",
                "solvent-data/flammability.yaml | flash at most: 93 | flash at mots: 93",
                "solvent-data/known-disagreements.yaml | boiling point K: 1 | boiling point K: 0",
                "solvent-data/properties.yaml | margin: 0.5 | margin: 0",
                "solvent-data/properties.yaml | [OSHA PEL, NIOSH REL] | [OSHA PEL, MAK]",
                "solvent-data/sources.yaml | seen: no | seen: perhaps",
                "solvent-data/families.yaml | aqueous | watery",
                "solvent-data/additives.yaml | kind: acid | kin: acid",
            })
    void aSlipInAShippedFileIsRefused(Path file, String stands, String slip) throws IOException {
        String content = Files.readString(file);
        String changed = content.replace(stands, slip.replace("\\n", "\n"));
        assertThat(changed).isNotEqualTo(content);
        assertThat(errors(schemaOf(file), YAML.readTree(changed))).isNotEmpty();
    }

    /** In own preferences whole groups may be left out; the shipped ones leave nothing out. */
    @ParameterizedTest
    @ValueSource(strings = {"choose by: [steps, cost]", "tails to wait for: [3]", "{}"})
    void preferencesOfOnesOwnMayLeaveOutWhatStaysAsShipped(String written, @TempDir Path own) throws IOException {
        Files.writeString(own.resolve("preferences.yaml"), written + "\n");
        assertThatCode(() -> Rulebook.read(Path.of("rules"), Optional.of(own), Shipped.data()))
                .doesNotThrowAnyException();
        assertThat(errors(OWN_PREFERENCES, YAML.readTree(written))).isEmpty();
        assertThat(errors("preferences", YAML.readTree(written))).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"cost of a plan: {step: 1}", "choose by: [beauty]", "tails to wait for: [7]", "tails: [2]"})
    void aSlipInPreferencesOfOnesOwnIsRefused(String written) throws IOException {
        assertThat(errors(OWN_PREFERENCES, YAML.readTree(written))).isNotEmpty();
    }

    /** What the program reads needs no underlining. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "title: 2026",
                "setting: research",
                "date: 2026-11-24",
                "shelf: []",
                "shelf: [Heptane, thf, EtOAc]",
                "shelf: evening-shelf.yaml",
                "strips on: Silica Gel",
                "mixture: {dyes: [1, 2]}",
                "mixture: {dyes: [red, {name: blue, note: 7}], fades in light: true}",
                "mixture: {dyes: [red, blue], fades in light: Yes}",
                "{shelf: evening-shelf.yaml, strips: [{solvent: window spirit, not seen: [red, blue]}]}",
                "strips: [{solvent: ethanol / water 1:1 with salt and 2 % soda, Rf: {red: 0}}]",
                "strips: [{solvent: water, went wrong: [spots overloaded]}]",
                "strips: [{solvent: water, moves: {red + blue: runs ahead}, replicate: 2, ruler mm: 0.5}]"
            })
    void aCaseMayAlsoSay(String line) throws IOException {
        ObjectNode written = (ObjectNode) yaml(Shipped.DEMO);
        written.setAll((ObjectNode) YAML.readTree(line));
        assertThat(errors("case", written)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "date: last autumn",
                "date: 2025-13-01",
                "group: []",
                "strips: none",
                "strips: [{solvent: ethanol, front mm: 7.4}]",
                "mixture: {dyes: [straw]}",
                "strips on: silicone"
            })
    void aSlipInAnEntryIsRefused(String line) throws IOException {
        ObjectNode written =
                (ObjectNode) yaml(Path.of("docs/examples/notebook/2025-11-04-cancelling-ink-group-1.yaml"));
        assertThat(errors("notebook-entry", written)).isEmpty();
        written.setAll((ObjectNode) YAML.readTree(line));
        assertThat(errors("notebook-entry", written)).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "poured: []",
                "poured: [{eluent: ethanol}]",
                "fractions: [{mL: 0}]",
                "fractions: [{mL: 7, absorbance: {straw: 7}}]",
                "fractions: [{mL: 7, diluted: 0.5}]",
                "pools: [{fractions: [0], dry mg: 1}]",
                "went wrong: [bed craked]",
                "load: {mL: 1}"
            })
    void aSlipInARunIsRefused(String line) throws IOException {
        ObjectNode written = (ObjectNode) yaml(Path.of("docs/examples/ferry-ink-run.yaml"));
        assertThat(errors("notebook-entry", written)).isEmpty();
        ((ObjectNode) written.get("run")).setAll((ObjectNode) YAML.readTree(line));
        assertThat(errors("notebook-entry", written)).isNotEmpty();
    }

    @TestFactory
    Stream<DynamicTest> everySchemaIsOneItself() {
        JsonSchema ofSchemas = FACTORY.getSchema(SchemaLocation.of(SchemaId.V202012));
        return schemaNames().stream()
                .map(name -> DynamicTest.dynamicTest(name, () -> {
                    assertThat(ofSchemas.validate(schema(name))).isEmpty();
                    assertThat(schema(name).path("$id").asText()).isEqualTo(name + ".schema.json");
                }));
    }

    @TestFactory
    Stream<DynamicTest> everyKeyIsDescribedAndEveryGroupOfKeysIsClosed() {
        return schemaNames().stream()
                .map(name -> DynamicTest.dynamicTest(name, () -> {
                    List<String> found = new ArrayList<>();
                    examine(schema(name), "", found);
                    assertThat(found).isEmpty();
                }));
    }

    private static void examine(JsonNode schema, String where, List<String> found) {
        if (schema.path("properties").isObject()
                && schema.path("type").asText().equals("object")
                && !schema.path("additionalProperties").toString().equals("false")) {
            found.add(where + " takes any key");
        }
        for (Map.Entry<String, JsonNode> keyword : schema.properties()) {
            boolean keys = keyword.getKey().equals("properties");
            JsonNode inner = keyword.getValue();
            for (Map.Entry<String, JsonNode> key : keys ? inner.properties() : Set.<Map.Entry<String, JsonNode>>of()) {
                String description = key.getValue().path("description").asText();
                if (!description.endsWith(".") || description.contains(". ")) {
                    found.add(where + "/" + key.getKey() + " is not described in one sentence");
                }
                examine(key.getValue(), where + "/" + key.getKey(), found);
            }
            if (!keys) {
                examine(inner, where + "/" + keyword.getKey(), found);
            }
        }
        if (schema.isArray()) {
            schema.forEach(inner -> examine(inner, where, found));
        }
    }

    /** @param group how the reader calls a group of keys; for a whole file that only has keys of its own, the file */
    record SameKeys(String reader, String group, String schema, String pointer) {}

    private static final List<SameKeys> KEYS = List.of(
            new SameKeys("case", "a case", "case", "/$defs/part-of-a-case"),
            new SameKeys("case", "a mixture", "case", "/$defs/mixture"),
            new SameKeys("case", "a dye", "case", "/$defs/dye"),
            new SameKeys("case", "a column", "case", "/$defs/column"),
            new SameKeys("case", "a strip", "case", "/$defs/strip"),
            new SameKeys("case", "a gap", "case", "/$defs/gap"),
            new SameKeys("case", "a look at a front", "case", "/$defs/look-at-a-front"),
            new SameKeys("lesson", "a lesson", "lesson", ""),
            new SameKeys("lesson", "a class", "lesson", "/$defs/class"),
            new SameKeys("lesson", "a room", "lesson", "/$defs/room"),
            new SameKeys("entry", "an entry of a notebook", "notebook-entry", ""),
            new SameKeys("run", "a run", RUN, ""),
            new SameKeys("run", "a pour", RUN, "/$defs/pour"),
            new SameKeys("run", "a fraction", RUN, "/$defs/fraction"),
            new SameKeys("run", "a load", RUN, "/$defs/load"),
            new SameKeys("run", "a pool", RUN, "/$defs/pool"),
            new SameKeys("shelf", "a shelf", "shelf", ""),
            new SameKeys("shelf", "a bottle", "shelf", "/$defs/bottle"),
            new SameKeys("shelf", "a value", "shelf", "/$defs/value"),
            new SameKeys("solvent-data", "a solvent", "solvent", ""),
            new SameKeys("solvent-data", "a value", "solvent", "/$defs/printed-value"),
            new SameKeys("solvent-data", "a stationary phase", "stationary-phase", ""),
            new SameKeys("solvent-data", "a climb", "stationary-phase", "/$defs/climb"),
            new SameKeys("solvent-data", "a ladder", "stationary-phase", "/$defs/ladder"),
            new SameKeys("solvent-data", "a source", "sources", "/$defs/source"),
            new SameKeys("solvent-data", "a family", "families", "/$defs/family"),
            new SameKeys("solvent-data", "an additive", "additives", "/$defs/additive"),
            new SameKeys("solvent-data", "a statement", "hazard-statements", "/$defs/statement"),
            new SameKeys("solvent-data", "a scheme", "flammability", "/$defs/scheme"),
            new SameKeys("solvent-data", "a class of liquids", "flammability", "/$defs/class"),
            new SameKeys("solvent-data", "solvent-data/flammability.yaml", "flammability", ""),
            new SameKeys("solvent-data", "the miscibility file", "miscibility", ""),
            new SameKeys("solvent-data", "a pair of lists", "miscibility", "/$defs/pair-of-lists"),
            new SameKeys("solvent-data", "the bridges", "miscibility", "/$defs/bridges"),
            new SameKeys("solvent-data", "solvent-data/sources.yaml", "sources", ""),
            new SameKeys("solvent-data", "solvent-data/families.yaml", "families", ""),
            new SameKeys("solvent-data", "solvent-data/additives.yaml", "additives", ""),
            new SameKeys("solvent-data", "the properties", "properties", ""),
            new SameKeys("solvent-data", "a scale", "properties", "/$defs/scale"),
            new SameKeys("solvent-data", "solvent-data/hazard-statements.yaml", "hazard-statements", ""),
            new SameKeys("disagreements", "the known disagreements", "known-disagreements", ""),
            new SameKeys("disagreements", "the tolerances", "known-disagreements", "/$defs/tolerances"),
            new SameKeys("disagreements", "a disagreement", "known-disagreements", "/$defs/disagreement"),
            new SameKeys("rules", "a rule file", "rule-layer", ""),
            new SameKeys("rules", "a rule", "rule-layer", "/$defs/rule"),
            new SameKeys("rules", "a vocabulary file", "words", ""),
            new SameKeys("rules", "a sentence", "words", "/$defs/sentence"),
            new SameKeys("rules", "the column sizes", "column-sizes", ""),
            new SameKeys("rules", "a column of the table", "column-sizes", "/$defs/column"),
            new SameKeys("rules", "the ratio of adsorbent", "column-sizes", "/properties/adsorbent to mixture"),
            new SameKeys("own rules", "a rule file", "own-rules", ""),
            new SameKeys("own rules", "a rule", "own-rules", "/$defs/rule"),
            new SameKeys("own rules", "limits of your own", "own-limits", ""),
            new SameKeys("own rules", "a limit of your own", "own-limits", "/$defs/set-otherwise"),
            new SameKeys("own rules", "a limit", "limits", "/$defs/limit"),
            new SameKeys("own rules", "the rules switched off", "switched-off", ""),
            new SameKeys("own rules", "a rule switched off", "switched-off", "/$defs/off"),
            new SameKeys("rules", "the limits", "limits", ""),
            new SameKeys("rules", "a limit", "limits", "/$defs/limit"),
            new SameKeys("rules", "the topics", "topics", ""),
            new SameKeys("lessons", "the lessons", "lessons", ""),
            new SameKeys("lessons", "an idea", "lessons", "/$defs/idea"),
            new SameKeys("rules", "the preferences", OWN_PREFERENCES, ""),
            new SameKeys("rules", "the blends", "blends", ""),
            new SameKeys("rules", "the wanted Rf", "blends", "/properties/wanted Rf"),
            new SameKeys("rules", "the cost of a plan", OWN_PREFERENCES, "/properties/cost of a plan"));

    /** The readers are shown groups with the key `zzz`, which nobody takes, and say which keys they take. */
    @Test
    void schemasAndReadersTakeTheSameKeys(@TempDir Path folder) throws IOException {
        for (Map.Entry<String, String> file : UNKNOWN_KEYS.entrySet()) {
            Path path = folder.resolve(file.getKey());
            Files.createDirectories(path.getParent());
            Files.writeString(path, file.getValue());
        }
        Map<String, Map<String, Set<String>>> taken = Map.of(
                "case", keysNamedBy(() -> CaseReader.read(folder.resolve("case.yaml"), Shipped.data())),
                "lesson", keysNamedBy(() -> LessonReader.read(folder.resolve("lesson.yaml"), Shipped.data())),
                "entry", keysNamedBy(() -> EntryReader.read(folder.resolve("entry.yaml"), Shipped.data())),
                "run", keysNamedBy(() -> EntryReader.read(folder.resolve("run.yaml"), Shipped.data())),
                "shelf", keysNamedBy(() -> ShelfReader.read(folder.resolve("shelf.yaml"), Shipped.data())),
                "solvent-data", keysNamedBy(() -> SolventDataReader.read(folder.resolve("data"))),
                "disagreements", keysNamedBy(() -> KnownDisagreements.read(folder.resolve("data"))),
                "lessons", keysNamedBy(() -> Lessons.read(folder.resolve("rules"), Shipped.rulebook(), Shipped.data())),
                "own rules",
                        keysNamedBy(() ->
                                Rulebook.read(Path.of("rules"), Optional.of(folder.resolve("own")), Shipped.data())),
                "rules", keysNamedBy(() -> Rulebook.read(folder.resolve("rules"), Shipped.data())));
        List<String> compared = new ArrayList<>();
        for (SameKeys same : KEYS) {
            assertThat(keysOf(schema(same.schema()).at(same.pointer())))
                    .as("keys of %s in %s", same.group(), same.schema())
                    .isEqualTo(taken.get(same.reader()).get(same.group()));
            compared.add(same.reader() + ": " + same.group());
        }
        List<String> named = taken.entrySet().stream()
                .flatMap(reader -> reader.getValue().keySet().stream().map(group -> reader.getKey() + ": " + group))
                .toList();
        assertThat(compared).as("groups compared").containsExactlyInAnyOrderElementsOf(named);
    }

    private static final Map<String, String> UNKNOWN_KEYS = Map.ofEntries(
            Map.entry(
                    "case.yaml",
                    """
                    zzz: 1
                    mixture: {zzz: 1, dyes: [{zzz: 1}]}
                    column: {zzz: 1}
                    strips: [{zzz: 1, gaps: [{zzz: 1}], climbed: [{zzz: 1}]}]
                    """),
            Map.entry("lesson.yaml", "{zzz: 1, class: {zzz: 1}, room: {zzz: 1}}"),
            Map.entry("entry.yaml", "{zzz: 1}"),
            Map.entry(
                    "run.yaml",
                    """
                    date: 2026-11-26
                    title: a run
                    mixture: {dyes: [red, blue]}
                    column: {stationary phase: silica}
                    setting: college
                    run: {zzz: 1, poured: [{zzz: 1}], fractions: [{zzz: 1}], load: {zzz: 1}, pools: [{zzz: 1}]}
                    """),
            Map.entry("shelf.yaml", "{zzz: 1, bottles: [{zzz: 1}], values: [{zzz: 1}]}"),
            Map.entry("data/known-disagreements.yaml", "{zzz: 1, tolerances: {zzz: 1}, disagreements: [{zzz: 1}]}"),
            Map.entry("data/properties.yaml", "{zzz: 1, properties: {p: none}, other scales: {p: {zzz: 1}}}"),
            Map.entry("data/families.yaml", "{zzz: 1, families: {f: {zzz: 1}}}"),
            Map.entry("data/sources.yaml", "{zzz: 1, sources: {s: {zzz: 1}}}"),
            Map.entry("data/additives.yaml", "{zzz: 1, additives: {a: {zzz: 1}}}"),
            Map.entry("data/hazard-statements.yaml", "{zzz: 1, statements: {h: {zzz: 1}}}"),
            Map.entry("data/flammability.yaml", "{zzz: 1, schemes: {f: {zzz: 1, classes: [{zzz: 1}]}}}"),
            Map.entry("data/miscibility.yaml", "{zzz: 1, do not mix: [{zzz: 1}], bridges: {zzz: 1}}"),
            Map.entry("data/solvents/s.yaml", "{zzz: 1, values: {p: [{zzz: 1}]}}"),
            Map.entry("data/stationary-phases/p.yaml", "{zzz: 1, ladder: {zzz: 1}, climb: {zzz: 1}}"),
            Map.entry("rules/column-sizes.yaml", "{zzz: 1, columns: [{zzz: 1}], adsorbent to mixture: {zzz: 1}}"),
            Map.entry("own/limits.yaml", "{zzz: 1, limits: {parting gap: {zzz: 1}, new one: {zzz: 1}}}"),
            Map.entry("own/switched-off.yaml", "{zzz: 1, switched off: [{zzz: 1}]}"),
            Map.entry("own/own.yaml", "{zzz: 1, rules: [{zzz: 1}]}"),
            Map.entry("rules/limits.yaml", "{zzz: 1, limits: {l: {zzz: 1}}}"),
            Map.entry("rules/lessons.yaml", "{zzz: 1, ideas: [{zzz: 1}]}"),
            Map.entry("rules/topics.yaml", "{zzz: 1, topics: []}"),
            Map.entry("rules/blends.yaml", "{zzz: 1, wanted Rf: {zzz: 1}}"),
            Map.entry("rules/preferences.yaml", "{zzz: 1, cost of a plan: {zzz: 1}}"),
            Map.entry("rules/words/w.yaml", "{zzz: 1, sentences: [{zzz: 1}]}"),
            Map.entry("rules/layers/l.yaml", "{zzz: 1, rules: [{zzz: 1}]}"));

    private static final Pattern REFUSED = Pattern.compile("`zzz` is not a key of (.+)");
    private static final Pattern KNOWN = Pattern.compile("one of (.+)");

    private static Map<String, Set<String>> keysNamedBy(ThrowingCallable reading) {
        Map<String, Set<String>> keys = new TreeMap<>();
        for (Problem problem : problemsOf(reading)) {
            Matcher unknown = REFUSED.matcher(problem.found());
            Matcher known = KNOWN.matcher(problem.expected());
            if (unknown.matches() && known.matches()) {
                String group =
                        unknown.group(1).equals("this file") ? problem.place().file() : unknown.group(1);
                keys.put(group, new TreeSet<>(List.of(known.group(1).split(", "))));
            }
        }
        return keys;
    }

    private static List<Problem> problemsOf(ThrowingCallable reading) {
        return catchThrowableOfType(ProblemsFound.class, reading).problems();
    }

    /** @param words what the program or its data take; the schema has exactly these */
    record SameWords(String schema, String pointer, Collection<String> words) {}

    @TestFactory
    Stream<DynamicTest> schemasAndProgramTakeTheSameWords() throws IOException {
        List<String> solvents =
                Shipped.data().solvents().stream().map(Solvent::name).toList();
        List<String> phases = Shipped.data().stationaryPhaseNames();
        return Stream.of(
                        new SameWords("case", "/$defs/part-of-a-case/properties/setting/enum", Setting.words()),
                        new SameWords(
                                "case", "/$defs/strip/properties/moves/additionalProperties/enum", Behaviour.words()),
                        new SameWords("case", "/$defs/strip/properties/went wrong/items/enum", Mishap.words()),
                        new SameWords("case", "/$defs/gap/properties/looks/enum", GapLook.words()),
                        new SameWords(RUN, "/properties/went wrong/items/enum", RunMishap.words()),
                        new SameWords(SHARED, "/$defs/dye-class/enum", DyeClass.words()),
                        new SameWords(
                                SHARED, "/$defs/family/enum", Shipped.data().families()),
                        new SameWords(
                                SHARED, "/$defs/property/enum", Shipped.data().properties()),
                        new SameWords(
                                "solvent",
                                "/properties/values/properties",
                                Shipped.data().properties()),
                        new SameWords(SHARED, "/$defs/solvent/anyOf/0/enum", solvents),
                        new SameWords(
                                SHARED,
                                "/$defs/solvent/anyOf/1/enum",
                                otherNames(solvents, Shipped.data().solventNames())),
                        new SameWords("known-disagreements", "/$defs/disagreement/properties/solvent/enum", solvents),
                        new SameWords(SHARED, "/$defs/stationary-phase/anyOf/0/enum", phases),
                        new SameWords(
                                SHARED,
                                "/$defs/stationary-phase/anyOf/1/enum",
                                otherNames(
                                        phases,
                                        Shipped.data().stationaryPhases().stream()
                                                .map(StationaryPhase::also)
                                                .flatMap(List::stream)
                                                .toList())),
                        new SameWords(OWN_PREFERENCES, "/properties/choose by/items/enum", criteria()),
                        new SameWords("rule-layer", "/$defs/condition/examples", sentencesWith("means")),
                        new SameWords("rule-layer", "/$defs/conclusion/examples", sentencesWith("concludes")))
                .map(same -> DynamicTest.dynamicTest(same.schema() + " " + same.pointer(), () -> assertThat(
                                wordsAt(schema(same.schema()).at(same.pointer())))
                        .containsExactlyInAnyOrderElementsOf(new TreeSet<>(same.words()))));
    }

    /** Other names, and every name in small letters: the program does not care about capitals. */
    private static Set<String> otherNames(List<String> names, List<String> all) {
        Set<String> other = new TreeSet<>(all);
        Stream.concat(names.stream(), all.stream())
                .map(name -> name.toLowerCase(Locale.ROOT))
                .forEach(other::add);
        names.forEach(other::remove);
        return other;
    }

    private static List<String> criteria() {
        Rulebook unknown = new Rulebook(
                List.of(),
                Map.of(),
                List.of(),
                new Wishes(
                        List.of(new Wishes.Wish("zzz", new Place("test", 1))),
                        Map.of(),
                        new Wishes.Cost(0, 0, 0, 0, 0, 0, 0),
                        List.of(2.0)),
                new BlendWishes(List.of(), 0.2, 0.35, "", 0, new Place("test", 1)),
                new ColumnSizes(
                        "",
                        new Setup.Particles(40, 63),
                        0.35,
                        150,
                        50,
                        0.2,
                        0.1,
                        List.of(),
                        new ColumnSizes.AdsorbentRatio(20, 50, 100, ""),
                        "",
                        new Place("test", 1)),
                List.of(),
                OwnRules.none());
        Matcher known = Pattern.compile("one of: (.+)")
                .matcher(problemsOf(() -> new Planner(unknown)).get(0).expected());
        assertThat(known.matches()).isTrue();
        return List.of(known.group(1).split("; "));
    }

    private static List<String> sentencesWith(String use) throws IOException {
        List<String> sentences = new ArrayList<>();
        for (Path file : shippedFiles()) {
            if (schemaOf(file).equals("words")) {
                for (JsonNode sentence : yaml(file).path("sentences")) {
                    if (sentence.has(use)) {
                        sentences.add(sentence.path("example").asText());
                    }
                }
            }
        }
        return sentences;
    }

    private static List<String> wordsAt(JsonNode node) {
        if (node.isObject()) {
            return node.properties().stream().map(Map.Entry::getKey).toList();
        }
        List<String> words = new ArrayList<>();
        node.forEach(word -> words.add(word.asText()));
        return words;
    }

    private static Set<String> keysOf(JsonNode group) {
        return new TreeSet<>(wordsAt(group.path("properties")));
    }

    private static List<Path> shippedFiles() {
        List<Path> shipped = new ArrayList<>();
        for (Path folder : FOLDERS) {
            try (Stream<Path> files = Files.walk(folder)) {
                files.filter(file -> file.toString().endsWith(".yaml")).sorted().forEach(shipped::add);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return shipped;
    }

    private static String schemaOf(Path file) {
        return TABLE.stream()
                .filter(row -> FileSystems.getDefault()
                        .getPathMatcher("glob:" + row.files())
                        .matches(file))
                .map(Follows::schema)
                .findFirst()
                .orElseThrow(() -> new AssertionError("no row of the table is for " + file));
    }

    private static Set<String> schemaNames() {
        try (Stream<Path> files = Files.list(SCHEMAS)) {
            return files.map(file -> file.getFileName().toString().replace(".schema.json", ""))
                    .collect(Collectors.toCollection(TreeSet::new));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> errors(String schema, JsonNode written) {
        Path file = SCHEMAS.resolve(schema + ".schema.json");
        return FACTORY.getSchema(SchemaLocation.of(file.toUri().toString())).validate(written).stream()
                .map(Object::toString)
                .toList();
    }

    private static JsonNode schema(String name) throws IOException {
        return JSON.readTree(SCHEMAS.resolve(name + ".schema.json").toFile());
    }

    private static JsonNode yaml(Path file) {
        try {
            return YAML.readTree(file.toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
