package org.wickwise.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wickwise.Shipped;
import org.wickwise.column.Band;
import org.wickwise.strip.RetardationFactor;
import org.wickwise.strip.Ruler;
import org.wickwise.substance.Dye;
import org.wickwise.substance.DyeClass;
import org.wickwise.text.Place;

/** What a plan says of volumes, purity and recovery follows from what is known, and from what is not. Invented cases. */
class FiguresOfAPlanTest {

    private static final String LOAD = "  load mL: 3\n";
    private static final String PAIR =
            """
            title: gate paint (invented)
            mixture:
              name: gate paint
              load mL: 3
              dyes: [{name: moss, class: neutral}, {name: brick, class: neutral}]
            column:
              stationary phase: silica
              bore mm: 10
              bed mm: 100
            setting: college
            shelf: [ethyl acetate]
            strips:
              - {solvent: ethyl acetate, front mm: 80, travel mm: {moss: 44, brick: 20}}
            """;

    private static final Pattern TUBES =
            Pattern.compile("whole tubes (\\d+) to (\\d+) of ([0-9.]+) mL, purity over 99 %, recovery (\\d+) %");

    @TempDir
    private Path folder;

    @Test
    void a_load_that_moves_at_once_widens_the_bands_and_brings_them_sooner() throws IOException {
        Plan wide = plan(PAIR);
        Plan thin = plan(PAIR.replace(LOAD, ""));
        double load = 3 / wide.judged().column().columnVolumeMillilitres().orElseThrow();
        for (Band band : thin.elution().orElseThrow().bands().values()) {
            Band widened = wide.elution().orElseThrow().bands().values().stream()
                    .filter(other -> Math.abs(other.middleMillilitres() - band.middleMillilitres()) < load)
                    .findFirst()
                    .orElseThrow();
            assertThat(widened.middleMillilitres()).isCloseTo(band.middleMillilitres() - load / 2, within(1e-9));
            assertThat(widened.sigmaMillilitres())
                    .isCloseTo(Math.sqrt(Math.pow(band.sigmaMillilitres(), 2) + load * load / 12), within(1e-9));
        }
        assertThat(text(wide, "load-volume"))
                .contains("which widens the bands, and the figures of this plan count that");
    }

    @Test
    void a_range_holds_the_whole_band_at_either_end_of_the_rf_and_of_the_transfer() throws IOException {
        Plan plan = plan(PAIR.replace(LOAD, ""));
        for (var entry : plan.ranges().orElseThrow().byDye().entrySet()) {
            RetardationFactor rf = plan.judgement()
                    .retardation(
                            entry.getKey(),
                            plan.route().orElseThrow().steps().get(0).eluent())
                    .orElseThrow();
            double transfer = Math.pow(10, 0.3);
            Ranges.Range range = entry.getValue();
            assertThat(range.middle()).isCloseTo(1 / rf.value(), within(1e-9));
            assertThat(range.from())
                    .isLessThan(0.8 / rf.highest())
                    .isLessThan(0.8 * (1 + rf.retentionFactor() / transfer));
            assertThat(range.to())
                    .isGreaterThan(1.2 / rf.lowest())
                    .isGreaterThan(1.2 * (1 + rf.retentionFactor() * transfer));
        }
    }

    /** 1.2/0.25 is 4.8; a lowest Rf of 0.238 moves that to 5.04, a k of 3 x 10^0.3 to 8.38. */
    @Test
    void what_is_not_known_is_added_as_the_root_of_the_summed_squares() throws IOException {
        Plan plan = plan(PAIR.replace(LOAD, ""));
        Ranges.Range brick = plan.ranges().orElseThrow().byDye().entrySet().stream()
                .filter(entry -> entry.getKey().name().equals("brick"))
                .findFirst()
                .orElseThrow()
                .getValue();
        RetardationFactor rf = RetardationFactor.measured(20, 80, new Ruler(1, 1.5));
        double byReading = 1.2 / rf.lowest() - 4.8;
        double byTransfer = 1.2 * (1 + 3 * Math.pow(10, 0.3)) - 4.8;
        assertThat(brick.to()).isCloseTo(4.8 + Math.hypot(byReading, byTransfer), within(1e-6));
    }

    @Test
    void what_is_to_be_kept_ready_lasts_until_the_end_of_the_latest_range() throws IOException {
        for (Plan plan : List.of(plan(PAIR), Shipped.planOf(Shipped.DEMO))) {
            Ranges ranges = plan.ranges().orElseThrow();
            Route route = plan.route().orElseThrow();
            for (int i = 0; i < route.steps().size(); i++) {
                double before = route.elution().pouredBefore(i);
                double ready = ranges.ready().get(i);
                assertThat(ready)
                        .isGreaterThanOrEqualTo(route.elution().poured().get(i));
                route.steps().get(i).leaving().forEach(dye -> assertThat(before + ready)
                        .isGreaterThanOrEqualTo(ranges.byDye().get(dye).to() - 1e-9));
                assertThat(ranges.mayFallShort().get(i)).isFalse();
            }
        }
    }

    @Test
    void a_dye_that_may_not_move_at_all_has_no_end_and_what_is_kept_ready_has() throws IOException {
        Plan plan = plan(PAIR.replace(LOAD, "")
                .replace("brick: 20}}", "brick: 20}}\n")
                .replace(
                        "front mm: 80, travel mm: {moss: 44, brick: 20}",
                        "front mm: 20, ruler mm: 5, travel mm: {moss: 14, brick: 4}"));
        assertThat(text(plan, "volume-1"))
                .contains("until when nobody can say", "20 column volumes", "even that may not be enough")
                .doesNotContain("Infinity");
    }

