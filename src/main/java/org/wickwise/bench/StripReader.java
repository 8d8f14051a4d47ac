package org.wickwise.bench;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import org.wickwise.strip.Mishap;
import org.wickwise.strip.Spot;
import org.wickwise.strip.Strip;
import org.wickwise.strip.Strip.SeenBetween;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.EluentReader;
import org.wickwise.substance.NamesOfTheTable;
import org.wickwise.substance.SolventData;
import org.wickwise.substance.StationaryPhase;
import org.wickwise.text.Bounds;
import org.wickwise.text.Fields;
import org.wickwise.text.NearMiss;
import org.wickwise.text.Node;
import org.wickwise.text.Node.Scalar;
import org.wickwise.text.Numbers;
import org.wickwise.text.Problems;

/** Reads one strip of a case against the dyes of the mixture. */
public final class StripReader {

    private static final Set<String> KEYS = Set.of(
            "solvent",
            "stationary phase",
            "replicate",
            "front mm",
            "ruler mm",
            "travel mm",
            "Rf",
            "moves",
            "gaps",
            "went wrong",
            "streaked",
            "touched the edge",
            "not seen",
            "minutes",
            "climbed",
            "note");
    private static final double SHORTEST_FRONT_MILLIMETRES = 20;
    /** What no strip is longer than. */
    public static final double LONGEST_FRONT_MILLIMETRES = 500;

    private static final double COARSEST_RULER_MILLIMETRES = 10;

    private final SolventData data;
    private final MixtureDyes dyes;
    private final Optional<StationaryPhase> usualPhase;
    private final Problems problems;
    private final EluentReader eluents;

    public StripReader(
            SolventData data,
            Map<String, Eluent> ownNames,
            List<Dye> dyes,
            Optional<StationaryPhase> usualPhase,
            Problems problems) {
        this.data = data;
        this.dyes = new MixtureDyes(dyes, problems);
        this.usualPhase = usualPhase;
        this.problems = problems;
        this.eluents = new EluentReader(data, ownNames, problems);
    }

    /**
     * Reads strips that stand elsewhere than in the file of their case, by the same checks.
     *
     * @param basis the case they belong to; its own strips do not matter
     * @param usualPhase what the strips were run on, where a strip does not say otherwise
     * @param problems takes what is wrong with them
     */
    public static StripReader beside(Case basis, StationaryPhase usualPhase, SolventData data, Problems problems) {
        return new StripReader(
                data.with(basis.shelf().ownValues()),
                basis.shelf().ownNames(),
                basis.dyes(),
                Optional.of(usualPhase),
                problems);
    }

    /** The strip; empty after a problem was reported, and where one was reported it may lack what the problem is about. */
    public Optional<Strip> strip(Node node) {
        Fields fields = Fields.ofNode(node, "a strip", KEYS, problems);
        Scalar written = new Scalar(fields.requiredText("solvent"), fields.placeOf("solvent"));
        Optional<Eluent> eluent = written.text().isEmpty() ? Optional.empty() : eluents.read(written);
        Optional<StationaryPhase> phase = phase(fields);
        OptionalDouble front = front(fields);
        int problemsBefore = problems.size();
        Set<Dye> notSeen = dyesListed(fields, "not seen");
        Set<Mishap> mishaps = mishaps(fields);
        List<Spot> spots =
                new SpotReader(dyes, problems).spots(fields, front, notSeen, !mishaps.isEmpty(), problemsBefore);
        List<SeenBetween> gaps = new GapReader(dyes, problems).gaps(fields, spots);
        Set<Dye> streaked = dyesListed(fields, "streaked");
        Set<Dye> atTheEdge = dyesListed(fields, "touched the edge");
        int replicate = replicate(fields);
        OptionalDouble division = division(fields);
        new ClimbReader(problems).climbed(fields);
        return eluent.flatMap(ran -> phase.map(on -> new Strip(
                ran,
                on,
                replicate,
                front,
                division,
                spots,
                gaps,
                mishaps,
                streaked,
                atTheEdge,
                notSeen,
                fields.place())));
    }

    private Optional<StationaryPhase> phase(Fields fields) {
        if (!fields.has("stationary phase")) {
            return usualPhase;
        }
        String name = fields.requiredText("stationary phase");
        return name.isEmpty()
                ? Optional.empty()
                : new NamesOfTheTable(data, problems).stationaryPhase(name, fields.placeOf("stationary phase"));
    }

    private OptionalDouble front(Fields fields) {
        OptionalDouble front = fields.number("front mm");
        if (front.isEmpty()) {
            return front;
        }
        double millimetres = front.getAsDouble();
        if (millimetres < SHORTEST_FRONT_MILLIMETRES) {
            problems.add(
                    fields.placeOf("front mm"),
                    "the front is at " + Numbers.plain(millimetres, 2) + " mm",
                    "a front of at least " + Numbers.plain(SHORTEST_FRONT_MILLIMETRES, 0)
                            + " mm (a shorter one cannot be read)",
                    millimetres > 0
                            ? "is this in centimetres? then write " + Numbers.plain(10 * millimetres, 2)
                                    + ", and the travels in millimetres too"
                            : "measure from the origin to the solvent front");
            return OptionalDouble.empty();
        }
        if (millimetres > LONGEST_FRONT_MILLIMETRES) {
            problems.add(
                    fields.placeOf("front mm"),
                    "the front is at " + Numbers.plain(millimetres, 2) + " mm",
                    "a front of at most " + Numbers.plain(LONGEST_FRONT_MILLIMETRES, 0) + " mm",
                    "is there a point missing?");
            return OptionalDouble.empty();
        }
        return front;
    }

    private Set<Dye> dyesListed(Fields fields, String key) {
        Set<Dye> listed = new TreeSet<>();
        fields.texts(key).forEach(name -> dyes.named(name.text(), name.place()).ifPresent(listed::add));
        return listed;
    }

    private Set<Mishap> mishaps(Fields fields) {
        Set<Mishap> mishaps = EnumSet.noneOf(Mishap.class);
        for (Scalar word : fields.texts("went wrong")) {
            Mishap.named(word.text())
                    .ifPresentOrElse(
                            mishaps::add,
                            () -> problems.add(
                                    word.place(),
                                    word.kind() + " is no known mishap",
                                    "one of: " + String.join("; ", Mishap.words()),
                                    NearMiss.of(word.text(), Mishap.words()).isEmpty()
                                            ? "take one of these, or tell it in your own words under `note`"
                                            : NearMiss.suggestion(word.text(), Mishap.words())));
        }
        return mishaps;
    }

    private int replicate(Fields fields) {
        OptionalDouble number = fields.number("replicate");
        if (number.isPresent() && (number.getAsDouble() < 1 || number.getAsDouble() % 1 != 0)) {
            problems.add(
                    fields.placeOf("replicate"),
                    "the replicate number is " + Numbers.plain(number.getAsDouble(), 3),
                    "1, 2, 3, ...",
                    "number the strips in one eluent from 1");
            return 1;
        }
        return (int) number.orElse(1);
    }

    private static OptionalDouble division(Fields fields) {
        return fields.numberWithin(
                "ruler mm",
                "the ruler's division",
                Bounds.aboveZeroTo(COARSEST_RULER_MILLIMETRES, "mm").told("between 0 and 10 mm"),
                "give the distance between two marks of the ruler");
    }
}
