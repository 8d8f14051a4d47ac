package org.wickwise.notebook;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.wickwise.bench.Case;
import org.wickwise.bench.MixtureDyes;
import org.wickwise.bench.StripReader;
import org.wickwise.notebook.ColumnRun.LoadSolution;
import org.wickwise.notebook.ColumnRun.WeighedPool;
import org.wickwise.strip.Strip;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.EluentReader;
import org.wickwise.substance.SolventData;
import org.wickwise.text.Bounds;
import org.wickwise.text.Fields;
import org.wickwise.text.NearMiss;
import org.wickwise.text.Node;
import org.wickwise.text.Node.Entry;
import org.wickwise.text.Node.Scalar;
import org.wickwise.text.Numbers;
import org.wickwise.text.Place;
import org.wickwise.text.Problems;

/** Reads the group `run` of an entry: a finished column, against the dyes of its mixture. */
public final class RunReader {

    private static final Set<String> KEYS =
            Set.of("poured", "fractions", "load", "pools", "still on the bed", "went wrong", "note");
    private static final Set<String> POURED_KEYS = Set.of("eluent", "mL");
    private static final Set<String> FRACTION_KEYS =
            Set.of("mL", "colour", "dyes", "absorbance", "diluted", "strip", "note");
    private static final Set<String> LOAD_KEYS = Set.of("mL", "absorbance", "diluted");
    private static final Set<String> POOL_KEYS = Set.of("fractions", "dry mg");
    private static final double MOST_MILLILITRES = 100_000;
    private static final double MOST_MILLIGRAMS = 100_000;
    private static final double MOST_ABSORBANCE = 5;
    private static final double MOST_DILUTION = 100_000;
    private static final int MOST_FRACTIONS = 1_000;
    private static final String DILUTE = "dilute it, write down `diluted`, and read again";

    private final MixtureDyes dyes;
    private final EluentReader eluents;
    private final StripReader strips;
    private final Problems problems;

    /** @param written the case whose column was run */
    public RunReader(Case written, SolventData data, Problems problems) {
        this.dyes = new MixtureDyes(written.dyes(), problems);
        Map<String, Eluent> ownNames = written.shelf().ownNames();
        this.eluents = new EluentReader(data, ownNames, problems);
        this.strips = new StripReader(
                data, ownNames, written.dyes(), Optional.of(written.column().phase()), problems);
        this.problems = problems;
    }

    /** The run; empty where something in it cannot be used, which is reported. */
    public Optional<ColumnRun> run(Node node) {
        int problemsBefore = problems.size();
        Fields fields = Fields.ofNode(node, "a run", KEYS, problems);
        List<Poured> poured = poured(fields);
        List<Fraction> fractions = fractions(fields);
        Optional<LoadSolution> load = fields.node("load").flatMap(this::load);
        List<WeighedPool> pools = pools(fields, fractions.size());
        Set<Dye> stuck = dyesListed(fields, "still on the bed");
        Set<RunMishap> wentWrong = mishaps(fields);
        return problems.size() == problemsBefore
                ? Optional.of(new ColumnRun(poured, fractions, load, pools, stuck, wentWrong, fields.place()))
                : Optional.empty();
    }

    private List<Poured> poured(Fields run) {
        List<Node> items = run.list("poured");
        if (items.isEmpty() && run.isReported()) {
            problems.add(
                    run.placeOf("poured"),
                    "the run does not say what was poured",
                    "`poured:` with each eluent and its volume, in the order of pouring",
                    "write a line such as `- {eluent: NAME, mL: 40}` for each");
        }
        List<Poured> poured = new ArrayList<>();
        for (Node item : items) {
            Fields fields = Fields.ofNode(item, "a pour", POURED_KEYS, problems);
            Scalar name = new Scalar(fields.requiredText("eluent"), fields.placeOf("eluent"));
            Optional<Eluent> eluent = name.text().isEmpty() ? Optional.empty() : eluents.read(name);
            OptionalDouble millilitres = millilitres(fields, "the volume poured");
            if (eluent.isPresent() && millilitres.isPresent()) {
                poured.add(new Poured(eluent.get(), millilitres.getAsDouble(), fields.place()));
            }
        }
        return poured;
    }

    private List<Fraction> fractions(Fields run) {
        List<Node> items = run.list("fractions");
        if (items.isEmpty() && run.isReported()) {
            problems.add(
                    run.placeOf("fractions"),
                    "the run has no fraction",
                    "`fractions:` in the order of collecting, from the first drop on",
                    "write a line such as `- {mL: 10, colour: clear}` for each, the clear ones too");
        }
        if (items.size() > MOST_FRACTIONS) {
            problems.add(
                    run.placeOf("fractions"),
                    "the run has " + items.size() + " fractions",
                    "at most " + MOST_FRACTIONS,
                    "put alike neighbours together, with their volumes added up");
            return List.of();
        }
        List<Fraction> fractions = new ArrayList<>();
        double collected = 0;
        for (Node item : items) {
            Fields fields = Fields.ofNode(item, "a fraction", FRACTION_KEYS, problems);
            OptionalDouble millilitres = millilitres(fields, "the volume of a fraction");
            Set<Dye> seen = dyesListed(fields, "dyes");
            Map<Dye, Double> absorbance = absorbance(fields);
            Optional<Strip> strip = fields.node("strip").flatMap(strips::strip);
            double diluted = diluted(fields);
            absorbance.forEach((dye, read) -> {
                if (read > 0 && !seen.isEmpty() && !seen.contains(dye) && fields.has("dyes") && strip.isEmpty()) {
                    problems.add(
                            fields.placeOf("dyes"),
                            "the fraction has an absorbance of " + dye + ", which does not stand under its `dyes`",
                            "every dye of the fraction",
                            "add it to `dyes`, or leave `dyes` out and let the absorbance speak");
                }
            });
            if (millilitres.isPresent()) {
                Set<Dye> there = new TreeSet<>(seen);
                if (!fields.has("dyes")) {
                    absorbance.forEach((dye, read) -> {
                        if (read > 0) {
                            there.add(dye);
                        }
                    });
                }
                fractions.add(new Fraction(
                        fractions.size() + 1,
                        collected,
                        millilitres.getAsDouble(),
                        fields.text("colour"),
                        there,
                        absorbance,
                        diluted,
                        strip,
                        fields.place()));
                collected += millilitres.getAsDouble();
            }
        }
        return fractions;
    }

