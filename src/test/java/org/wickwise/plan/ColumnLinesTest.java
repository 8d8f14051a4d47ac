package org.wickwise.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wickwise.Shipped;
import org.wickwise.report.Heading;
import org.wickwise.report.ReasonText;
import org.wickwise.rulebook.Judgement;
import org.wickwise.substance.Eluent;

/** What the plan says of the column, with the demo's column, load and grains changed. */
class ColumnLinesTest {

    private static final String LOAD = "  load mg: 60\n";
    private static final String BORE = "  bore mm: 15\n";
    private static final String BED = "  bed mm: 120\n";
    private static final String TUBE = "  tube mm: 300\n";
    private static final String GRAINS = "  particle um: [63, 200]\n";
    private static final String DRIVE = "  run by: gravity\n";
    private static final String HEAD = "  head mm: 100\n";

    @TempDir
    private Path folder;

    @Test
    void a_load_within_what_the_bed_takes_is_no_doubt() throws IOException {
        Plan plan = plan(demo());
        assertThat(text(plan, "size")).contains("takes about 180 mg", "your load of 60 mg is within that");
        assertThat(plan.line("overload")).isEmpty();
    }

    @Test
    void a_load_above_it_is_a_doubt_with_two_ways_out() throws IOException {
        Plan plan = plan(demo().replace(LOAD, "  load mg: 300\n"));
        assertThat(plan.line("size")).isEmpty();
        assertThat(plan.line("overload").orElseThrow().section()).isEqualTo(PlanLine.Section.DOUBTS);
        assertThat(text(plan, "overload"))
                .contains(
                        "Your load of 300 mg is too much",
                        "between 2 runs",
                        "a bore of about 18 mm and a bed of 150 mm");
    }

    @Test
    void a_bed_that_is_only_too_short_may_be_packed_higher() throws IOException {
        Plan plan = plan(demo().replace(LOAD, "  load mg: 200\n"));
        assertThat(text(plan, "overload")).contains("or pack a bed of 134 mm");
    }

    @Test
    void a_bed_longer_than_the_tube_asks_for_another_tube() throws IOException {
        String inTube = demo().replace(TUBE, "  tube mm: 134\n");
        String longer = " in a tube longer than yours of 134 mm";
        assertThat(text(plan(inTube.replace(LOAD, "  load mg: 200\n")), "overload"))
                .contains("or pack a bed of 134 mm" + longer);
        assertThat(text(plan(inTube.replace(LOAD, "  load mg: 300\n")), "overload"))
                .contains("a bed of 150 mm" + longer);
        assertThat(text(plan(demo().replace(LOAD, "  load mg: 200\n")), "overload"))
                .doesNotContain("longer than yours");
    }

    @Test
    void a_load_above_the_whole_table_is_shared_and_no_bore_is_named() throws IOException {
        Plan plan = plan(demo().replace(LOAD, "  load mg: 5000\n").replace(BORE, "  bore mm: 50\n"));
        assertThat(text(plan, "overload")).contains("between 3 runs.").doesNotContain("a bore of");
    }

    @Test
    void without_a_load_the_plan_says_what_the_bed_takes() throws IOException {
        assertThat(text(plan(demo().replace(LOAD, "")), "size"))
                .contains("This bed takes about 180 mg of mixture")
                .doesNotContain("your load");
    }

    @Test
    void without_a_bore_the_plan_says_which_to_take() throws IOException {
        String text = text(plan(demo().replace(BORE, "").replace(LOAD, "  load mg: 300\n")), "size");
        assertThat(text).contains("take a bore of about 18 mm and a bed of 150 mm", "mL of eluent");
    }

    @Test
    void without_bore_and_load_there_is_nothing_to_size() throws IOException {
        Plan plan = plan(demo().replace(BORE, "").replace(LOAD, ""));
        assertThat(plan.lines())
                .extracting(PlanLine::label)
                .doesNotContain("size", "overload", "fractions", "flow", "time");
    }

    @Test
    void a_bore_outside_the_table_gets_the_ratio_of_adsorbent_only() throws IOException {
        assertThat(text(plan(demo().replace(BORE, "  bore mm: 8\n")), "size"))
                .contains("lies outside the table of column sizes (10 to 50 mm)", "usual 50:1")
                .doesNotContain("takes about");
    }

    @Test
    void coarser_grains_than_the_table_has_are_told() throws IOException {
        assertThat(text(plan(demo()), "size")).contains("finer grains (40 to 63 um)");
        assertThat(text(plan(demo().replace(GRAINS, "  particle um: [40, 63]\n")), "size"))
                .doesNotContain("The table was made on");
    }

    @Test
    void a_load_in_little_of_the_packing_liquid_is_narrow_and_in_much_of_it_a_doubt() throws IOException {
        Plan little = plan(demo().replace(LOAD, LOAD + "  load mL: 2\n"));
        assertThat(text(little, "load-volume"))
                .contains("2 mL of heptane", "once the bed holds the dyes", "straw is held least", "narrow enough");
        Plan much = plan(demo().replace(LOAD, LOAD + "  load mL: 60\n"));
        assertThat(much.line("load-volume").orElseThrow().section()).isEqualTo(PlanLine.Section.DOUBTS);
        assertThat(text(much, "load-volume")).contains("take the mixture up in less");
        assertThat(plan(demo()).line("load-volume")).isEmpty();
    }

