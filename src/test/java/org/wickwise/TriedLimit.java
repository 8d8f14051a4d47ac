package org.wickwise;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import java.util.function.DoublePredicate;
import org.wickwise.bench.Case;
import org.wickwise.rulebook.Judgement;
import org.wickwise.rulebook.Limit;

/** A limit set just above a number that the program compares with it, to the number itself, and just below it. */
public final class TriedLimit {

    private TriedLimit() {}

    /**
     * Asserts that a comparison falls on the sides that the table tells.
     *
     * @param limit its name, without "the"
     * @param in where the program compares
     * @param compared the number that is compared
     * @param holds whether the comparison holds when the limit has this value
     */
    public static void fallsAsTheTableTells(String limit, String in, double compared, DoublePredicate holds) {
        String sides = yesOrNo(holds.test(Math.nextUp(compared))) + " " + yesOrNo(holds.test(compared)) + " "
                + yesOrNo(holds.test(Math.nextDown(compared)));
        assertThat(LimitsTable.ofTheProgram())
                .filteredOn(row ->
                        row.number().equals("the " + limit) && row.where().equals(in))
                .as("below, at and above the %s, which is compared with %s", limit, compared)
                .extracting(LimitsTable.Row::sides)
                .containsExactly(sides);
    }

    private static String yesOrNo(boolean holds) {
        return holds ? "yes" : "no";
    }

    /** The shipped limits, one of them set otherwise. */
    public static Map<String, Limit> limits(String name, double value) {
        Map<String, Limit> limits = new HashMap<>(Shipped.rulebook().limits());
        limits.put(name, limits.get(name).supposed(value, limits.get(name).place()));
        return limits;
    }

    public static Judgement judged(Case written, String limit, double value) {
        return Shipped.bench().judge().judge(written, limits(limit, value));
    }

    /** What was judged, read under another limit by what comes after the rules. */
    public static Judgement under(Judgement judged, String limit, double value) {
        return new Judgement(
                judged.judged(),
                judged.eluents(),
                judged.movements(),
                judged.gaps(),
                judged.blends(),
                judged.facts(),
                judged.reasons(),
                limits(limit, value),
                judged.miscibility());
    }
}
