package org.wickwise.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wickwise.TriedLimit.fallsAsTheTableTells;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.wickwise.Shipped;
import org.wickwise.TriedLimit;
import org.wickwise.TriesLimit;
import org.wickwise.bench.Case;
import org.wickwise.bench.CaseReader;
import org.wickwise.column.BandOnBed;
import org.wickwise.column.LoadPlug;
import org.wickwise.column.Percolation;
import org.wickwise.column.Pour;
import org.wickwise.notebook.DyeOutcome;
import org.wickwise.notebook.Entry;
import org.wickwise.notebook.EntryReader;
import org.wickwise.notebook.PooledFractions;
import org.wickwise.notebook.Recall;
import org.wickwise.notebook.Recollection;
import org.wickwise.notebook.RunOutcome;
import org.wickwise.plan.Choices.Packing;
import org.wickwise.plan.Choices.Pourable;
import org.wickwise.plan.Choices.Reach;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Conclusion.MayPack;
import org.wickwise.rulebook.Conclusion.PackingKind;
import org.wickwise.rulebook.Judgement;
import org.wickwise.rulebook.RunFacts;
import org.wickwise.strip.Behaviour;
import org.wickwise.strip.Movement;
import org.wickwise.strip.RetardationFactor;
import org.wickwise.substance.Dye;
import org.wickwise.substance.DyeClass;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Numbers;
import org.wickwise.text.Place;

/** What a plan counts, doubts and mentions, tried at the limits. */
class LimitsOfPlansTest {

    private static final Case DEMO = Shipped.caseIn(Shipped.DEMO);
    private static final Judgement JUDGED = Shipped.bench().judge().judge(DEMO);
    private static final Plan PLAN = Shipped.planner().plan(JUDGED);
    private static final String CHOICES = "plan/ChoicesOfCase";
    private static final Place HERE = Place.wholeFile("invented");
    private static final Eluent HEPTANE =
            Eluent.neat(Shipped.data().solvent("heptane").orElseThrow());
    private static final Packing PACKING = new Packing(
            new MayPack(HEPTANE, HEPTANE, PackingKind.FIRST_ELUENT),
            true,
            0,
            3,
            0,
            List.of(BandOnBed.loaded(), BandOnBed.loaded()));

    private static Plan under(Judgement judged, String limit, double value) {
        return Shipped.planner().plan(TriedLimit.under(judged, limit, value));
    }

    @Test
    @TriesLimit(limit = "widest load", in = "plan/Loading")
    void a_load_just_as_wide_as_the_limit_is_narrow_enough() throws IOException {
        String demo = Files.readString(Shipped.DEMO).replace("  load mg: 60\n", "  load mg: 60\n  load mL: 2\n");
        Judgement judged = Shipped.bench().judge().judge(CaseReader.parse("demo.yaml", demo, Shipped.data()));
        Eluent packing = Shipped.planner().plan(judged).packing().orElseThrow();
        double highest = judged.judged().dyes().stream()
                .map(dye -> judged.movement(dye, packing)
                        .flatMap(Movement::retardation)
                        .orElseThrow())
                .mapToDouble(RetardationFactor::highest)
                .max()
                .orElseThrow();
        double columnVolume = judged.judged().column().columnVolumeMillilitres().orElseThrow();
        double percent =
                100 * LoadPlug.of(2, columnVolume, (1 - highest) / highest).shareOfBed();
        fallsAsTheTableTells(
                "widest load",
                "plan/Loading",
                Numbers.steady(percent),
                limit -> under(judged, "widest load", limit)
                                .line("load-volume")
                                .orElseThrow()
                                .section()
                        == Section.DOUBTS);
    }

