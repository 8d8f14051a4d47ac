package org.wickwise.why;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wickwise.Shipped;
import org.wickwise.bench.Case;
import org.wickwise.command.Workbench;
import org.wickwise.plan.Plan;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.Planner;
import org.wickwise.rulebook.Judge;
import org.wickwise.rulebook.Rulebook;

/** Rules that say of one thing what cannot both be so: told as such, and nothing is planned on either. */
class ContradictionTest {

    private static final Case DEMO = Shipped.caseIn(Shipped.DEMO);
    private static final String OWN_RULE =
            """
            layer: own rules
            about: A rule that speaks against the shipped ones.
            rules:
              - rule: slow-in-ethyl-acetate
                when: [D travels in E, E contains a solvent of the family ester]
                then: [D stays in E]
                because: "{D} is thought to stay in {E}."
                source: our choice
            """;

    private static final String SWEEPS = "then: [E sweeps every dye out]";

    @TempDir
    private static Path folder;

    private static Judge judge;
    private static Planner planner;
    private static Plan plan;

    @BeforeAll
    static void a_rule_book_with_a_rule_that_contradicts_the_others_and_without_the_one_that_tells_what_sweeps()
            throws IOException {
        copy(Path.of("rules"), folder);
        Files.writeString(folder.resolve("layers/9-own.yaml"), OWN_RULE);
        Path roles = folder.resolve("layers/5-roles.yaml");
        String sweeps = Files.readString(roles);
        assertThat(sweeps).contains(SWEEPS);
        Files.writeString(roles, sweeps.replace(SWEEPS, "then: [E holds every dye]"));
        Rulebook rulebook = Rulebook.read(folder, Shipped.data());
        judge = Judge.of(rulebook, Shipped.data(), Workbench.compiledRules());
        planner = new Planner(rulebook);
        plan = planner.plan(judge.judge(DEMO));
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            files.filter(Files::isRegularFile).forEach(file -> {
                Path copied = to.resolve(from.relativize(file).toString());
                try {
                    Files.createDirectories(copied.getParent());
                    Files.copy(file, copied);
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            });
        }
    }

    @Test
    void the_plan_tells_the_contradiction_and_pours_nothing_on_it() {
        assertThat(plan.lines()).extracting(PlanLine::text).anySatisfy(text -> assertThat(text)
                .contains("The rules contradict each other", "rust stays in ethyl acetate")
                .contains("rule slow-in-ethyl-acetate", "rule travels-by-rf", "Nothing is planned on either"));
        assertThat(plan.route().orElseThrow().names()).doesNotContain("then ethyl acetate");
    }

    @Test
    void why_not_names_both_rules() {
        assertThat(new WhyNot(plan, judge, planner).to("ethyl acetate", "demo"))
                .filteredOn(line -> line.label().equals("conflict-1"))
                .extracting(PlanLine::text)
                .singleElement()
                .asString()
                .contains("rule slow-in-ethyl-acetate", "rule travels-by-rf");
    }

    @Test
    void a_contradiction_a_gap_ignorance_and_a_veto_are_four_answers() {
        WhyNot shipped =
                new WhyNot(Shipped.planOf(Shipped.DEMO), Shipped.bench().judge(), Shipped.planner());
        WhyNot own = new WhyNot(plan, judge, planner);
        assertThat(text(own.to("ethyl acetate", "demo"), "conflict-1")).contains("contradict each other");
        assertThat(text(own.to("ethanol", "demo"), "sweep")).contains("no rule of the book says when it would");
        assertThat(text(shipped.to("hexane", "demo"), "hold")).contains("nobody ran a strip in hexane");
        assertThat(text(shipped.to("water", "demo"), "enter")).contains("whatever else speaks for it");
    }

    private static String text(List<PlanLine> lines, String label) {
        return lines.stream()
                .filter(line -> line.label().equals(label))
                .findFirst()
                .orElseThrow()
                .text();
    }

    static List<Path> cases() {
        return Shipped.cases();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void the_shipped_rules_never_contradict_each_other(Path file) {
        assertThat(Shipped.planOf(file).judgement().contradictions()).isEmpty();
    }
}
