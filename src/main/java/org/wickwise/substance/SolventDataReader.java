package org.wickwise.substance;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import org.wickwise.substance.FlammabilityScheme.LiquidClass;
import org.wickwise.substance.StationaryPhase.AdsorbentActivity;
import org.wickwise.substance.StationaryPhase.Climb;
import org.wickwise.substance.StationaryPhase.LadderScale;
import org.wickwise.text.Fields;
import org.wickwise.text.NearMiss;
import org.wickwise.text.Node;
import org.wickwise.text.Node.Entry;
import org.wickwise.text.Node.Mapping;
import org.wickwise.text.Node.Scalar;
import org.wickwise.text.Numbers;
import org.wickwise.text.Place;
import org.wickwise.text.Problems;
import org.wickwise.text.ProblemsFound;
import org.wickwise.text.YamlFile;

/** Reads the folder {@code solvent-data}; every problem of the folder is told at once. */
public final class SolventDataReader {

    private static final String LOWEST = "lowest value";
    private static final String HIGHEST = "highest value";

    private final Path folder;
    private final Problems problems = new Problems();

    /** Names of phases in the files of other phases, looked up when all files are read. */
    private final List<Scalar> phasesSpeakingForOthers = new ArrayList<>();

    private final List<Scalar> climbingLiquids = new ArrayList<>();

    private SolventDataReader(Path folder) {
        this.folder = folder;
    }

    /** @throws ProblemsFound with every problem of the folder */
    public static SolventData read(Path folder) {
        return new SolventDataReader(folder).data();
    }

