package org.wickwise.substance;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import org.wickwise.substance.FlammabilityScheme.LiquidClass;
import org.wickwise.text.Fields;
import org.wickwise.text.Node;
import org.wickwise.text.Node.Entry;
import org.wickwise.text.Node.Mapping;
import org.wickwise.text.Node.Scalar;
import org.wickwise.text.Numbers;
import org.wickwise.text.Problems;
import org.wickwise.text.ProblemsFound;
import org.wickwise.text.YamlFile;

/** Reads the folder {@code solvent-data}; every problem of the folder is told at once. */
public final class SolventDataReader {

    private final Path folder;
    private final Problems problems = new Problems();

    private SolventDataReader(Path folder) {
        this.folder = folder;
    }

    /** @throws ProblemsFound with every problem of the folder */
    public static SolventData read(Path folder) {
        return new SolventDataReader(folder).data();
    }

    private SolventData data() {
        Fields properties = Fields.of(
                file("properties.yaml"),
                "the properties",
                Set.of("properties", "other scales", "exposure limits"),
                problems);
        Map<String, String> unitOfProperty = units(properties);
        Map<String, Boolean> aqueousFamily = new LinkedHashMap<>();
        for (Entry entry : entries("families.yaml", "families")) {
            Fields family = Fields.ofNode(entry.value(), "a family", Set.of("aqueous"), problems);
            family.require("aqueous");
            aqueousFamily.put(
                    entry.key().text(),
                    family.yesOrNo("aqueous", "write yes or no").orElse(false));
        }
        SolventFiles solventFiles = new SolventFiles(citations(), unitOfProperty, aqueousFamily, problems);
        List<Solvent> solvents = filesIn("solvents").stream()
                .map(solventFiles::solvent)
                .sorted(Comparator.comparing(Solvent::name))
                .toList();
        List<Additive> additives = additives();
        StationaryPhaseFiles phaseFiles = new StationaryPhaseFiles(unitOfProperty, problems);
        List<StationaryPhase> phases = filesIn("stationary-phases").stream()
                .map(phaseFiles::stationaryPhase)
                .sorted(Comparator.comparing(StationaryPhase::name))
                .toList();
        SolventData withoutMiscibility = new SolventData(
                solvents,
                List.copyOf(aqueousFamily.keySet()),
                unitOfProperty,
                otherScales(properties, unitOfProperty),
                exposureLimits(properties, unitOfProperty),
                additives,
                phases,
                new Miscibility(List.of(), List.of(), ""),
                hazardStatements(),
                flammabilitySchemes());
        phaseFiles.lookUpNames(withoutMiscibility);
        Miscibility miscibility = miscibility(withoutMiscibility);
        problems.throwIfAny();
        return withoutMiscibility.with(miscibility);
    }

    private static Map<String, String> units(Fields properties) {
        Map<String, String> units = new LinkedHashMap<>();
        for (Entry entry : properties.entries("properties")) {
            if (entry.value() instanceof Scalar scalar) {
                units.put(entry.key().text(), scalar.text());
            }
        }
        return units;
    }

    private List<OtherScale> otherScales(Fields properties, Map<String, String> unitOfProperty) {
        List<OtherScale> scales = new ArrayList<>();
        for (Entry entry : properties.entries("other scales")) {
            isProperty(entry.key(), unitOfProperty);
            Fields scale = Fields.ofNode(entry.value(), "a scale", Set.of("margin", "source"), problems);
            scale.requiredText("source");
            OptionalDouble margin = scale.number("margin");
            if (margin.isEmpty() || margin.getAsDouble() <= 0) {
                problems.add(
                        scale.placeOf("margin"),
                        "the margin of " + entry.key().text() + " is no number above 0",
                        "how far two values have to lie apart to count as different",
                        "write for example `margin: 0.5`");
            }
            scales.add(new OtherScale(entry.key().text(), margin.orElse(0)));
        }
        return List.copyOf(scales);
    }

    private List<String> exposureLimits(Fields properties, Map<String, String> unitOfProperty) {
        List<Scalar> lists = properties.texts("exposure limits");
        for (Scalar list : lists) {
            if (isProperty(list, unitOfProperty)
                    && !unitOfProperty.get(list.text()).equals("ppm")) {
                problems.add(
                        list.place(),
                        "`" + list.text() + "` comes in " + unitOfProperty.get(list.text()),
                        "exposure limits in ppm",
                        "take it out of this list, or give its values in ppm");
            }
        }
        return lists.stream().map(Scalar::text).toList();
    }

    private boolean isProperty(Scalar name, Map<String, String> unitOfProperty) {
        problems.expectOneOf(name.place(), name.text(), "not a known property", unitOfProperty.keySet());
        return unitOfProperty.containsKey(name.text());
    }

    private Map<String, String> citations() {
        Map<String, String> citations = new TreeMap<>();
        for (Entry entry : entries("sources.yaml", "sources")) {
            Fields source = Fields.ofNode(entry.value(), "a source", Set.of("citation", "read in", "seen"), problems);
            String readIn = source.text("read in")
                    .map(where -> " [read in: " + where + "]")
                    .orElse("");
            String unseen = isUnseen(source) ? " [not seen]" : "";
            citations.put(entry.key().text(), source.requiredText("citation") + readIn + unseen);
        }
        return citations;
    }

