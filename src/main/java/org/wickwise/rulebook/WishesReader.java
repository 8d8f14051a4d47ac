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
import org.wickwise.text.Place;
import org.wickwise.text.Problems;
import org.wickwise.text.Words;

/** Reads the preferences file. */
final class WishesReader {

    private static final String COST = "cost";
    private static final String COST_OF_A_PLAN = "cost of a plan";
    private static final String BURDEN = "burden of a greenness ranking";
    private static final Set<String> KEYS = Set.of("choose by", COST_OF_A_PLAN, "tails to wait for", BURDEN);
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
        List<Wish> chooseBy = chooseBy(fields);
        return new Wishes(chooseBy, burdens(fields), cost(fields, chooseBy), tails(fields));
    }

    /** @param usual what holds where the file does not say */
    Wishes wishes(Mapping file, Wishes usual) {
        Fields fields = Fields.of(file, "the preferences", KEYS, problems);
        List<Wish> chooseBy = fields.has("choose by") ? chooseBy(fields) : usual.chooseBy();
        return new Wishes(
                chooseBy,
                fields.has("burden of a greenness ranking") ? burdens(fields) : usual.burdenOfRanking(),
                fields.has("cost of a plan") ? cost(fields, chooseBy) : usual.cost(),
                fields.has("tails to wait for") ? tails(fields) : usual.tailsToWaitFor());
    }

    private static List<Wish> chooseBy(Fields fields) {
        return fields.texts("choose by").stream()
                .map(written -> new Wish(written.text(), written.place()))
                .toList();
    }

    private Map<String, Double> burdens(Fields fields) {
        fields.require(BURDEN);
        Map<String, Double> burdens = new TreeMap<>();
        Set<String> untold = new TreeSet<>(rankings);
        boolean anyUnknown = false;
        for (Entry entry : fields.entries(BURDEN)) {
            String ranking = entry.key().text();
            anyUnknown |= !rankings.contains(ranking);
            untold.remove(ranking);
            if (!rankings.contains(ranking)) {
                problems.add(
                        entry.key().place(),
                        "`" + ranking + "` is not a greenness ranking",
                        "one of " + String.join(", ", rankings),
                        NearMiss.suggestion(ranking, rankings, List.of()));
            }
            if (entry.value() instanceof Scalar scalar) {
                fields.numberIn(scalar)
                        .ifPresent(number -> burdens.put(ranking, weight(ranking, number, scalar.place())));
            } else {
                problems.add(
                        entry.value().place(),
                        "the burden of `" + ranking + "` is " + entry.value().kind(),
                        "a number",
                        "write one number behind the colon");
            }
        }
        if (fields.has(BURDEN) && !untold.isEmpty() && !anyUnknown) {
            problems.add(
                    fields.placeOf(BURDEN),
                    "no burden of a solvent that is " + Words.joined(List.copyOf(untold)),
                    "a number for each of " + String.join(", ", rankings),
                    "write 0 if it should not count");
        }
        return burdens;
    }

    /** Without the group there is no cost, which only a file that does not choose by cost may leave out. */
    private Cost cost(Fields fields, List<Wish> chooseBy) {
        if (chooseBy.stream().anyMatch(wish -> wish.criterion().equals(COST))) {
            fields.require(COST_OF_A_PLAN);
        }
        Fields cost = fields.node(COST_OF_A_PLAN)
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

    private double weight(Fields cost, String key) {
        return weight(key, cost.requiredNumber(key).orElse(0), cost.placeOf(key));
    }

    /** The weight; 0, with a problem reported, where it is less. */
    private double weight(String key, double weight, Place place) {
        if (weight < 0) {
            problems.add(
                    place,
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