    private SolventData data() {
        Map<String, String> unitOfProperty = texts("properties.yaml", "properties");
        Map<String, Boolean> aqueousFamily = new LinkedHashMap<>();
        for (Entry entry : entries("families.yaml", "families")) {
            Fields family = Fields.ofNode(entry.value(), "a family", Set.of("aqueous"), problems);
            if (!family.has("aqueous")) {
                family.missing("aqueous");
            }
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
        List<StationaryPhase> phases = filesIn("stationary-phases").stream()
                .map(file -> stationaryPhase(file, unitOfProperty))
                .sorted(Comparator.comparing(StationaryPhase::name))
                .toList();
        SolventData withoutMiscibility = new SolventData(
                solvents,
                List.copyOf(aqueousFamily.keySet()),
                unitOfProperty,
                additives,
                phases,
                new Miscibility(List.of(), List.of(), ""),
                hazardStatements(),
                flammabilitySchemes());
        phasesSpeakingForOthers.forEach(
                name -> new NamesOfTheTable(withoutMiscibility, problems).stationaryPhase(name.text(), name.place()));
        climbingLiquids.forEach(
                name -> new NamesOfTheTable(withoutMiscibility, problems).solvent(name.text(), name.place()));
        Miscibility miscibility = miscibility(withoutMiscibility);
        problems.throwIfAny();
        return new SolventData(
                solvents,
                withoutMiscibility.families(),
                withoutMiscibility.unitOfProperty(),
                additives,
                phases,
                miscibility,
                withoutMiscibility.hazardStatements(),
                withoutMiscibility.flammabilitySchemes());
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

    private StationaryPhase stationaryPhase(Mapping file, Map<String, String> unitOfProperty) {
        Fields phase = Fields.of(
                file,
                "a stationary phase",
                Set.of(
                        "stationary phase",
                        "also called",
                        "kind",
                        "ladder",
                        "adsorbent activity",
                        "activity from",
                        "packed density g per mL",
                        "total porosity",
                        "figures from",
                        "conditioning",
                        "holds",
                        "keep away",
                        "climb",
                        "mineral percent of the dust",
                        "strips that speak for it"),
                problems);
        List<Scalar> speaking = phase.texts("strips that speak for it");
        phasesSpeakingForOthers.addAll(speaking);
        return new StationaryPhase(
                phase.requiredText("stationary phase"),
                phase.texts("also called").stream().map(Scalar::text).toList(),
                phase.requiredText("kind"),
                phase.node("ladder").map(node -> ladder(node, unitOfProperty)),
                activity(phase),
                phase.number("packed density g per mL").orElse(Double.NaN),
                phase.number("total porosity").orElse(Double.NaN),
                phase.requiredText("figures from"),
                phase.requiredText("conditioning"),
                holds(phase),
                phase.texts("keep away").stream().map(Scalar::text).toList(),
                phase.node("climb").flatMap(this::climb),
                percentOfDust(phase),
                speaking.stream().map(Scalar::text).toList());
    }

    private Optional<Climb> climb(Node node) {
        Fields climb = Fields.ofNode(node, "a climb", Set.of("liquid", "mm", "minutes", "from"), problems);
        String liquid = climb.requiredText("liquid");
        OptionalDouble millimetres = above0(climb, "mm");
        OptionalDouble minutes = above0(climb, "minutes");
        String from = climb.requiredText("from");
        if (liquid.isEmpty() || millimetres.isEmpty() || minutes.isEmpty()) {
            return Optional.empty();
        }
        climbingLiquids.add(new Scalar(liquid, climb.placeOf("liquid")));
        return Optional.of(new Climb(liquid, millimetres.getAsDouble(), minutes.getAsDouble(), from));
    }

    private OptionalDouble above0(Fields fields, String key) {
        OptionalDouble number = fields.number(key);
        if (!fields.has(key)) {
            fields.missing(key);
        }
        if (number.isPresent() && number.getAsDouble() <= 0) {
            problems.add(
                    fields.placeOf(key),
                    "`" + key + "` is " + Numbers.plain(number.getAsDouble(), 3),
                    "a number above 0",
                    "correct it");
            return OptionalDouble.empty();
        }
        return number;
    }

    private OptionalDouble percentOfDust(Fields phase) {
        String key = "mineral percent of the dust";
        OptionalDouble percent = phase.number(key);
        if (percent.isPresent() && !(percent.getAsDouble() > 0 && percent.getAsDouble() <= 100)) {
            problems.add(
                    phase.placeOf(key),
                    "`" + key + "` is " + Numbers.plain(percent.getAsDouble(), 3),
                    "above 0 and at most 100",
                    "leave the line out for a dust without the mineral");
            return OptionalDouble.empty();
        }
        return percent;
    }

    private Optional<AdsorbentActivity> activity(Fields phase) {
        OptionalDouble value = phase.number("adsorbent activity");
        if (value.isEmpty()) {
            return Optional.empty();
        }
        if (value.getAsDouble() <= 0 || value.getAsDouble() > 1) {
            problems.add(
                    phase.placeOf("adsorbent activity"),
                    "the adsorbent activity is " + Numbers.plain(value.getAsDouble(), 3),
                    "a number above 0, at most 1 for a dry adsorbent",
                    "leave the line out if nobody knows it; blends are then not reckoned from solvent strengths");
        }
        return Optional.of(new AdsorbentActivity(value.getAsDouble(), phase.requiredText("activity from")));
    }

    private Map<String, String> holds(Fields phase) {
        Map<String, String> holds = new LinkedHashMap<>();
        for (Entry entry : phase.entries("holds")) {
            String dyeClass = entry.key().text();
            if (DyeClass.named(dyeClass).isEmpty()) {
                problems.add(
                        entry.key().place(),
                        "`" + dyeClass + "` is no class of dyes",
                        "one of " + String.join(", ", DyeClass.words()),
                        NearMiss.suggestion(dyeClass, DyeClass.words(), List.of()));
            } else if (entry.value() instanceof Scalar words) {
                holds.put(dyeClass, words.text());
            }
        }
        return holds;
    }

    private LadderScale ladder(Node node, Map<String, String> unitOfProperty) {
        Fields ladder =
                Fields.ofNode(node, "a ladder", Set.of("property", "weakest has the", "margin", "because"), problems);
        String property = ladder.requiredText("property");
        expectOneOf(ladder.placeOf("property"), property, "not a known property", unitOfProperty.keySet());
        String weakest = ladder.requiredText("weakest has the");
        expectOneOf(ladder.placeOf("weakest has the"), weakest, "no end of a ladder", Set.of(LOWEST, HIGHEST));
        return new LadderScale(
                property, weakest.equals(LOWEST), ladder.number("margin").orElse(0), ladder.requiredText("because"));
    }

    private Miscibility miscibility(SolventData data) {
        Fields root =
                Fields.of(file("miscibility.yaml"), "the miscibility file", Set.of("do not mix", "bridges"), problems);
        List<Miscibility.Gap> gaps = new ArrayList<>();
        for (Node node : root.list("do not mix")) {
            Fields gap =
                    Fields.ofNode(node, "a pair of lists", Set.of("one", "other", "condition", "source"), problems);
            gaps.add(new Miscibility.Gap(
                    solventsNamed(gap.texts("one"), data),
                    solventsNamed(gap.texts("other"), data),
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

    private List<Solvent> solventsNamed(List<Scalar> names, SolventData data) {
        List<Solvent> solvents = new ArrayList<>();
        for (Scalar name : names) {
            if (name.text().startsWith("every ")) {
                String family = name.text().substring("every ".length());
                expectOneOf(name.place(), family, "no family of solvents", data.families());
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

    /** An empty word was reported as missing. */
    private void expectOneOf(Place place, String written, String isNo, Collection<String> known) {
        if (!written.isEmpty() && !known.contains(written)) {
            problems.add(
                    place,
                    "`" + written + "` is " + isNo,
                    "one of " + String.join(", ", known.stream().sorted().toList()),
                    NearMiss.suggestion(written, known, List.of()));
        }
    }

    private List<Entry> entries(String name, String key) {
        return Fields.of(file(name), "this file", Set.of(key), problems).entries(key);
    }

    private Map<String, String> texts(String name, String key) {
        Map<String, String> texts = new LinkedHashMap<>();
        for (Entry entry : entries(name, key)) {
            if (entry.value() instanceof Scalar scalar) {
                texts.put(entry.key().text(), scalar.text());
            }
        }
        return texts;
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
