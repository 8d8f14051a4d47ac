package org.wickwise.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.Size;
import org.wickwise.Shipped;
import org.wickwise.bench.Case;
import org.wickwise.lesson.Task.Unit;
import org.wickwise.plan.Plan;
import org.wickwise.plan.PlanLine;
import org.wickwise.reason.Reason;
import org.wickwise.report.Heading;
import org.wickwise.report.ReasonText;
import org.wickwise.substance.RoomAir;
import org.wickwise.substance.Solvent;

/** What holds of every lesson: more groups take more, more liquid and less room make worse air, tasks wait for one another. */
class LessonNumbersTest {

    private static final Case DEMO = Shipped.caseIn(Shipped.DEMO);
    private static final Plan PLAN = Shipped.bench().plan(DEMO);
    private static final Solvent ONE = solvent("acetone");
    private static final Solvent OTHER = solvent("heptane");
    private static final double ROOM_TEMPERATURE = 20;

    private static Solvent solvent(String name) {
        return Shipped.data().solvent(name).orElseThrow();
    }

    private static LaidOutLesson lessonOf(int groups) {
        return new LaidOutLesson(lessonOf(DEMO, groups), PLAN, Shipped.data());
    }

    private static Lesson lessonOf(Case basis, int groups) {
        return new Lesson(
                basis,
                basis.dyes(),
                groups,
                OptionalInt.empty(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                Shipped.DEMO);
    }

    /** What the reason of a line says before rounding, "= 123.4 mL" at the end of its formula. */
    private static double beforeRounding(int groups, String label) {
        PlanLine line = PrepLines.of(lessonOf(groups), Shipped.rulebook()).stream()
                .filter(one -> one.label().equals(label))
                .findFirst()
                .orElseThrow();
        String formula = ((Reason.Calculated) line.reason()).formula();
        return Double.parseDouble(formula.substring(formula.lastIndexOf("= ") + 2, formula.lastIndexOf(" mL")));
    }

    @Property(tries = 30)
    void what_a_class_takes_grows_in_proportion_to_its_groups(@ForAll @IntRange(min = 1, max = 10_000) int groups) {
        for (String label : List.of("solvent-heptane", "solvent-ethyl-acetate", "solvent-ethanol")) {
            assertThat(beforeRounding(groups, label))
                    .isCloseTo(groups * beforeRounding(1, label), within(0.06 * groups + 0.06));
        }
    }

    @Property
    void what_is_made_ready_is_enough_and_not_much_more(@ForAll @DoubleRange(min = 0, max = 1e7) double amount) {
        double ready = ReadyAmount.roundedUp(amount);
        assertThat(ready).isGreaterThanOrEqualTo(amount - 1e-6);
        assertThat(ready).isLessThanOrEqualTo(Math.max(amount + 1, amount * 1.05 + 1e-6));
    }

    private static RoomVapours air(double millilitres, double other, double cubicMetres) {
        return RoomVapours.of(
                Map.of(ONE, millilitres, OTHER, other),
                new RoomAir(cubicMetres),
                ROOM_TEMPERATURE,
                Shipped.data().exposureLimits());
    }

    @Property
    void more_liquid_never_makes_the_air_better(
            @ForAll @DoubleRange(min = 0, max = 1e5) double millilitres,
            @ForAll @DoubleRange(min = 0, max = 1e5) double more,
            @ForAll @DoubleRange(min = 0, max = 1e5) double other,
            @ForAll @DoubleRange(min = 0.001, max = 1e5) @Scale(3) double cubicMetres) {
        RoomVapours before = air(millilitres, other, cubicMetres);
        RoomVapours after = air(millilitres + more, other, cubicMetres);
        assertThat(after.worstExposure()).isGreaterThanOrEqualTo(before.worstExposure());
        assertThat(after.percentOfLowerExplosiveLimit()).isGreaterThanOrEqualTo(before.percentOfLowerExplosiveLimit());
    }

    @Property
    void a_larger_room_never_makes_the_air_worse(
            @ForAll @DoubleRange(min = 0, max = 1e5) double millilitres,
            @ForAll @DoubleRange(min = 0, max = 1e5) double other,
            @ForAll @DoubleRange(min = 0.001, max = 1e5) @Scale(3) double cubicMetres,
            @ForAll @DoubleRange(min = 1, max = 100) double times) {
        RoomVapours small = air(millilitres, other, cubicMetres);
        RoomVapours large = air(millilitres, other, cubicMetres * times);
        assertThat(large.worstExposure()).isLessThanOrEqualTo(small.worstExposure() * (1 + 1e-12));
        assertThat(large.percentOfLowerExplosiveLimit())
                .isLessThanOrEqualTo(small.percentOfLowerExplosiveLimit() * (1 + 1e-12));
    }

    @Example
    void every_shipped_and_published_case_gets_its_three_answers() {
        for (Path file : Shipped.cases()) {
            Case written = Shipped.caseIn(file);
            LaidOutLesson laidOut =
                    new LaidOutLesson(lessonOf(written, 12), Shipped.bench().plan(written), Shipped.data());
            List<PlanLine> lines = new ArrayList<>(PrepLines.of(laidOut, Shipped.rulebook()));
            lines.addAll(AirLines.of(laidOut));
            lines.addAll(
                    TimetableLines.of(laidOut, List.of(), Shipped.rulebook().columnSizes()));
            for (PlanLine line : lines) {
                assertThat(ReasonText.of(line, Heading.plain()))
                        .as(file + " " + line.label())
                        .doesNotContain("NaN", "Infinity", "null", "E+", "E-");
            }
        }
    }

    private static Task task(String label, double minutes, String... after) {
        return new Task(
                label, Unit.STRIPS, label, minutes, List.of(after), new Reason.Chosen(label, List.of(), List.of()));
    }

    /** Worked by hand: b (3) and c (7) after a (2), d (4) after both: 2 + 7 + 4 = 13. */
    @Example
    void the_longest_way_through_the_tasks_decides() {
        Schedule schedule =
                Schedule.of(List.of(task("a", 2), task("b", 3, "a"), task("c", 7, "a"), task("d", 4, "b", "c")));
        assertThat(schedule.minutes()).isEqualTo(13);
        assertThat(schedule.critical()).extracting(Task::label).containsExactly("a", "c", "d");
    }

    @Property
    void the_critical_tasks_take_as_long_as_the_whole(
            @ForAll @Size(6) List<@DoubleRange(min = 0, max = 100) Double> minutes) {
        Schedule schedule = Schedule.of(List.of(
                task("a", minutes.get(0)),
                task("b", minutes.get(1), "a"),
                task("c", minutes.get(2), "a"),
                task("d", minutes.get(3), "b"),
                task("e", minutes.get(4), "b", "c"),
                task("f", minutes.get(5), "d", "e")));
        assertThat(schedule.critical().stream().mapToDouble(Task::minutes).sum())
                .isCloseTo(schedule.minutes(), within(1e-6));
    }
}
