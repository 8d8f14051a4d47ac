package org.wickwise.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.wickwise.rulebook.Wishes.Cost;
import org.wickwise.rulebook.Wishes.Wish;
import org.wickwise.substance.SolventData;
import org.wickwise.text.Fields;
import org.wickwise.text.NearMiss;
import org.wickwise.text.Node.Entry;
import org.wickwise.text.Node.Mapping;
import org.wickwise.text.Node.Scalar;
import org.wickwise.text.Numbers;
import org.wickwise.text.Problems;

/** Reads the preferences file. */
final class WishesReader {

    private static final Set<String> KEYS =
            Set.of("choose by", "cost of a plan", "tails to wait for", "burden of a greenness ranking");
    private static final Set<String> COST_KEYS = Set.of(
            "per cent of purity lost",
            "per cent of recovery lost",
            "burden of an eluent",
            "column volume",
            "minute",
            "price",
            "step");
    private static final double LONGEST_TAIL = 6;

    private final Set<String> rankings;
    private final Problems problems;

    /** @param data whose greenness rankings may be weighed */
    WishesReader(SolventData data, Problems problems) {
        this.rankings = new TreeSet<>(Set.of("unranked"));
        data.solvents().stream()
                .flatMap(solvent -> solvent.values().getOrDefault("greenness ranking", List.of()).stream())
                .flatMap(value -> value.texts().stream())
                .forEach(rankings::add);
        this.problems = problems;
    }

    Wishes wishes(Mapping file) {
        Fields fields = Fields.of(file, "the preferences", KEYS, problems);
        return new Wishes(chooseBy(fields), burdens(fields), cost(fields), tails(fields));
    }

    /** @param usual what holds where the file does not say */
    Wishes wishes(Mapping file, Wishes usual) {
        Fields fields = Fields.of(file, "the preferences", KEYS, problems);
        return new Wishes(
                fields.has("choose by") ? chooseBy(fields) : usual.chooseBy(),
                fields.has("burden of a greenness ranking") ? burdens(fields) : usual.burdenOfRanking(),
                fields.has("cost of a plan") ? cost(fields) : usual.cost(),
                fields.has("tails to wait for") ? tails(fields) : usual.tailsToWaitFor());
    }

    private static List<Wish> chooseBy(Fields fields) {
        return fields.texts("choose by").stream()
                .map(written -> new Wish(written.text(), written.place()))
                .toList();
    }

    private Map<String, Double> burdens(Fields fields) {
        Map<String, Double> burdens = new TreeMap<>();
        for (Entry entry : fields.entries("burden of a greenness ranking")) {
            String ranking = entry.key().text();
            if (!rankings.contains(ranking)) {
                problems.add(
                        entry.key().place(),
                        "`" + ranking + "` is not a greenness ranking",
                        "one of " + String.join(", ", rankings),
                        NearMiss.suggestion(ranking, rankings, List.of()));
            }
            if (entry.value() instanceof Scalar scalar) {
                fields.numberIn(scalar)
                        .ifPresent(number -> burdens.put(entry.key().text(), number));
            } else {
                problems.add(
                        entry.value().place(),
                        "the burden of `" + ranking + "` is " + entry.value().kind(),
                        "a number",
                        "write one number behind the colon");
            }
        }
        return burdens;
    }

    private Cost cost(Fields fields) {
        Fields cost = fields.node("cost of a plan")
                .map(node -> Fields.ofNode(node, "the cost of a plan", COST_KEYS, problems))
                .orElseGet(() -> Fields.none(fields.place(), "the cost of a plan"));
        return new Cost(
                weight(cost, "per cent of purity lost"),
                weight(cost, "per cent of recovery lost"),
                weight(cost, "burden of an eluent"),
                weight(cost, "column volume"),
                weight(cost, "minute"),
                weight(cost, "price"),
                weight(cost, "step"));
    }

    /** 0 where the file does not say. */
    private double weight(Fields cost, String key) {
        double weight = cost.number(key).orElse(0);
        if (weight < 0) {
            problems.add(
                    cost.placeOf(key),
                    "`" + key + "` weighs " + Numbers.plain(weight, 3),
                    "a weight of 0 or more",
                    "write 0 if it should not count");
            return 0;
        }
        return weight;
    }

    private List<Double> tails(Fields fields) {
        List<Double> tails = new ArrayList<>();
        for (Scalar scalar : fields.texts("tails to wait for")) {
            OptionalDouble tail = fields.numberIn(scalar);
            if (tail.isPresent() && (tail.getAsDouble() <= 0 || tail.getAsDouble() > LONGEST_TAIL)) {
                problems.add(
                        scalar.place(),
                        "a tail of " + scalar.text() + " standard deviations",
                        "more than 0 and at most " + Numbers.plain(LONGEST_TAIL, 0),
                        "2 is where 98 % of a dye is out, 3 where nearly all is");
            } else {
                tail.ifPresent(tails::add);
            }
        }
        if (tails.isEmpty()) {
            problems.add(
                    fields.placeOf("tails to wait for"),
                    "there is no tail to wait for",
                    "one or more numbers of standard deviations under `tails to wait for`",
                    "write `tails to wait for: [2, 3]`");
        }
        return tails;
    }
}
