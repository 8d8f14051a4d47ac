package org.wickwise.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wickwise.Shipped;
import org.wickwise.plan.Choices.Pourable;
import org.wickwise.plan.Choices.Reach;
import org.wickwise.report.Heading;
import org.wickwise.report.ReasonText;
import org.wickwise.rulebook.Limit;
import org.wickwise.strip.Behaviour;
import org.wickwise.strip.RetardationFactor;
import org.wickwise.substance.Dye;
import org.wickwise.substance.DyeClass;
import org.wickwise.text.Place;

/** The limits that say how much of an eluent a step takes, and when bands are parted, set otherwise. */
class LimitsOfStepsTest {

    private static final String UNMEASURED = "volume of an unmeasured step";
    private static final Path WATCHED_ONLY = Shipped.PUBLISHED.resolve("d02-methylene-blue-fluorescein.yaml");
    private static final Place NOWHERE = Place.wholeFile("invented");

    @ParameterizedTest
    @CsvSource({"4, about 4 column volumes", "1, about 1 column volume ", "6.5, about 6.5 column volumes"})
    void a_step_that_nobody_measured_takes_the_volume_of_the_limit_and_says_so(double limit, String expected) {
        Plan plan = planOf(WATCHED_ONLY, UNMEASURED, limit);

        assertThat(plan.elution().orElseThrow().poured()).containsOnly(limit);
        PlanLine line = plan.line("volume-1").orElseThrow();
        assertThat(line.text()).contains("was not measured", expected.strip());
        assertThat(ReasonText.of(line, Heading.plain())).contains("the " + UNMEASURED + " is ");
    }

    @Test
    void no_step_is_shorter_than_the_least_volume() {
        assertThat(Shipped.planOf(Shipped.DEMO).elution().orElseThrow().poured())
                .anyMatch(poured -> poured < 2.5);
        assertThat(planOf(Shipped.DEMO, "least volume of a step", 2.5)
                        .elution()
                        .orElseThrow()
                        .poured())
                .allMatch(poured -> poured >= 2.5);
    }

    @Test
    void the_resolution_of_parted_bands_is_the_one_of_the_limit() {
        String name = "resolution of parted bands";
        PlanLine line = planOf(Shipped.DEMO, name, 1.25).line("apart").orElseThrow();
        assertThat(line.text()).contains("From 1.25 on two bands are parted to the base line");
        assertThat(ReasonText.of(line, Heading.plain())).contains("the " + name + " is 1.25");
    }

    /** A dye that was only watched, then one of Rf 0.2, whose middle leaves with 5 column volumes. */
    @ParameterizedTest
    @CsvSource({"3.9, 0", "4, 0", "4.1, 1"})
    void bands_are_close_where_the_unmeasured_volume_comes_near_the_next(double unmeasured, double close) {
        Pourable pourable = new Pourable(
                InventedChoices.eluent("eluent"),
                List.of(
                        Optional.of(new Reach(Behaviour.TRAVELS, false, false, Optional.empty())),
                        Optional.of(new Reach(
                                Behaviour.TRAVELS, false, false, Optional.of(new RetardationFactor(0.2, 0.01))))),
                List.of(0b10, 0),
                new BitSet(),
                false,
                0,
                0,
                OptionalDouble.empty(),
                0,
                0,
                List.of());
        List<Dye> dyes = List.of(dye("first"), dye("second"));
        Choices choices = new Choices(dyes, List.of(pourable), 100, 1, 0.25, unmeasured, 0.5);

        assertThat(Criterion.CLOSE_BANDS.count(new Move(0, List.of(0b01, 0b10), 0), choices))
                .isEqualTo(close);
    }

    private static Dye dye(String name) {
        return new Dye(name, DyeClass.NEUTRAL, "", NOWHERE);
    }

    private static Plan planOf(Path file, String name, double value) {
        Map<String, Limit> limits = new HashMap<>(Shipped.rulebook().limits());
        limits.computeIfPresent(name, (any, limit) -> limit.supposed(value, limit.place()));
        return Shipped.planner().plan(Shipped.bench().judge().judge(Shipped.caseIn(file), limits));
    }
}
