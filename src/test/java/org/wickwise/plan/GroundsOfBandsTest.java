package org.wickwise.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.wickwise.Shipped;
import org.wickwise.reason.Reason;
import org.wickwise.substance.Dye;

/** Whether the lines that rest on reckoned bands name just the readings that these were reckoned from. */
class GroundsOfBandsTest {

    private static final Plan DEMO = Shipped.planOf(Shipped.DEMO);

    /** The readings of this dye under a line, by their eluents, in the order of pouring. */
    private static List<String> readEluents(String label, String dye) {
        String of = "Rf of " + dye + " in ";
        Reason.Calculated line =
                (Reason.Calculated) DEMO.line(label).orElseThrow().reason();
        return line.grounds().stream()
                .map(Reason::statement)
                .filter(statement -> statement.startsWith(of))
                .map(statement -> statement.substring(of.length(), statement.indexOf(" is ")))
                .toList();
    }

    private static List<String> pouredUntil(String dye) {
        Route route = DEMO.route().orElseThrow();
        int own = 0;
        while (!route.steps().get(own).leaving().stream()
                .map(Dye::name)
                .toList()
                .contains(dye)) {
            own++;
        }
        return route.steps().subList(0, own + 1).stream()
                .map(step -> step.eluent().name())
                .toList();
    }

    @Test
    void a_volume_rests_on_every_eluent_up_to_the_one_that_the_dye_leaves_in() {
        assertThat(readEluents("volume-3", "harbour blue")).hasSize(3).isEqualTo(pouredUntil("harbour blue"));
    }

    @Test
    void what_is_worth_keeping_rests_on_no_eluent_that_is_poured_after_the_dye_has_left() {
        assertThat(readEluents("keep-1", "straw")).hasSize(1).isEqualTo(pouredUntil("straw"));
        assertThat(readEluents("keep-3", "harbour blue")).hasSize(3).isEqualTo(pouredUntil("harbour blue"));
    }

    @Test
    void a_resolution_rests_on_the_eluents_in_which_a_held_dye_crept_too() {
        for (String dye : List.of("straw", "rust", "harbour blue")) {
            assertThat(readEluents("apart", dye)).as(dye).isEqualTo(pouredUntil(dye));
        }
    }
}
