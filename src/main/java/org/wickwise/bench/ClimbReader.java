package org.wickwise.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.wickwise.strip.FrontReading;
import org.wickwise.text.Bounds;
import org.wickwise.text.Fields;
import org.wickwise.text.Node;
import org.wickwise.text.Node.Listing;
import org.wickwise.text.Node.Mapping;
import org.wickwise.text.Numbers;
import org.wickwise.text.Problems;

/** Reads when the fronts of strips were where; it stands beside what the strips say of dyes, which it does not touch. */
public final class ClimbReader {

    /** What a strip may say of its front on its way. */
    static final Set<String> KEYS = Set.of("minutes", "climbed");

    private static final Set<String> LOOK_KEYS = Set.of("minutes", "mm");
    private static final double MOST_MINUTES = 1000;
    private static final double MOST_MILLIMETRES = 500;

    private final Problems problems;

    ClimbReader(Problems problems) {
        this.problems = problems;
    }

    /** The strips of a case file that say how long their front took; its problems are those that reading the case tells. */
    public static List<ClimbedStrip> of(Mapping root) {
        ClimbReader reader = new ClimbReader(new Problems());
        List<ClimbedStrip> climbed = new ArrayList<>();
        root.value("strips")
                .filter(Listing.class::isInstance)
                .map(Listing.class::cast)
                .ifPresent(strips -> strips.items().stream()
                        .filter(Mapping.class::isInstance)
                        .map(Mapping.class::cast)
                        .forEach(strip -> reader.told(strip).ifPresent(climbed::add)));
        return List.copyOf(climbed);
    }

    private Optional<ClimbedStrip> told(Mapping strip) {
        return climbed(Fields.of(strip.where(KEYS::contains), "a strip", KEYS, problems));
    }

    /** What a strip says of its front on its way, its problems reported; empty where it says nothing. */
    Optional<ClimbedStrip> climbed(Fields strip) {
        OptionalDouble minutes = within(strip, "minutes", MOST_MINUTES, "min");
        List<FrontReading> looks = new ArrayList<>();
        for (Node node : strip.list("climbed")) {
            look(node).ifPresent(look -> {
                if (!looks.isEmpty() && !isLater(look, looks.get(looks.size() - 1))) {
                    problems.add(
                            node.place(),
                            "a front of " + Numbers.plain(look.millimetres(), 1) + " mm after "
                                    + Numbers.plain(look.minutes(), 1) + " min does not lie beyond the look before it",
                            "looks in the order of time, each later and higher",
                            "put them in order, or leave the odd one out");
                } else {
                    looks.add(look);
                }
            });
        }
        return minutes.isEmpty() && looks.isEmpty()
                ? Optional.empty()
                : Optional.of(new ClimbedStrip(minutes, looks, strip.place()));
    }

    private Optional<FrontReading> look(Node node) {
        Fields look = Fields.ofNode(node, "a look at a front", LOOK_KEYS, problems);
        OptionalDouble minutes = required(look, "minutes", MOST_MINUTES, "min");
        OptionalDouble millimetres = required(look, "mm", MOST_MILLIMETRES, "mm");
        return minutes.isEmpty() || millimetres.isEmpty()
                ? Optional.empty()
                : Optional.of(new FrontReading(minutes.getAsDouble(), millimetres.getAsDouble()));
    }

    private static boolean isLater(FrontReading look, FrontReading before) {
        return look.minutes() > before.minutes() && look.millimetres() > before.millimetres();
    }

    private static OptionalDouble required(Fields fields, String key, double most, String unit) {
        fields.require(key);
        return within(fields, key, most, unit);
    }

    private static OptionalDouble within(Fields fields, String key, double most, String unit) {
        return fields.numberWithin(key, Bounds.aboveZeroTo(most, unit), "is there a point missing, or one too many?");
    }
}