    @Test
    @TriesLimit(limit = "most eluent to keep ready", in = "plan/Ranges")
    void what_is_to_be_kept_ready_may_be_just_as_much_as_the_limit() {
        Route route = PLAN.route().orElseThrow();
        double latest = Ranges.of(route, JUDGED).ready().get(0);
        fallsAsTheTableTells("most eluent to keep ready", "plan/Ranges", Numbers.steady(latest), limit -> Ranges.of(
                        route, TriedLimit.under(JUDGED, "most eluent to keep ready", limit))
                .mayFallShort()
                .get(0));
    }

    @Test
    @TriesLimit(limit = "change of flow to mention", in = "plan/FlowLines")
    void a_flow_that_falls_by_just_the_limit_is_mentioned() {
        assertThat(PLAN.line("slower-3").orElseThrow().text()).startsWith("From ethyl acetate to ethanol");
        double slower = Percolation.pressureRatio(viscosity("ethyl acetate"), viscosity("ethanol"));
        fallsAsTheTableTells("change of flow to mention", "plan/FlowLines", Numbers.steady(slower), limit -> under(
                        JUDGED, "change of flow to mention", limit)
                .line("slower-3")
                .isPresent());
    }

    private static double viscosity(String solvent) {
        return Shipped.data().solvent(solvent).orElseThrow().number("viscosity").orElseThrow();
    }

    @Test
    @TriesLimit(limit = "creep before release limit", in = "plan/DoubtLines")
    void a_dye_that_creeps_just_as_far_as_the_limit_is_no_doubt() {
        Dye rust = DEMO.dyes().stream()
                .filter(dye -> dye.name().equals("rust"))
                .findFirst()
                .orElseThrow();
        Route route = PLAN.route().orElseThrow();
        double retention = JUDGED.measured(rust, route.steps().get(0).eluent())
                .orElseThrow()
                .retardationFactor()
                .retentionFactor();
        double share = route.elution().poured().get(0) / retention;
        fallsAsTheTableTells(
                "creep before release limit", "plan/DoubtLines", Numbers.steady(share), limit -> new DoubtLines(
                                TriedLimit.under(JUDGED, "creep before release limit", limit), PLAN.route())
                        .lines().stream().anyMatch(line -> line.text().contains("rust creeps about")));
    }

    @Test
    @TriesLimit(limit = "least recovery alone", in = "plan/Keeping")
    void a_dye_of_which_just_enough_lands_in_its_flask_comes_off_alone() {
        Keeping keeping = Keeping.of(PLAN.route().orElseThrow(), 0.98);
        Keeping.Flask flask = keeping.flasks().get(0);
        fallsAsTheTableTells(
                "least recovery alone",
                "plan/Keeping",
                Numbers.steady(flask.recovery().orElseThrow()),
                limit -> keeping.overlapping(limit).containsAll(flask.dyes()));
    }

    @Test
    @TriesLimit(limit = "surprise limit", in = "plan/SurpriseLines")
    void a_reading_just_as_far_off_as_the_limit_is_no_surprise() {
        Dye straw = DEMO.dyes().get(0);
        Eluent eluent = PLAN.route().orElseThrow().steps().get(0).eluent();
        RetardationFactor seen = JUDGED.measured(straw, eluent).orElseThrow().retardationFactor();
        RetardationFactor known = new RetardationFactor(0.4, 0.02);
        Recollection recollection = new Recollection(
                straw, eluent, known, 3, 2, 0.38, 0.42, List.of("ink"), new Reason.Stated("remembered", HERE));
        Recall recall = new Recall(DEMO, List.of(recollection));
        fallsAsTheTableTells(
                "surprise limit",
                "plan/SurpriseLines",
                Numbers.steady(seen.timesUncertaintyFrom(known)),
                limit -> SurpriseLines.of(TriedLimit.under(JUDGED, "surprise limit", limit), recall).stream()
                        .anyMatch(line -> line.label().equals("surprise-1")));
    }