    private static boolean isUnseen(Fields source) {
        boolean inPart = source.requiredText("seen").equals("in part");
        return !inPart && !source.yesOrNo("seen", "write yes, no or in part").orElse(true);
    }

    private List<Additive> additives() {
        List<Additive> additives = new ArrayList<>();
        for (Entry entry : entries("additives.yaml", "additives")) {
            Fields additive = Fields.ofNode(entry.value(), "an additive", Set.of("kind", "also called"), problems);
            List<String> also =
                    additive.texts("also called").stream().map(Scalar::text).toList();
            additives.add(new Additive(entry.key().text(), also, additive.requiredText("kind")));
        }
        additives.sort(Comparator.comparing(Additive::name));
        return List.copyOf(additives);
    }

    private List<HazardStatement> hazardStatements() {
        List<HazardStatement> statements = new ArrayList<>();
        for (Entry entry : entries("hazard-statements.yaml", "statements")) {
            Fields statement = Fields.ofNode(entry.value(), "a statement", Set.of("words", "group"), problems);
            statements.add(new HazardStatement(
                    entry.key().text(), statement.requiredText("words"), statement.requiredText("group")));
        }
        return List.copyOf(statements);
    }

    private List<FlammabilityScheme> flammabilitySchemes() {
        List<FlammabilityScheme> schemes = new ArrayList<>();
        for (Entry entry : entries("flammability.yaml", "schemes")) {
            Fields scheme = Fields.ofNode(entry.value(), "a scheme", Set.of("source", "classes"), problems);
            schemes.add(new FlammabilityScheme(
                    entry.key().text(),
                    scheme.list("classes").stream().map(this::liquidClass).toList(),
                    scheme.requiredText("source")));
        }
        return List.copyOf(schemes);
    }

    private LiquidClass liquidClass(Node node) {
        Fields liquids = Fields.ofNode(
                node,
                "a class of liquids",
                Set.of("class", "hazard code", "flash below", "flash at most", "boils below", "boils at most"),
                problems);
        return new LiquidClass(
                liquids.requiredText("class"),
                liquids.text("hazard code"),
                liquids.number("flash below"),
                liquids.number("flash at most"),
                liquids.number("boils below"),
                liquids.number("boils at most"));
    }

    private Miscibility miscibility(SolventData data) {
        Fields root =
                Fields.of(file("miscibility.yaml"), "the miscibility file", Set.of("do not mix", "bridges"), problems);
        List<Miscibility.Gap> gaps = new ArrayList<>();
        for (Node node : root.list("do not mix")) {
            Fields gap = Fields.ofNode(
                    node,
                    "a pair of lists",
                    Set.of("one", "other", "lesser part percent", "condition", "source"),
                    problems);
            gaps.add(new Miscibility.Gap(
                    solventsNamed(gap.texts("one"), data),
                    solventsNamed(gap.texts("other"), data),
                    lesserPercent(gap),
                    gap.requiredText("condition"),
                    gap.requiredText("source"),
                    gap.place()));
        }
        Fields bridges = root.node("bridges")
                .map(node -> Fields.ofNode(node, "the bridges", Set.of("solvents", "source"), problems))
                .orElseGet(() -> Fields.none(root.place(), "the bridges"));
        return new Miscibility(
                List.copyOf(gaps), solventsNamed(bridges.texts("solvents"), data), bridges.requiredText("source"));
    }

    private double lesserPercent(Fields gap) {
        double percent = gap.number("lesser part percent").orElse(Miscibility.Gap.USUAL_LESSER_PERCENT);
        if (percent > 0 && percent <= Miscibility.Gap.USUAL_LESSER_PERCENT) {
            return percent;
        }
        problems.add(
                gap.placeOf("lesser part percent"),
                "a lesser part of " + Numbers.plain(percent, 1) + " %",
                "a share above 0 and up to 50 %",
                "write the share by volume from which the two liquids part");
        return Miscibility.Gap.USUAL_LESSER_PERCENT;
    }

    private List<Solvent> solventsNamed(List<Scalar> names, SolventData data) {
        List<Solvent> solvents = new ArrayList<>();
        for (Scalar name : names) {
            if (name.text().startsWith("every ")) {
                String family = name.text().substring("every ".length());
                problems.expectOneOf(name.place(), family, "no family of solvents", data.families());
                data.solvents().stream()
                        .filter(solvent -> solvent.family().equals(family))
                        .forEach(solvents::add);
            } else {
                new NamesOfTheTable(data, problems)
                        .solventOr("or `every FAMILY`", name.text(), name.place())
                        .ifPresent(solvents::add);
            }
        }
        return List.copyOf(solvents);
    }

    private List<Entry> entries(String name, String key) {
        return Fields.of(file(name), "this file", Set.of(key), problems).entries(key);
    }

    private List<Mapping> filesIn(String inner) {
        return YamlFile.namesIn(folder.resolve(inner)).stream()
                .map(name -> file(inner + "/" + name))
                .toList();
    }

    private Mapping file(String name) {
        return YamlFile.read(folder.resolve(name), "solvent-data/" + name);
    }
}
