package org.wickwise.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.wickwise.strip.GapLook;
import org.wickwise.strip.Spot;
import org.wickwise.strip.Spot.Position;
import org.wickwise.strip.Strip.SeenBetween;
import org.wickwise.substance.Dye;
import org.wickwise.text.Fields;
import org.wickwise.text.NearMiss;
import org.wickwise.text.Node;
import org.wickwise.text.Problems;

/** Reads what was seen between the spots of one strip, and holds it against where the spots are. */
final class GapReader {

    private static final Set<String> KEYS = Set.of("ahead", "behind", "looks");

    private final MixtureDyes dyes;
    private final Problems problems;
    private final List<SeenBetween> gaps = new ArrayList<>();

    GapReader(MixtureDyes dyes, Problems problems) {
        this.dyes = dyes;
        this.problems = problems;
    }

    List<SeenBetween> gaps(Fields strip, List<Spot> spots) {
        for (Node node : strip.list("gaps")) {
            Fields fields = Fields.ofNode(node, "a gap", KEYS, problems);
            gap(fields).filter(gap -> fits(gap, spots)).ifPresent(gaps::add);
        }
        return List.copyOf(gaps);
    }

    private Optional<SeenBetween> gap(Fields fields) {
        Optional<Dye> ahead = dyes.named(fields.requiredText("ahead"), fields.placeOf("ahead"));
        Optional<Dye> behind = dyes.named(fields.requiredText("behind"), fields.placeOf("behind"));
        String word = fields.requiredText("looks");
        Optional<GapLook> look = GapLook.named(word);
        if (look.isEmpty() && !word.isEmpty()) {
            problems.add(
                    fields.placeOf("looks"),
                    "`" + word + "` is no word for a gap",
                    "one of " + String.join(", ", GapLook.words()),
                    NearMiss.suggestion(word, GapLook.words(), List.of()));
        }
        return ahead.flatMap(first ->
                behind.flatMap(second -> look.map(seen -> new SeenBetween(first, second, seen, fields.place()))));
    }

    private boolean fits(SeenBetween gap, List<Spot> spots) {
        String pair = gap.ahead() + " and " + gap.behind();
        if (gap.ahead().equals(gap.behind())) {
            return refuse(gap, "the gap is between " + gap.ahead() + " and itself", "two dyes", "name the dye behind");
        }
        boolean again = gaps.stream()
                .anyMatch(other -> Set.of(other.ahead(), other.behind()).equals(Set.of(gap.ahead(), gap.behind())));
        if (again) {
            return refuse(gap, "a second gap between " + pair, "one for each pair", "remove one of the two");
        }
        Optional<Spot> ahead = spotOf(gap.ahead(), spots);
        Optional<Spot> behind = spotOf(gap.behind(), spots);
        if (ahead.isEmpty() || behind.isEmpty()) {
            return spots.isEmpty()
                    || refuse(
                            gap,
                            "a gap between " + pair + ", and one of them has no spot on this strip",
                            "two dyes that have a spot and are not listed under `not seen`",
                            "remove the gap, or add the spot");
        }
        if (ahead.equals(behind)) {
            return refuse(
                    gap,
                    pair + " share a spot, and there is a gap between them",
                    "one of the two",
                    "give each its own spot, or remove the gap");
        }
        if (isBehind(ahead.get().position(), behind.get().position())) {
            return refuse(
                    gap,
                    gap.ahead() + " is said to be ahead of " + gap.behind() + ", but " + gap.ahead() + " "
                            + ahead.get().position().words() + " and " + gap.behind() + " "
                            + behind.get().position().words(),
                    "the dye further from the origin under `ahead`",
                    "change the two over, or correct the spots");
        }
        return true;
    }

    private static boolean isBehind(Position one, Position other) {
        if (one instanceof Spot.Travelled here && other instanceof Spot.Travelled there) {
            return here.millimetres() < there.millimetres();
        }
        if (one instanceof Spot.Quoted here && other instanceof Spot.Quoted there) {
            return here.retardationFactor() < there.retardationFactor();
        }
        return one instanceof Spot.Seen here
                && other instanceof Spot.Seen there
                && here.behaviour().compareTo(there.behaviour()) < 0;
    }

    private static Optional<Spot> spotOf(Dye dye, List<Spot> spots) {
        return spots.stream().filter(spot -> spot.dyes().contains(dye)).findFirst();
    }

    private boolean refuse(SeenBetween gap, String found, String expected, String wayOut) {
        problems.add(gap.place(), found, expected, wayOut);
        return false;
    }
}
