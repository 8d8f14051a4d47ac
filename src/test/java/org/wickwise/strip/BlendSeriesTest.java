package org.wickwise.strip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wickwise.Shipped;
import org.wickwise.rulebook.Conclusion;
import org.wickwise.rulebook.Judgement;
import org.wickwise.strip.Estimate.AtLeast;
import org.wickwise.strip.Estimate.AtMost;
import org.wickwise.strip.Estimate.NotReckoned;
import org.wickwise.strip.Estimate.Reckoned;
import org.wickwise.substance.Dye;
import org.wickwise.substance.DyeClass;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.EluentStrength;

/**
 * Rf or movement against the composition of blends, as {@code blend-series.tsv} gives them with their sources: direction,
 * order and optimum. Most series have two points from student work, so nothing here tests that a line is straight.
 */
class BlendSeriesTest {

    private static final Path TABLE = Path.of("src/test/resources/blend-series.tsv");

    /** Rf without ruler readings, as the limit "uncertainty of a reported Rf" has it. */
    private static final double REPORTED = 0.02;

    private record Row(String series, String weak, String strong, String percent, String rf, boolean oneLab) {

        double share() {
            return Double.parseDouble(percent);
        }

        double retardation() {
            return Double.parseDouble(rf);
        }

        Eluent eluent() {
            return Written.blend(weak, strong, share());
        }
    }

    /** A series that is added to the table needs a test here. */
    @Test
    void the_table_holds_the_series_that_are_tested() throws IOException {
        assertThat(rows().map(Row::series).distinct())
                .containsExactlyInAnyOrder(
                        "BD01", "BD02", "BD03", "BD04", "BD05", "BD06", "BD07", "BD08", "BD09", "BD10", "BD11", "BD12",
                        "BD13");
    }

    @ParameterizedTest(name = "{0}: a slope of {1}")
    @CsvSource({"BD01, 1.46", "BD02, 2.37"})
    void in_BD01_and_BD02_more_of_the_ester_moves_both_further_and_in_between_lies_in_between(
            String series, double slope) throws IOException {
        List<Row> one = oneLab(series);
        Dye dye = Written.neutral(series);
        Reckoned reckoned = (Reckoned) estimates(dye, one).estimate(dye, Written.blend("hexane", "ethyl acetate", 70));
        assertThat(reckoned.retardationFactor().value())
                .isBetween(one.get(0).retardation(), one.get(1).retardation());
        double rise = Math.log10(one.get(1).share() / one.get(0).share());
        assertThat((rm(one.get(0)) - rm(one.get(1))) / rise).isCloseTo(slope, within(0.01));
        assertThat(RetentionLaw.soczewinski(Math.pow(10, rm(one.get(0))), 0.4, 0.7, slope))
                .isCloseTo(reckoned.retardationFactor().retentionFactor(), within(0.02));
    }

    @Test
    void in_BD01_and_BD02_the_phenol_stays_behind_at_every_blend() throws IOException {
        Dye ester = Written.neutral("BD01");
        Dye phenol = Written.neutral("BD02");
        for (double percent : new double[] {45, 60, 80, 95}) {
            Eluent blend = Written.blend("hexane", "ethyl acetate", percent);
            assertThat(value(estimates(phenol, oneLab("BD02")), phenol, blend))
                    .isLessThan(value(estimates(ester, oneLab("BD01")), ester, blend));
        }
    }

    @ParameterizedTest
    @CsvSource({"BD01", "BD02"})
    void in_BD01_and_BD02_a_second_laboratory_off_the_line_widens_what_is_reckoned(String series) throws IOException {
        Dye dye = Written.neutral(series);
        Eluent blend = Written.blend("hexane", "ethyl acetate", 70);
        Reckoned alone = (Reckoned) estimates(dye, oneLab(series)).estimate(dye, blend);
        Reckoned pooled = (Reckoned) estimates(dye, series(series).toList()).estimate(dye, blend);
        assertThat(pooled.retardationFactor().uncertainty())
                .isGreaterThan(alone.retardationFactor().uncertainty());
    }

