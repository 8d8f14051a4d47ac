package org.wickwise.lesson;

import static org.wickwise.TriedLimit.fallsAsTheTableTells;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.wickwise.Shipped;
import org.wickwise.TriedLimit;
import org.wickwise.TriesLimit;
import org.wickwise.bench.Case;
import org.wickwise.lesson.GroupOutcome.PooledReading;
import org.wickwise.plan.Plan;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.strip.Outliers;
import org.wickwise.strip.RetardationFactor;
import org.wickwise.substance.RoomAir;
import org.wickwise.substance.Solvent;
import org.wickwise.text.Numbers;
import org.wickwise.text.Place;

/** What a lesson and a class are told, tried at the limits. */
class LimitsOfLessonsTest {

    private static final Case DEMO = Shipped.caseIn(Shipped.DEMO);
    private static final Plan PLAN = Shipped.bench().plan(DEMO);
    private static final Solvent ACETONE = Shipped.data().solvent("acetone").orElseThrow();
    private static final int GROUPS = 3;
    private static final String AIR = "lesson/AirLines";
    private static final String BENCH_AMOUNT = "lesson/BenchAmountLines";
    private static final String POOLED = "lesson/PooledRetardation";

    @Test
    @TriesLimit(limit = "burning alarm", in = AIR)
    void air_at_the_burning_alarm_is_no_danger_yet() {
        double percent = RoomVapours.of(
                        Map.of(ACETONE, 300.0),
                        new RoomAir(100),
                        20,
                        Shipped.data().exposureLimits())
                .percentOfLowerExplosiveLimit();
        fallsAsTheTableTells(
                "burning alarm", AIR, Numbers.steady(percent), limit -> line("small-room", "burning alarm", limit)
                        .text()
                        .contains("a danger of fire"));
    }

    @Test
    @TriesLimit(limit = "flammable liquid at a bench", in = BENCH_AMOUNT)
    void a_group_may_have_as_much_flammable_liquid_as_the_limit() {
        fallsAsTheTableTells(
                "flammable liquid at a bench", BENCH_AMOUNT, 100, limit -> isDoubted("bench-amount", limit));
    }

    @Test
    @TriesLimit(limit = "flammable liquid in the room", in = BENCH_AMOUNT)
    void a_class_may_have_as_much_flammable_liquid_as_the_limit() {
        fallsAsTheTableTells(
                "flammable liquid in the room", BENCH_AMOUNT, 300, limit -> isDoubted("room-amount", limit));
    }

    @Test
    @TriesLimit(limit = "flammable liquid the code asks about", in = BENCH_AMOUNT)
    void a_code_asks_from_its_amount_on() {
        fallsAsTheTableTells(
                "flammable liquid the code asks about", BENCH_AMOUNT, 300, limit -> isDoubted("code-amount", limit));
    }

    private static final Map<String, String> LIMIT_OF_LINE = Map.of(
            "bench-amount", "flammable liquid at a bench",
            "room-amount", "flammable liquid in the room",
            "code-amount", "flammable liquid the code asks about");

    private static boolean isDoubted(String label, double limit) {
        return line(label, LIMIT_OF_LINE.get(label), limit).section() == Section.DOUBTS;
    }

    private static PlanLine line(String label, String name, double limit) {
        Plan plan = new Plan(TriedLimit.under(PLAN.judgement(), name, limit), PLAN.route(), PLAN.lines());
        Lesson lesson = new Lesson(
                DEMO,
                DEMO.dyes(),
                GROUPS,
                OptionalInt.empty(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                Shipped.DEMO);
        return AirLines.of(new LaidOutLesson(lesson, plan, Shipped.data()), Map.of(ACETONE, 300.0)).stream()
                .filter(one -> one.label().equals(label))
                .findFirst()
                .orElseThrow();
    }

    @Test
    @TriesLimit(limit = "strips that outvote one", in = POOLED)
    void as_many_groups_as_the_limit_are_asked_by_their_median() {
        fallsAsTheTableTells(
                "strips that outvote one",
                POOLED,
                4,
                limit ->
                        PooledRetardation.of(
                                        groups(0.3, 0.3, 0.31, 0.45),
                                        TriedLimit.limits("strips that outvote one", limit))
                                .farOut()
                                .stream()
                                .anyMatch(far -> far.words().contains("times the usual scatter from the median")));
    }

    @Test
    @TriesLimit(limit = "outlier limit", in = POOLED)
    void a_group_as_far_out_as_the_limit_belongs_with_the_others() {
        double[] values = {0.35, 0.34, 0.36, 0.33, 0.37, 0.45};
        double times =
                Outliers.robust(DoubleStream.of(values).boxed().toList(), 0.01).modifiedZ(0.45);
        fallsAsTheTableTells(
                "outlier limit",
                POOLED,
                Numbers.steady(times),
                limit ->
                        PooledRetardation.of(groups(values), TriedLimit.limits("outlier limit", limit))
                                .farOut()
                                .stream()
                                .anyMatch(far -> far.reading().factor().value() == 0.45));
    }

    private static List<PooledRetardation.Of> groups(double... values) {
        return DoubleStream.of(values)
                .mapToObj(value -> new PooledRetardation.Of(
                        "group " + value,
                        new PooledReading(
                                "red",
                                "heptane",
                                "silica",
                                new RetardationFactor(value, 0.01),
                                List.of(value),
                                Place.wholeFile("invented"))))
                .toList();
    }
}
