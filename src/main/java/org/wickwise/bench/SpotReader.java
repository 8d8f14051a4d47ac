package org.wickwise.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import org.wickwise.strip.Behaviour;
import org.wickwise.strip.Spot;
import org.wickwise.strip.Spot.Position;
import org.wickwise.substance.Dye;
import org.wickwise.text.Fields;
import org.wickwise.text.NearMiss;
import org.wickwise.text.Node.Entry;
import org.wickwise.text.Node.Scalar;
import org.wickwise.text.Numbers;
import org.wickwise.text.Problems;

/** Reads the spots of one strip: measured, reported as Rf, or watched. */
final class SpotReader {

    private final MixtureDyes dyes;
    private final Problems problems;
    private final List<Spot> spots = new ArrayList<>();

    SpotReader(MixtureDyes dyes, Problems problems) {
        this.dyes = dyes;
        this.problems = problems;
    }

    /**
     * The spots in the order of their dyes' names.
     *
     * @param problemsBefore how many problems were known before this strip; a strip with a problem of its own is not
     *     searched for missing dyes as well
     * @param mayBeBlank whether the strip needs no spots, because something went wrong with it
     */
    List<Spot> spots(Fields strip, OptionalDouble front, Set<Dye> notSeen, boolean mayBeBlank, int problemsBefore) {
        measured(strip, front);
        reported(strip);
        watched(strip);
        boolean allRead = problems.size() == problemsBefore && strip.isReported();
        if (allRead && !dyes.dyes().isEmpty() && !(mayBeBlank && spots.isEmpty())) {
            everyDyeIsAccountedFor(strip, notSeen);
        }
        spots.sort(Comparator.comparing(spot -> spot.dyes().get(0)));
        return List.copyOf(spots);
    }

    private void measured(Fields strip, OptionalDouble front) {
        if (strip.has("travel mm") && !strip.has("front mm")) {
            problems.add(
                    strip.placeOf("travel mm"),
                    "the strip has travels and no solvent front",
                    "`front mm: ...` beside `travel mm`",
                    "measure the front from the origin; if it was never marked, write `moves` with words instead");
        }
        for (Entry entry : strip.entries("travel mm")) {
            number(strip, entry).ifPresent(millimetres -> travel(entry, millimetres, front));
        }
    }

    private void travel(Entry entry, double millimetres, OptionalDouble front) {
        String dye = entry.key().text();
        if (millimetres < 0) {
            problems.add(
                    entry.value().place(),
                    "the travel of " + dye + " is " + Numbers.plain(millimetres, 2) + " mm",
                    "0 mm or more, measured from the origin",
                    "a spot that did not move has travelled 0");
        } else if (front.isPresent() && millimetres > front.getAsDouble()) {
            problems.add(
                    entry.value().place(),
                    "the spot of " + dye + " at " + Numbers.plain(millimetres, 2) + " mm is beyond the front at "
                            + Numbers.plain(front.getAsDouble(), 2) + " mm",
                    "a travel between 0 and the front",
                    "measure both from the origin, not from the end of the strip");
        } else {
            spot(entry, new Spot.Travelled(millimetres));
        }
    }

    private void reported(Fields strip) {
        for (Entry entry : strip.entries("Rf")) {
            number(strip, entry).ifPresent(value -> rf(entry, value));
        }
    }

    private void rf(Entry entry, double value) {
        if (value >= 0 && value <= 1) {
            spot(entry, new Spot.Quoted(value));
            return;
        }
        boolean hundredths = value >= 2 && value <= 100;
        problems.add(
                entry.value().place(),
                "the Rf of " + entry.key().text() + " is " + Numbers.plain(value, 3),
                "an Rf between 0 and 1",
                hundredths
                        ? "in hundredths? then write " + Numbers.plain(value / 100, 4)
                        : "Rf is the travel of the spot over that of the front");
    }

    private void watched(Fields strip) {
        for (Entry entry : strip.entries("moves")) {
            Optional<Behaviour> behaviour =
                    entry.value() instanceof Scalar word ? Behaviour.named(word.text()) : Optional.empty();
            if (behaviour.isPresent()) {
                spot(entry, new Spot.Seen(behaviour.get()));
            } else {
                String word = entry.value() instanceof Scalar scalar ? scalar.text() : "";
                problems.add(
                        entry.value().place(),
                        entry.value().kind() + " is no word for a movement ("
                                + entry.key().text() + ")",
                        "one of " + String.join(", ", Behaviour.words()),
                        NearMiss.suggestion(word, Behaviour.words(), List.of()));
            }
        }
    }

    private OptionalDouble number(Fields strip, Entry entry) {
        if (entry.value() instanceof Scalar scalar) {
            return strip.numberIn(scalar);
        }
        problems.add(
                entry.value().place(),
                "the value of " + entry.key().text() + " is " + entry.value().kind(),
                "one number",
                "write one number a spot");
        return OptionalDouble.empty();
    }

    private void spot(Entry entry, Position position) {
        Set<Dye> held = new TreeSet<>();
        for (String name : entry.key().text().split("\\s*\\+\\s*")) {
            Optional<Dye> dye = dyes.named(name, entry.key().place());
            if (dye.isEmpty()) {
                return;
            }
            Optional<Spot> other = spots.stream()
                    .filter(spot -> spot.dyes().contains(dye.get()))
                    .findFirst();
            if (other.isPresent() || !held.add(dye.get())) {
                boolean sameKind = other.isEmpty() || other.get().position().getClass() == position.getClass();
                problems.add(
                        entry.key().place(),
                        "the dye `" + name + "` has a second spot on this strip",
                        "one spot for each dye",
                        sameKind
                                ? "if a dye gave two spots it is two dyes: list both in the mixture"
                                : "it stands under two keys of this strip: remove one of the two");
                return;
            }
        }
        spots.add(new Spot(List.copyOf(held), position, entry.key().place()));
    }

    private void everyDyeIsAccountedFor(Fields strip, Set<Dye> notSeen) {
        if (spots.isEmpty() && notSeen.isEmpty()) {
            problems.add(
                    strip.place(),
                    "the strip shows no spot",
                    "every dye of the mixture on every strip",
                    "add `travel mm` with the travel of each spot, or `moves` with words");
            return;
        }
        for (Dye dye : dyes.dyes()) {
            boolean shown = spots.stream().anyMatch(spot -> spot.dyes().contains(dye));
            if (!shown && !notSeen.contains(dye)) {
                problems.add(
                        strip.place(),
                        "no spot of this strip shows " + dye.name(),
                        "every dye of the mixture on every strip",
                        "add its spot, put it into the spot it shares (`" + dye.name()
                                + " + other: 24`), or list it under `not seen`");
            }
            if (shown && notSeen.contains(dye)) {
                problems.add(
                        strip.placeOf("not seen"),
                        dye.name() + " has a spot and stands under `not seen`",
                        "one of the two",
                        "remove it from one of them");
            }
        }
    }
}