    @Test
    void in_BD03_a_dye_at_the_front_in_both_stays_there_in_between() throws IOException {
        Dye dye = Written.neutral("BD03");
        AtLeast least =
                (AtLeast) estimates(dye, oneLab("BD03")).estimate(dye, Written.blend("ethyl acetate", "methanol", 25));
        assertThat(least.retardation()).isGreaterThan(0.9);
    }

    @ParameterizedTest
    @CsvSource({"BD04, CATIONIC", "BD05, CATIONIC", "BD06, ANIONIC"})
    void in_BD04_to_BD06_charged_dyes_move_further_with_the_alcohol_and_are_not_interpolated(
            String series, DyeClass dyeClass) throws IOException {
        Dye dye = new Dye(series, dyeClass, "", Written.HERE);
        assertThat(lineOverStrength(series).slope()).isNegative();
        assertThat(estimates(dye, oneLab(series)).estimate(dye, Written.blend("ethyl acetate", "methanol", 25)))
                .isInstanceOfSatisfying(
                        NotReckoned.class, refused -> assertThat(refused.why()).contains("charge decides"));
    }

    @Test
    void in_BD05_and_BD06_the_two_cross_because_one_has_by_far_the_largest_jump() throws IOException {
        RetentionLine rhodamine = lineOverStrength("BD05");
        RetentionLine green = lineOverStrength("BD06");
        double weak = strength(oneLab("BD05").get(0));
        double strong = strength(oneLab("BD05").get(1));
        assertThat(green.slope()).isLessThan(2 * rhodamine.slope());
        assertThat(green.rmAt(weak)).isGreaterThan(rhodamine.rmAt(weak));
        assertThat(green.rmAt(strong)).isLessThan(rhodamine.rmAt(strong));
    }

    @Test
    void in_BD07_a_hydrocarbon_is_hardly_moved_by_the_first_tenth() throws IOException {
        Dye dye = Written.neutral("BD07");
        List<Row> rows = series("BD07").toList();
        double between = value(estimates(dye, rows), dye, Written.blend("hexane", "ethyl acetate", 4));
        assertThat(between).isBetween(0.82, 0.88);
    }

    @Test
    void in_BD08_a_ketone_on_the_origin_without_the_ester_runs_at_most_as_far_with_less_of_it() throws IOException {
        Dye dye = Written.neutral("BD08");
        AtMost most = (AtMost)
                estimates(dye, series("BD08").toList()).estimate(dye, Written.blend("hexane", "ethyl acetate", 2));
        assertThat(most.retardation()).isBetween(0.02, 0.56);
    }

    @Test
    void in_BD09_the_best_blend_lies_in_the_middle_and_paper_is_not_interpolated() {
        Judgement judgement = judged("d14-ink-ethanol-water-paper.yaml");
        Map<Double, Boolean> parted = judgement.judged().strips().stream()
                .collect(Collectors.toMap(
                        strip -> strip.eluent().percentOf(Written.solvent("ethanol")), strip -> judgement
                                .first(
                                        Conclusion.Between.class,
                                        between -> between.eluent().equals(strip.eluent())
                                                && between.separation() == Conclusion.Separation.PARTED)
                                .isPresent()));
        assertThat(parted.get(60.0)).isTrue();
        assertThat(List.of(parted.get(30.0), parted.get(50.0), parted.get(70.0), parted.get(80.0)))
                .containsOnly(false);
        Dye dye = Written.neutral("violet");
        assertThat(Written.on("cellulose").estimate(dye, Written.blend("water", "ethanol", 55)))
                .isInstanceOf(NotReckoned.class);
    }

    @Test
    void in_BD10_and_BD11_the_red_dye_leaves_with_some_methanol_and_the_blue_one_after_it() {
        Judgement judgement = judged("d03-grape-drink-c18.yaml");
        Eluent some = Written.blend("water", "methanol", 30);
        assertThat(behaviour(judgement, "red", Written.neat("water"))).isEqualTo(Behaviour.STAYS);
        assertThat(behaviour(judgement, "red", some).leaves()).isTrue();
        assertThat(behaviour(judgement, "blue", some)).isEqualTo(Behaviour.STAYS);
        assertThat(behaviour(judgement, "blue", Written.neat("methanol")).leaves())
                .isTrue();
        assertThat(judgement.holds(new Conclusion.LeavesBefore(some, dye(judgement, "red"), dye(judgement, "blue"))))
                .isTrue();
    }