    /** One fraction of rust holds some straw. */
    @Test
    @TriesLimit(limit = "wanted purity", in = "plan/AfterLines")
    void a_stretch_of_fractions_just_pure_enough_is_kept() throws IOException {
        String text = Files.readString(Path.of("docs/examples/ferry-ink-run.yaml"))
                .replace(
                        "dyes: [rust], colour: faint brown, absorbance: {rust: 0.11}",
                        "dyes: [rust, straw], colour: faint brown, absorbance: {rust: 0.11, straw: 0.02}");
        Entry entry = EntryReader.parse("run.yaml", text, Shipped.data());
        Judgement judged = Shipped.bench()
                .judge()
                .judge(entry.column().orElseThrow(), entry.run().orElseThrow());
        RunOutcome outcome = RunFacts.outcome(judged, entry.run().orElseThrow());
        DyeOutcome rust = outcome.dyes().stream()
                .filter(dye -> dye.dye().name().equals("rust"))
                .findFirst()
                .orElseThrow();
        PooledFractions all = PooledFractions.of(rust, outcome, 0.5).orElseThrow();
        double purity = all.purity().orElseThrow().value();
        assertThat(purity).isStrictlyBetween(0.9, 1.0);
        fallsAsTheTableTells("wanted purity", "plan/AfterLines", Numbers.steady(purity), limit -> PooledFractions.of(
                        rust, outcome, limit)
                .equals(Optional.of(all)));
    }

    /** One dye travels and the other stays, or both travel. */
    private static Choices choices(RetardationFactor second, double comfortable, double creep) {
        Behaviour behaviour = second.value() > 0.15 ? Behaviour.TRAVELS : Behaviour.STAYS;
        Pourable pourable = new Pourable(
                HEPTANE,
                List.of(reach(Behaviour.TRAVELS, new RetardationFactor(0.5, 0.01)), reach(behaviour, second)),
                List.of(2, 0),
                new BitSet(),
                false,
                0,
                0,
                OptionalDouble.empty(),
                0,
                0,
                List.of(PACKING));
        return new Choices(List.of(dye("first"), dye("second")), List.of(pourable), 100, comfortable, creep, 4, 0.5);
    }

    private static Dye dye(String name) {
        return new Dye(name, DyeClass.NEUTRAL, "", HERE);
    }

    private static Optional<Reach> reach(Behaviour behaviour, RetardationFactor retardation) {
        return Optional.of(new Reach(behaviour, false, false, Optional.of(retardation)));
    }

    /** At Rf 0.5 a dye leaves after 2 column volumes, at Rf 0.25 after 4. */
    @Test
    @TriesLimit(limit = "comfortable distance", in = CHOICES)
    void bands_just_the_comfortable_distance_apart_are_not_close() {
        Move both = new Move(0, List.of(1, 2), 0);
        fallsAsTheTableTells(
                "comfortable distance",
                CHOICES,
                2,
                limit ->
                        Criterion.CLOSE_BANDS.count(both, choices(new RetardationFactor(0.25, 0.01), limit, 0.25)) > 0);
    }

    @Test
    @TriesLimit(limit = "creep before release limit", in = CHOICES)
    void a_dye_that_creeps_just_as_far_as_the_limit_counts_nothing() {
        RetardationFactor second = new RetardationFactor(0.04, 0.01);
        double poured = pouring(second, 1).poured().get(0);
        double position = BandOnBed.loaded()
                .after(new Pour(poured, second.retentionFactor()), 1, 100)
                .position();
        assertThat(position).isStrictlyBetween(0.01, 0.9);
        fallsAsTheTableTells(
                "creep before release limit",
                CHOICES,
                position,
                limit -> pouring(second, limit).counts()[0] > 0);
    }

    private static Pouring pouring(RetardationFactor second, double creep) {
        return Pouring.packed(
                        PACKING, choices(second, 1, creep), InventedChoices.preferences(List.of(Criterion.CREEPING)))
                .then(new Move(0, List.of(1), 2), 3);
    }
}