    @Test
    void a_load_whose_liquid_nobody_measured_gets_no_share_of_the_bed() throws IOException {
        String measured = "    front mm: 74\n    travel mm: {straw: 1, rust: 0, harbour blue: 0}\n";
        assertThat(demo()).contains(measured);
        String watched = demo().replace(measured, "    moves: {straw: stays, rust: stays, harbour blue: stays}\n");
        Plan plan = plan(watched.replace(LOAD, LOAD + "  load mL: 2\n"));
        assertThat(plan.packing().orElseThrow().name()).isEqualTo("heptane");
        assertThat(plan.line("load-volume")).isEmpty();
    }

    @Test
    void flow_and_time_are_told_with_their_basis_or_not_at_all() throws IOException {
        assertThat(text(plan(demo()), "flow")).contains("by gravity (estimated)");
        for (String needed : new String[] {BORE, BED, GRAINS, DRIVE, HEAD}) {
            Plan plan = plan(demo().replace(needed, ""));
            assertThat(plan.line("flow")).as("flow without %s", needed).isEmpty();
            assertThat(plan.line("time")).as("time without %s", needed).isEmpty();
        }
    }

    @Test
    void the_reason_of_a_flow_names_what_the_writer_said_and_the_limits() throws IOException {
        Plan plan = plan(demo());
        assertThat(ReasonText.of(plan.line("flow").orElseThrow(), Heading.plain())
                        .replaceAll("\\s+", " "))
                .contains("100 mm of liquid stand above the bed", "63 to 200 um", "the bore is 15 mm")
                .contains("the slowness of a real bed is 2.5 times", "viscosity of ethanol", "Kozeny-Carman");
    }

    /** By the limits a blend of an alcohol with water is twice as thick as its thicker part, other blends are not. */
    @Test
    void an_alcohol_with_water_runs_more_slowly_than_the_alcohol() throws IOException {
        assertThat(timesSlowerThanEthanol("ethanol + water 4:1")).isCloseTo(2, within(1e-9));
        assertThat(timesSlowerThanEthanol("ethanol + acetone 4:1")).isCloseTo(1, within(1e-9));
    }

    private double timesSlowerThanEthanol(String blend) throws IOException {
        Judgement judgement = plan(demo() + "\n  - {solvent: " + blend
                        + ", front mm: 80, travel mm: {straw: 78, rust: 70, harbour blue: 60}}\n")
                .judgement();
        return new Flow(judgement, Shipped.rulebook().columnSizes())
                .timesSlower(eluent(judgement, "ethanol"), eluent(judgement, blend))
                .orElseThrow();
    }

    private static Eluent eluent(Judgement judgement, String name) {
        return judgement.eluents().stream()
                .filter(eluent -> eluent.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void a_measured_flow_goes_before_a_reckoned_one() throws IOException {
        Plan plan = plan(demo().replace(HEAD, HEAD + "  flow mL per min: 3\n"));
        assertThat(text(plan, "flow")).contains("about 3.0 mL a minute", "as you measured");
        // What is likely to be poured, not what is to be kept ready: 151 mL at 3 mL a minute.
        assertThat(text(plan, "volume-1")).contains("about 64 mL");
        assertThat(text(plan, "volume-2")).contains("about 54 mL");
        assertThat(text(plan, "volume-3")).contains("about 33 mL");
        assertThat(text(plan, "time")).contains("about 50 minutes");
        Plan faster = plan(demo().replace(HEAD, HEAD + "  flow mL per min: 6\n"));
        assertThat(text(faster, "time")).contains("about 25 minutes");
    }

    @Test
    void a_marked_fall_of_the_flow_is_told_before_it_happens() throws IOException {
        assertThat(text(plan(demo()), "slower-3"))
                .contains("From ethyl acetate to ethanol the flow falls", "do not push it");
        assertThat(plan(demo()).line("slower-2")).isEmpty();
    }

    @Test
    void the_caution_on_pressure_stands_only_where_pressure_is_used() throws IOException {
        assertThat(plan(demo()).line("pressure")).isEmpty();
        assertThat(text(plan(demo().replace(DRIVE, "  run by: pressure\n")), "pressure"))
                .contains("Glass that was not made for pressure must not be pressurised");
    }

    @Test
    void by_pressure_fine_grains_run_as_the_table_is_run_unless_that_takes_more_than_a_gentle_push()
            throws IOException {
        String fine = demo().replace(DRIVE, "  run by: pressure\n").replace(HEAD, "");
        Plan coarse = plan(fine);
        assertThat(text(coarse, "flow")).contains("about 9.0 mL a minute of heptane + ethyl acetate 9:1");
        Plan finest = plan(fine.replace(GRAINS, "  particle um: [20, 30]\n"));
        assertThat(text(finest, "flow")).contains("by pressure (estimated)").doesNotContain("9.0 mL");
        assertThat(ReasonText.of(finest.line("flow").orElseThrow(), Heading.plain()))
                .contains("the gentle pressure limit is 30 kPa");
    }

    private static String demo() throws IOException {
        String demo = Files.readString(Shipped.DEMO);
        assertThat(demo).contains(LOAD, BORE, BED, GRAINS, DRIVE, HEAD);
        return demo;
    }

    private Plan plan(String text) throws IOException {
        return Shipped.planOf(Files.writeString(folder.resolve("case.yaml"), text));
    }

    private static String text(Plan plan, String label) {
        Optional<PlanLine> line = plan.line(label);
        assertThat(line).as("the line %s", label).isPresent();
        return line.orElseThrow().text();
    }
}