    @Test
    void purity_and_recovery_are_those_of_the_tubes_that_are_named() throws IOException {
        Plan plan = Shipped.planOf(Shipped.DEMO);
        Route route = plan.route().orElseThrow();
        double columnVolume = plan.judged().column().columnVolumeMillilitres().orElseThrow();
        Matcher tubes = TUBES.matcher(text(plan, "keep-3"));
        assertThat(tubes.find()).isTrue();
        double tube = Double.parseDouble(tubes.group(3)) / columnVolume;
        double before = route.elution().pouredBefore(2);
        Band band = route.elution().bands().get(route.steps().get(2).leaving().get(0));
        double share = band.shareBetween(
                before + (Double.parseDouble(tubes.group(1)) - 1) * tube,
                before + Double.parseDouble(tubes.group(2)) * tube);
        assertThat(Double.parseDouble(tubes.group(4)) / 100).isCloseTo(share, within(0.005));
        assertThat(3 * tube).isLessThanOrEqualTo(band.baseWidthMillilitres());
    }

    @Test
    void a_flask_that_holds_a_neighbour_in_its_last_tube_is_less_pure() {
        Dye own = new Dye("own", DyeClass.NEUTRAL, "", Place.wholeFile("invented"));
        Dye other = new Dye("other", DyeClass.NEUTRAL, "", Place.wholeFile("invented"));
        Keeping.Flask flask = new Keeping.Flask(0, List.of(own), 0.9, 4.1, false, Optional.of(0.9), Optional.of(1.0));
        Elution elution = new Elution(List.of(9.0), Map.of(own, new Band(2, 0.25), other, new Band(4, 0.25)));
        WholeTubes tubes = WholeTubes.within(flask, elution, 0, 1).orElseThrow();
        assertThat(tubes.inWords()).isEqualTo("whole tubes 2 to 4");
        assertThat(tubes.recovery()).isCloseTo(1, within(1e-3));
        assertThat(tubes.purity()).isCloseTo(1 / 1.5, within(1e-3));
        assertThat(WholeTubes.within(flask, elution, 0, 4)).isEmpty();
    }

    @Test
    void without_a_load_that_widens_it_in_short_says_nothing_of_a_load() throws IOException {
        assertThat(text(plan(PAIR), "plan")).contains("In doubt: the load of 3 mL fills");
        assertThat(text(plan(PAIR.replace(LOAD, "")), "plan")).doesNotContain("In doubt");
    }

    @Test
    void a_streaked_dye_has_no_purity_and_in_short_says_so() throws IOException {
        Plan clean = plan(PAIR);
        assertThat(text(clean, "keep-1")).contains("purity over", "recovery");
        Plan streaked = plan(PAIR.replace("{moss: 44, brick: 20}", "{moss: 44, brick: 20}, streaked: [moss]"));
        assertThat(text(streaked, "plan")).contains("In doubt: moss streaked on the strip");
        assertThat(text(streaked, "volume-1")).contains("No end can be told for moss");
        assertThat(text(streaked, "keep-1"))
                .contains("No purity is reckoned of moss and brick: moss streaked")
                .doesNotContain("purity over", "recovery");
        assertThat(text(streaked, "apart")).startsWith("No resolution is reckoned");
    }

    @Test
    void a_dye_that_leaves_before_a_streaked_one_keeps_its_figures() throws IOException {
        Plan streaked = plan(PAIR.replace("{moss: 44, brick: 20}", "{moss: 44, brick: 20}, streaked: [brick]"));
        assertThat(text(streaked, "keep-1"))
                .contains("purity", "recovery", "No purity is reckoned of brick: it streaked")
                .doesNotContain("of moss and brick");
    }

    @Test
    void strips_of_another_stationary_phase_give_no_purity_and_no_resolution() throws IOException {
        Plan guess = plan(PAIR.replace("setting: college", "strips on: cellulose\nsetting: college"));
        assertThat(text(guess, "plan")).contains("A guess");
        assertThat(text(guess, "volume-1"))
                .contains("but not that strips were run on another stationary phase", "even that may not be enough");
        assertThat(text(guess, "keep-1"))
                .contains("No purity is reckoned: the strips were run on another stationary phase")
                .doesNotContain("purity over", "recovery");
        assertThat(text(guess, "apart")).startsWith("No resolution is reckoned");
    }

    @Test
    void where_only_one_eluent_parts_the_dyes_the_plan_says_that_and_not_that_nothing_else_carries_them()
            throws IOException {
        Plan plan = plan(PAIR.replace("shelf: [ethyl acetate]", "shelf: [ethyl acetate, ethanol]")
                .replace(
                        "brick: 20}}",
                        "brick: 20}}\n  - {solvent: ethanol, front mm: 80, travel mm: {moss: 75, brick: 74}}"));
        assertThat(text(plan, "choice-1"))
                .isEqualTo(
                        "Without ethyl acetate no order of eluents parts the dyes and brings every one of them off.");
    }

    private Plan plan(String text) throws IOException {
        return Shipped.planOf(Files.writeString(folder.resolve("case.yaml"), text));
    }

    private static String text(Plan plan, String label) {
        return plan.line(label).orElseThrow().text();
    }
}