    @Test
    void in_BD12_the_cationic_dye_leaves_with_the_alcohol_while_the_anionic_one_waits_for_water() {
        Judgement judgement = judged("d02-methylene-blue-fluorescein.yaml");
        Eluent alcohol = Written.blend("water", "ethanol", 95);
        assertThat(behaviour(judgement, "fluorescein", alcohol)).isEqualTo(Behaviour.STAYS);
        assertThat(judgement.holds(new Conclusion.LeavesBefore(
                        alcohol, dye(judgement, "methylene blue"), dye(judgement, "fluorescein"))))
                .isTrue();
    }

    /** Log k linear in log per cent of modifier: what is reckoned between two blends lies on that line. */
    @Test
    void in_BD13_azo_dyes_follow_the_logarithm_of_the_share() {
        Dye azo = Written.neutral("azo");
        Estimates estimates = Written.on(
                "silica",
                Written.reading(azo, Written.blend("heptane", "ethyl acetate", 5), "silica", rf(20, 2, 5)),
                Written.reading(azo, Written.blend("heptane", "ethyl acetate", 40), "silica", rf(20, 2, 40)));
        for (double percent : new double[] {8, 15, 30}) {
            assertThat(value(estimates, azo, Written.blend("heptane", "ethyl acetate", percent)))
                    .isCloseTo(rf(20, 2, percent), within(1e-9));
        }
    }

    private static double rf(double kAtFivePercent, double displaced, double percent) {
        return 1 / (1 + RetentionLaw.soczewinski(kAtFivePercent, 0.05, percent / 100, displaced));
    }

    private static Judgement judged(String file) {
        return Shipped.bench().judge().judge(Shipped.caseIn(Shipped.PUBLISHED.resolve(file)));
    }

    private static Dye dye(Judgement judgement, String name) {
        return judgement.judged().dyes().stream()
                .filter(known -> known.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static Behaviour behaviour(Judgement judgement, String dye, Eluent eluent) {
        return judgement.behaviour(dye(judgement, dye), eluent).orElseThrow().behaviour();
    }

    private static RetentionLine lineOverStrength(String series) throws IOException {
        return RetentionLine.through(
                        oneLab(series).stream()
                                .map(row -> new RetentionLine.Point(
                                        strength(row),
                                        rm(row),
                                        new RetardationFactor(row.retardation(), REPORTED).rmUncertainty()))
                                .toList(),
                        0.1)
                .orElseThrow();
    }

    private static double strength(Row row) {
        return EluentStrength.on(Written.phase("silica"))
                .orElseThrow()
                .of(row.eluent())
                .orElseThrow()
                .value();
    }

    private static double rm(Row row) {
        return new RetardationFactor(row.retardation(), REPORTED).rm();
    }

    private static double value(Estimates estimates, Dye dye, Eluent eluent) {
        return ((Reckoned) estimates.estimate(dye, eluent)).retardationFactor().value();
    }

    private static Estimates estimates(Dye dye, List<Row> rows) {
        return Estimates.of(
                rows.stream()
                        .map(row -> new Movement.Measured(
                                dye,
                                row.eluent(),
                                Written.phase("silica"),
                                new RetardationFactor(row.retardation(), REPORTED),
                                List.of(dye.stated())))
                        .toList(),
                Written.phase("silica"),
                Written.ALLOWANCES);
    }

    private static List<Row> oneLab(String series) throws IOException {
        return series(series).filter(Row::oneLab).toList();
    }

    private static Stream<Row> series(String series) throws IOException {
        return rows().filter(row -> row.series().equals(series));
    }

    private static Stream<Row> rows() throws IOException {
        return Files.readAllLines(TABLE).stream()
                .skip(1)
                .map(line -> Arrays.asList(line.split("\t")))
                .map(cells -> new Row(
                        cells.get(0),
                        cells.get(4),
                        cells.get(5),
                        cells.get(6),
                        cells.get(7),
                        cells.get(9).equals("no")));
    }
}
