package org.wickwise.substance;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Pattern;
import org.wickwise.text.Fields;
import org.wickwise.text.NearMiss;
import org.wickwise.text.Node;
import org.wickwise.text.Node.Entry;
import org.wickwise.text.Node.Listing;
import org.wickwise.text.Node.Mapping;
import org.wickwise.text.Node.Scalar;
import org.wickwise.text.Problems;

/** Reads the file of one solvent against the bibliography, the properties and the families. */
final class SolventFiles {

    private static final Set<String> CONFIDENCES = Set.of("two sources", "one source", "memory");
    private static final Set<String> VALUE_KEYS =
            Set.of("value", "unit", "condition", "sources", "confidence", "use", "chosen because", "not used because");

    private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");

    private final Map<String, String> citations;
    private final Map<String, String> unitOfProperty;
    private final Map<String, Boolean> aqueousFamily;
    private final Problems problems;

    SolventFiles(
            Map<String, String> citations,
            Map<String, String> unitOfProperty,
            Map<String, Boolean> aqueousFamily,
            Problems problems) {
        this.citations = citations;
        this.unitOfProperty = unitOfProperty;
        this.aqueousFamily = aqueousFamily;
        this.problems = problems;
    }

    Solvent solvent(Mapping file) {
        Fields fields = Fields.of(file, "a solvent", Set.of("solvent", "also called", "family", "values"), problems);
        String name = fields.requiredText("solvent");
        String family = fields.requiredText("family");
        expectKnown(fields, "family", family, aqueousFamily.keySet());
        Map<String, List<TableValue>> values = new LinkedHashMap<>();
        for (Entry entry : fields.entries("values")) {
            values.put(entry.key().text(), valuesOf(name, entry));
        }
        return new Solvent(
                name,
                fields.texts("also called").stream().map(Scalar::text).toList(),
                family,
                aqueousFamily.getOrDefault(family, false),
                values);
    }

    private List<TableValue> valuesOf(String solvent, Entry entry) {
        String property = entry.key().text();
        if (!unitOfProperty.containsKey(property)) {
            problems.add(
                    entry.key().place(),
                    "`" + property + "` is not a known property",
                    "a property of properties.yaml",
                    NearMiss.suggestion(property, unitOfProperty.keySet()));
            return List.of();
        }
        if (!(entry.value() instanceof Listing listing)) {
            problems.add(
                    entry.value().place(),
                    "`" + property + "` is " + entry.value().kind(),
                    "a list of values",
                    "begin each value with `- value:`");
            return List.of();
        }
        List<TableValue> values = listing.items().stream()
                .map(item -> value(solvent, property, item))
                .toList();
        if (values.stream().filter(TableValue::used).count() > 1) {
            problems.add(
                    entry.key().place(),
                    "two values of `" + property + "` say `use: yes`",
                    "one value in use",
                    "keep the one to compute with");
        }
        return values;
    }

    private TableValue value(String solvent, String property, Node item) {
        Fields fields = Fields.ofNode(item, "a value", VALUE_KEYS, problems);
        String confidence = fields.requiredText("confidence");
        expectKnown(fields, "confidence", confidence, CONFIDENCES);
        String unit = fields.requiredText("unit");
        List<String> texts = new ArrayList<>();
        Map<String, Double> constants = new LinkedHashMap<>();
        fields.node("value")
                .ifPresentOrElse(node -> take(node, fields, texts, constants), () -> fields.missing("value"));
        OptionalDouble number = texts.size() == 1 ? numberOf(texts.get(0)) : OptionalDouble.empty();
        boolean onlyWords = number.isEmpty() && constants.isEmpty();
        expectUnit(fields, property, unit, onlyWords);
        return new TableValue(
                solvent,
                property,
                texts,
                number,
                constants,
                unit,
                fields.requiredText("condition"),
                citationsOf(fields),
                confidence,
                fields.yesOrNo("use", "write yes or no").orElse(false),
                fields.text("chosen because")
                        .or(() -> fields.text("not used because"))
                        .orElse(""),
                fields.place());
    }

    /** Words carry no unit; no unit at all was reported as missing. */
    private void expectUnit(Fields fields, String property, String unit, boolean onlyWords) {
        String expected = unitOfProperty.get(property);
        if (!unit.isEmpty() && !unit.equals(expected) && !(onlyWords && unit.equals("none"))) {
            problems.add(
                    fields.placeOf("unit"),
                    "`" + property + "` is given in " + unit,
                    "the unit " + expected,
                    "convert the value, or say which unit was meant");
        }
    }

    private void take(Node node, Fields fields, List<String> texts, Map<String, Double> constants) {
        if (node instanceof Scalar scalar) {
            texts.add(scalar.text());
        } else if (node instanceof Listing) {
            fields.texts("value").forEach(text -> texts.add(text.text()));
        } else if (node instanceof Mapping mapping) {
            for (Entry entry : mapping.entries()) {
                if (entry.value() instanceof Scalar scalar) {
                    fields.numberIn(scalar)
                            .ifPresent(number -> constants.put(entry.key().text(), number));
                    texts.add(entry.key().text() + " " + scalar.text());
                }
            }
        }
    }

    private List<String> citationsOf(Fields fields) {
        List<Scalar> keys = fields.texts("sources");
        if (keys.isEmpty()) {
            fields.missing("sources");
        }
        for (Scalar key : keys) {
            if (!citations.containsKey(key.text())) {
                problems.add(
                        key.place(),
                        "the source `" + key.text() + "` is not in the bibliography",
                        "a key of sources.yaml",
                        NearMiss.suggestion(key.text(), citations.keySet()));
            }
        }
        return keys.stream()
                .map(key -> citations.getOrDefault(key.text(), key.text()))
                .toList();
    }

    private void expectKnown(Fields fields, String key, String written, Set<String> known) {
        if (!written.isEmpty() && !known.contains(written)) {
            problems.add(
                    fields.placeOf(key),
                    "`" + written + "` is not a known " + key,
                    "one of " + String.join(", ", known.stream().sorted().toList()),
                    NearMiss.suggestion(written, known));
        }
    }

    private static OptionalDouble numberOf(String text) {
        return NUMBER.matcher(text).matches() ? OptionalDouble.of(Double.parseDouble(text)) : OptionalDouble.empty();
    }
}