    private Optional<LoadSolution> load(Node node) {
        Fields fields = Fields.ofNode(node, "a load", LOAD_KEYS, problems);
        OptionalDouble millilitres = millilitres(fields, "the volume of the load");
        Map<Dye, Double> absorbance = absorbance(fields);
        fields.require("absorbance");
        double diluted = diluted(fields);
        return millilitres.isPresent()
                ? Optional.of(new LoadSolution(millilitres.getAsDouble(), absorbance, diluted, fields.place()))
                : Optional.empty();
    }

    private List<WeighedPool> pools(Fields run, int fractions) {
        List<WeighedPool> pools = new ArrayList<>();
        Set<Integer> weighed = new TreeSet<>();
        for (Node item : run.list("pools")) {
            Fields fields = Fields.ofNode(item, "a pool", POOL_KEYS, problems);
            List<Integer> numbers = new ArrayList<>();
            for (Scalar written : fields.texts("fractions")) {
                fields.numberIn(written).ifPresent(number -> {
                    boolean isThere = number % 1 == 0 && number >= 1 && number <= fractions;
                    if (isThere && !weighed.add((int) number)) {
                        problems.add(
                                written.place(),
                                "fraction " + Numbers.plain(number, 0) + " was weighed twice",
                                "each fraction in one pool at most",
                                "take it out of one, or put both pools together");
                    } else if (isThere) {
                        numbers.add((int) number);
                    } else {
                        problems.add(
                                written.place(),
                                "the run has no fraction " + Numbers.plain(number, 2),
                                "a number from 1 to " + fractions,
                                "count the fractions from the first drop on, the clear ones too");
                    }
                });
            }
            fields.require("fractions");
            fields.require("dry mg");
            OptionalDouble dry = fields.numberWithin(
                    "dry mg", "the dry mass of a pool", Bounds.within(0, MOST_MILLIGRAMS, "mg"), "weigh it again");
            if (dry.isPresent()) {
                pools.add(new WeighedPool(numbers, dry.getAsDouble(), fields.place()));
            }
        }
        return pools;
    }

    private Map<Dye, Double> absorbance(Fields fields) {
        Map<Dye, Double> absorbance = new TreeMap<>();
        for (Entry entry : fields.entries("absorbance")) {
            Optional<Dye> dye = dyes.named(entry.key().text(), entry.key().place());
            if (!(entry.value() instanceof Scalar value)) {
                problems.add(
                        entry.value().place(),
                        "the absorbance of " + entry.key().text() + " is "
                                + entry.value().kind(),
                        "one number",
                        "write one number a dye, read at its own wavelength");
                continue;
            }
            fields.numberIn(value).ifPresent(read -> {
                if (read < 0 || read > MOST_ABSORBANCE) {
                    problems.add(
                            value.place(),
                            "the absorbance of " + entry.key().text() + " is " + Numbers.plain(read, 3),
                            "an absorbance between 0 and " + Numbers.plain(MOST_ABSORBANCE, 0),
                            read < 0 ? "set the photometer to zero with the eluent alone" : DILUTE);
                } else {
                    dye.ifPresent(known -> absorbance.put(known, read));
                }
            });
        }
        return absorbance;
    }

    private double diluted(Fields fields) {
        return fields.numberWithin(
                        "diluted",
                        "the dilution",
                        Bounds.within(1, MOST_DILUTION, "times"),
                        "1 mL made up to 10 mL is diluted 10 times")
                .orElse(1);
    }

    private OptionalDouble millilitres(Fields fields, String what) {
        fields.require("mL");
        OptionalDouble millilitres = fields.numberWithin(
                "mL", what, Bounds.within(0, MOST_MILLILITRES, "mL"), "leave out what holds nothing, or measure again");
        if (millilitres.isPresent() && millilitres.getAsDouble() == 0) {
            problems.add(fields.placeOf("mL"), what + " is 0 mL", "a volume above 0 mL", "leave the line out");
            return OptionalDouble.empty();
        }
        return millilitres;
    }

    private Set<Dye> dyesListed(Fields fields, String key) {
        Set<Dye> listed = new TreeSet<>();
        fields.texts(key).forEach(name -> dyes.named(name.text(), name.place()).ifPresent(listed::add));
        return listed;
    }

    private Set<RunMishap> mishaps(Fields fields) {
        Set<RunMishap> mishaps = EnumSet.noneOf(RunMishap.class);
        for (Scalar word : fields.texts("went wrong")) {
            Place place = word.place();
            RunMishap.named(word.text())
                    .ifPresentOrElse(
                            mishaps::add,
                            () -> problems.add(
                                    place,
                                    word.kind() + " is no known mishap of a column",
                                    "one of: " + String.join("; ", RunMishap.words()),
                                    NearMiss.of(word.text(), RunMishap.words()).isEmpty()
                                            ? "take one of these, or tell it in your own words under `note`"
                                            : NearMiss.suggestion(word.text(), RunMishap.words())));
        }
        return mishaps;
    }
}
