package org.wickwise.rulebook;

import static org.wickwise.TriedLimit.fallsAsTheTableTells;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.wickwise.Shipped;
import org.wickwise.TriedLimit;
import org.wickwise.TriesLimit;
import org.wickwise.bench.Case;
import org.wickwise.bench.CaseReader;
import org.wickwise.text.ProblemsFound;

/** What the program asks of readings before the rules judge them, tried at its limits. */
class LimitsOfReadingsTest {

    private static final String MOVEMENTS = "rulebook/Movements";

    /** 0.9 less 0.7 is a little more than 0.2 to a computer, and 0.2 to everybody else. */
    @Test
    @TriesLimit(limit = "replicate disagreement limit", in = MOVEMENTS)
    void strips_as_far_apart_as_the_limit_still_agree() {
        fallsAsTheTableTells(
                "replicate disagreement limit",
                MOVEMENTS,
                0.2,
                limit -> contradict(
                        "replicate disagreement limit", limit, "Rf: {red: 0.7, blue: 0}", "Rf: {red: 0.9, blue: 0}"));
    }

    @Test
    @TriesLimit(limit = "staying limit", in = MOVEMENTS)
    void a_dye_at_the_staying_limit_is_not_one_that_travels() {
        contradictsTheWord("staying limit", 0.05, "travels");
    }

    @Test
    @TriesLimit(limit = "creeping limit", in = MOVEMENTS)
    void a_dye_at_the_creeping_limit_is_not_one_that_runs_ahead() {
        contradictsTheWord("creeping limit", 0.15, "runs ahead");
    }

    @Test
    @TriesLimit(limit = "running-ahead limit", in = MOVEMENTS)
    void a_dye_at_the_running_ahead_limit_may_be_one_that_creeps() {
        contradictsTheWord("running-ahead limit", 0.7, "creeps");
    }

    @Test
    @TriesLimit(limit = "strips that outvote one", in = "rulebook/ReplicateScatter")
    void as_many_strips_as_the_limit_are_asked_by_their_median() {
        Case written = strips(
                "Rf: {red: 0.35, blue: 0}",
                "Rf: {red: 0.34, blue: 0}",
                "Rf: {red: 0.36, blue: 0}",
                "Rf: {red: 0.33, blue: 0}");
        fallsAsTheTableTells(
                "strips that outvote one",
                "rulebook/ReplicateScatter",
                4,
                limit -> TriedLimit.judged(written, "strips that outvote one", limit).facts().stream()
                        .anyMatch(Fact.OutOfLine.class::isInstance));
    }

    private static void contradictsTheWord(String name, double retardation, String word) {
        fallsAsTheTableTells(
                name,
                MOVEMENTS,
                retardation,
                limit -> contradict(
                        name,
                        limit,
                        "Rf: {red: " + retardation + ", blue: 0}",
                        "moves: {red: " + word + ", blue: stays}"));
    }

    private static boolean contradict(String name, double limit, String... spots) {
        try {
            TriedLimit.judged(strips(spots), name, limit);
            return false;
        } catch (ProblemsFound contradiction) {
            return true;
        }
    }

    private static Case strips(String... spots) {
        String strips = IntStream.range(0, spots.length)
                .mapToObj(i -> "  - {solvent: heptane, replicate: " + (i + 1) + ", " + spots[i] + "}\n")
                .collect(Collectors.joining());
        return CaseReader.parse(
                "example.yaml",
                """
                title: example
                mixture: {dyes: [{name: red, class: neutral}, {name: blue, class: neutral}]}
                column: {stationary phase: silica}
                setting: college
                strips:
                """
                        + strips,
                Shipped.data());
    }
}
