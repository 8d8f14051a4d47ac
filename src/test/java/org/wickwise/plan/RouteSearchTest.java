package org.wickwise.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.LongStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

/** The search against trying everything, on invented choices. */
class RouteSearchTest {

    private static final int RUNNERS_UP = 4;

    @Property(tries = 800)
    void the_search_finds_what_trying_everything_finds(
            @ForAll @LongRange(min = 1, max = 1_000_000) long seed,
            @ForAll @IntRange(min = 2, max = 4) int dyes,
            @ForAll @IntRange(min = 2, max = 5) int eluents,
            @ForAll boolean stocked) {
        Choices choices = new InventedChoices(seed).choices(dyes, eluents);
        Preferences preferences = InventedChoices.preferences(shuffled(seed));

        List<Route> found = new RouteSearch(choices, preferences, Set.of(), stocked, RUNNERS_UP).routes();

        List<Route> everything = new TryingEverything(choices, preferences, stocked).routes();
        assertThat(found).isEqualTo(everything.stream().limit(RUNNERS_UP).toList());
    }

    @Property(tries = 200)
    void the_terms_of_the_cost_add_up_to_it(@ForAll @LongRange(min = 1, max = 1_000_000) long seed) {
        Choices choices = new InventedChoices(seed).choices(3, 5);
        Preferences preferences = InventedChoices.preferences(List.of(Criterion.COST));
        for (Route route : new RouteSearch(choices, preferences, Set.of(), false, RUNNERS_UP).routes()) {
            assertThat(route.cost().sum()).isCloseTo(route.counts()[0], within(1e-9));
        }
    }

    /** Half the seeds keep the order of the shipped preferences, the others any order, with criteria left out. */
    private static List<Criterion> shuffled(long seed) {
        List<Criterion> criteria = new ArrayList<>(List.of(Criterion.values()));
        if (seed % 2 == 0) {
            Random random = new Random(seed);
            Collections.shuffle(criteria, random);
            return criteria.subList(0, 1 + random.nextInt(criteria.size()));
        }
        return criteria;
    }

    @Test
    void most_invented_choices_have_a_route_so_that_the_comparison_means_something() {
        long withRoute = LongStream.rangeClosed(1, 300)
                .filter(seed -> new RouteSearch(
                                new InventedChoices(seed).choices(3, 5),
                                InventedChoices.preferences(List.of(Criterion.values())),
                                Set.of(),
                                false,
                                1)
                        .best()
                        .isPresent())
                .count();
        assertThat(withRoute).isGreaterThan(150);
    }

    @Test
    void the_search_follows_far_fewer_steps_than_trying_everything() {
        Choices choices = new InventedChoices(7).choices(5, 16);
        Preferences preferences = InventedChoices.preferences(List.of(Criterion.values()));
        RouteSearch search = new RouteSearch(choices, preferences, Set.of(), false, 1);
        assertThat(search.best()).isPresent();
        long everything = new TryingEverything(choices, preferences, false).stepsTried();
        assertThat(search.stepsTried() * 100).isLessThan(everything);
    }
}
