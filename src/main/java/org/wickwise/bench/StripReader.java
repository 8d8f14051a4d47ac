package org.wickwise.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import org.wickwise.strip.Behaviour;
import org.wickwise.strip.GapLook;
import org.wickwise.strip.Mishap;
import org.wickwise.strip.Spot;
import org.wickwise.strip.Spot.Position;
import org.wickwise.strip.Strip;
import org.wickwise.strip.Strip.SeenBetween;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.EluentReader;
import org.wickwise.substance.SolventData;
import org.wickwise.substance.StationaryPhase;
import org.wickwise.text.Fields;
import org.wickwise.text.NearMiss;
import org.wickwise.text.Node;
import org.wickwise.text.Node.Entry;
import org.wickwise.text.Node.Scalar;
import org.wickwise.text.Numbers;
import org.wickwise.text.Place;
import org.wickwise.text.Problems;

/** Reads one strip of a case against the dyes of the mixture. */
final class StripReader {

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
            "note");
    private static final double SHORTEST_FRONT_MILLIMETRES = 20;
    private static final double LONGEST_FRONT_MILLIMETRES = 500;

    private final SolventData data;
    private final List<Dye> dyes;
    private final Optional<StationaryPhase> usualPhase;
    private final Problems problems;
    private final EluentReader eluents;

    StripReader(SolventData data, List<Dye> dyes, Optional<StationaryPhase> usualPhase, Problems problems) {
        this.data = data;
        this.dyes = dyes;
        this.usualPhase = usualPhase;
        this.problems = problems;
        this.eluents = new EluentReader(data, problems);
    }

    Optional<Strip> strip(Node node) {
        Fields fields = Fields.ofNode(node, "a strip", KEYS, problems);
        Scalar written = new Scalar(fields.requiredText("solvent"), fields.placeOf("solvent"));
        Optional<Eluent> eluent = written.text().isEmpty() ? Optional.empty() : eluents.read(written);
        Optional<StationaryPhase> phase = phase(fields);
        OptionalDouble front = front(fields);
        List<Spot> spots = new ArrayList<>();
        measuredSpots(fields, front, spots);
        quotedSpots(fields, spots);
        watchedSpots(fields, spots);
        Set<Dye> notSeen = dyesListed(fields, "not seen");
        Set<Mishap> mishaps = mishaps(fields);
        everyDyeIsAccountedFor(fields, spots, notSeen, mishaps);
        Set<Dye> streaked = dyesListed(fields, "streaked");
        Set<Dye> atTheEdge = dyesListed(fields, "touched the edge");
        List<SeenBetween> gaps = gaps(fields);
        int replicate = replicate(fields);
        OptionalDouble division = division(fields);
        spots.sort(Comparator.comparing(spot -> spot.dyes().get(0)));
        return eluent.flatMap(ran -> phase.map(on -> new Strip(
                ran,
                on,
                replicate,
                front,
                division,
                List.copyOf(spots),
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
        Optional<StationaryPhase> phase = data.stationaryPhase(name);
        if (phase.isEmpty() && !name.isEmpty()) {
            problems.add(
                    fields.placeOf("stationary phase"),
                    "`" + name + "` is not a known stationary phase",
                    "one of " + String.join(", ", data.stationaryPhaseNames()),
                    NearMiss.suggestion(name, data.stationaryPhaseNames()));
        }
        return phase;
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

    private void measuredSpots(Fields fields, OptionalDouble front, List<Spot> spots) {
        if (fields.has("travel mm") && !fields.has("front mm")) {
            problems.add(
                    fields.placeOf("travel mm"),
                    "the strip has travels and no solvent front",
                    "`front mm: ...` beside `travel mm`",
                    "measure the front from the origin; if it was never marked, write `moves` with words instead");
        }
        for (Entry entry : fields.entries("travel mm")) {
            number(fields, entry).ifPresent(millimetres -> {
                if (millimetres < 0) {
                    problems.add(
                            entry.value().place(),
                            "the travel of " + entry.key().text() + " is " + Numbers.plain(millimetres, 2) + " mm",
                            "0 mm or more, measured from the origin",
                            "a spot that did not move has travelled 0");
                } else if (front.isPresent() && millimetres > front.getAsDouble()) {
                    problems.add(
                            entry.value().place(),
                            "the spot of " + entry.key().text() + " at " + Numbers.plain(millimetres, 2)
                                    + " mm is beyond the front at " + Numbers.plain(front.getAsDouble(), 2) + " mm",
                            "a travel between 0 and the front",
                            "measure both from the origin, not from the end of the strip");
                } else {
                    spot(entry, new Spot.Travelled(millimetres), spots);
                }
            });
        }
    }

    private void quotedSpots(Fields fields, List<Spot> spots) {
        for (Entry entry : fields.entries("Rf")) {
            number(fields, entry).ifPresent(value -> {
                if (value < 0 || value > 1) {
                    problems.add(
                            entry.value().place(),
                            "the Rf of " + entry.key().text() + " is " + Numbers.plain(value, 3),
                            "an Rf between 0 and 1",
                            "Rf is the travel of the spot over that of the front");
                } else {
                    spot(entry, new Spot.Quoted(value), spots);
                }
            });
        }
    }

    private void watchedSpots(Fields fields, List<Spot> spots) {
        for (Entry entry : fields.entries("moves")) {
            if (!(entry.value() instanceof Scalar word)) {
                problems.add(
                        entry.value().place(),
                        "the movement of " + entry.key().text() + " is "
                                + entry.value().kind(),
                        "one of " + String.join(", ", Behaviour.words()),
                        "write one word");
                continue;
            }
            Optional<Behaviour> behaviour = Behaviour.named(word.text());
            if (behaviour.isEmpty()) {
                problems.add(
                        word.place(),
                        word.kind() + " is no word for a movement",
                        "one of " + String.join(", ", Behaviour.words()),
                        NearMiss.suggestion(word.text(), Behaviour.words()));
            } else {
                spot(entry, new Spot.Seen(behaviour.get()), spots);
            }
        }
    }

    private OptionalDouble number(Fields fields, Entry entry) {
        if (entry.value() instanceof Scalar scalar) {
            return fields.numberIn(scalar);
        }
        problems.add(
                entry.value().place(),
                "the value of " + entry.key().text() + " is " + entry.value().kind(),
                "one number",
                "write one number a spot");
        return OptionalDouble.empty();
    }

    private void spot(Entry entry, Position position, List<Spot> spots) {
        Set<Dye> held = new TreeSet<>();
        for (String name : entry.key().text().split("\\s*\\+\\s*")) {
            Optional<Dye> dye = dye(name, entry.key().place());
            if (dye.isEmpty()) {
                return;
            }
            if (spots.stream().anyMatch(spot -> spot.dyes().contains(dye.get())) || !held.add(dye.get())) {
                problems.add(
                        entry.key().place(),
                        "the dye `" + name + "` has a second spot on this strip",
                        "one spot for each dye",
                        "if a dye gave two spots it is two dyes: list both in the mixture");
                return;
            }
        }
        spots.add(new Spot(List.copyOf(held), position, entry.key().place()));
    }

    private Optional<Dye> dye(String name, Place place) {
        Optional<Dye> dye =
                dyes.stream().filter(known -> known.name().equals(name.strip())).findFirst();
        if (dye.isEmpty()) {
            List<String> names = dyes.stream().map(Dye::name).toList();
            problems.add(
                    place,
                    "the mixture has no dye `" + name.strip() + "`",
                    "one of " + String.join(", ", names),
                    NearMiss.suggestion(name, names));
        }
        return dye;
    }

    private Set<Dye> dyesListed(Fields fields, String key) {
        Set<Dye> listed = new TreeSet<>();
        fields.texts(key).forEach(name -> dye(name.text(), name.place()).ifPresent(listed::add));
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
                                    NearMiss.suggestion(word.text(), Mishap.words())));
        }
        return mishaps;
    }

    private void everyDyeIsAccountedFor(Fields fields, List<Spot> spots, Set<Dye> notSeen, Set<Mishap> mishaps) {
        boolean nothingToRead = spots.isEmpty() && !mishaps.isEmpty();
        for (Dye dye : dyes) {
            boolean shown = spots.stream().anyMatch(spot -> spot.dyes().contains(dye));
            if (!shown && !notSeen.contains(dye) && !nothingToRead && !problemAlreadyTold(fields, dye)) {
                problems.add(
                        fields.place(),
                        "no spot of this strip shows " + dye.name(),
                        "every dye of the mixture on every strip",
                        "add its spot, put it into the spot it shares (`" + dye.name()
                                + " + other: 24`), or list it under `not seen`");
            }
            if (shown && notSeen.contains(dye)) {
                problems.add(
                        fields.placeOf("not seen"),
                        dye.name() + " has a spot and stands under `not seen`",
                        "one of the two",
                        "remove it from one of them");
            }
        }
    }

    /** A dye whose own entry was refused is not missing as well. */
    private boolean problemAlreadyTold(Fields fields, Dye dye) {
        return List.of("travel mm", "Rf", "moves").stream()
                .filter(key ->
                        fields.node(key).filter(Node.Mapping.class::isInstance).isPresent())
                .flatMap(key -> fields.entries(key).stream())
                .anyMatch(entry ->
                        List.of(entry.key().text().split("\\s*\\+\\s*")).contains(dye.name()));
    }

    private List<SeenBetween> gaps(Fields fields) {
        List<SeenBetween> gaps = new ArrayList<>();
        for (Node node : fields.list("gaps")) {
            Fields gap = Fields.ofNode(node, "a gap", Set.of("ahead", "behind", "looks"), problems);
            Optional<Dye> ahead = dye(gap.requiredText("ahead"), gap.placeOf("ahead"));
            Optional<Dye> behind = dye(gap.requiredText("behind"), gap.placeOf("behind"));
            String word = gap.requiredText("looks");
            Optional<GapLook> look = GapLook.named(word);
            if (look.isEmpty()) {
                problems.add(
                        gap.placeOf("looks"),
                        "`" + word + "` is no word for a gap",
                        "one of " + String.join(", ", GapLook.words()),
                        NearMiss.suggestion(word, GapLook.words()));
            }
            if (ahead.isPresent() && ahead.equals(behind)) {
                problems.add(
                        gap.place(),
                        "the gap is between " + ahead.get().name() + " and itself",
                        "two dyes",
                        "name the dye behind");
                continue;
            }
            ahead.ifPresent(first -> behind.ifPresent(
                    second -> look.ifPresent(seen -> gaps.add(new SeenBetween(first, second, seen, gap.place())))));
        }
        return List.copyOf(gaps);
    }

    private int replicate(Fields fields) {
        OptionalDouble number = fields.number("replicate");
        if (number.isPresent() && (number.getAsDouble() < 1 || number.getAsDouble() % 1 != 0)) {
            problems.add(
                    fields.placeOf("replicate"),
                    "the replicate number is " + number.getAsDouble(),
                    "1, 2, 3, ...",
                    "number the strips in one eluent from 1");
            return 1;
        }
        return (int) number.orElse(1);
    }

    private OptionalDouble division(Fields fields) {
        OptionalDouble division = fields.number("ruler mm");
        if (division.isPresent() && (division.getAsDouble() <= 0 || division.getAsDouble() > 10)) {
            problems.add(
                    fields.placeOf("ruler mm"),
                    "the ruler's division is " + division.getAsDouble() + " mm",
                    "between 0 and 10 mm",
                    "give the distance between two marks of the ruler");
            return OptionalDouble.empty();
        }
        return division;
    }
}
