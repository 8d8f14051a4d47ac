package org.wickwise.plan;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class AdvantageTest {

    @Test
    void a_cost_says_what_its_figures_go_by_and_a_count_needs_no_word() {
        assertThat(new Advantage("cost", 59.9, 139.9, true).told())
                .isEqualTo("which costs less by the weights of the preferences (59.9 against 139.9)");
        assertThat(new Advantage("steps", 2, 3, false).told()).isEqualTo("which counts fewer steps (2 against 3)");
    }
}
