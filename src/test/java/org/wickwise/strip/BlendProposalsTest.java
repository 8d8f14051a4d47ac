package org.wickwise.strip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wickwise.strip.Written.blend;
import static org.wickwise.strip.Written.neat;
import static org.wickwise.strip.Written.neutral;
import static org.wickwise.strip.Written.on;
import static org.wickwise.strip.Written.reading;
import static org.wickwise.strip.Written.solvent;
import static org.wickwise.strip.Written.wishes;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.wickwise.Shipped;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;

class BlendProposalsTest {

    private static final Dye RED = neutral("red");
    private static final Dye BLUE = neutral("blue");
    private static final List<Eluent> RUN = List.of(blend("hexane", "acetone", 5), neat("acetone"));

    @Test
    void a_blend_puts_its_dye_into_the_window_and_names_the_nearest() {
        assertThat(proposals(12)).isNotEmpty().allSatisfy(proposal -> {
            assertThat(proposal.retardationFactor().value()).isBetween(0.2, 0.35);
            assertThat(proposal.nearest()).isNotEqualTo(proposal.target());
            assertThat(proposal.gap()).isPositive();
            assertThat(proposal.chance()).isBetween(0.0, 1.0);
            assertThat(proposal.reason().statement()).contains(proposal.eluent().name());
        });
    }

    @Test
    void there_is_one_for_each_dye_and_pair_of_solvents_the_most_promising_first() {
        List<BlendProposal> all = proposals(12);
        assertThat(all).extracting(BlendProposal::target).doesNotHaveDuplicates();
        assertThat(all).isSortedAccordingTo((a, b) -> Double.compare(b.promise(), a.promise()));
        assertThat(proposals(1)).isEqualTo(all.subList(0, 1));
    }

    @Test
    void a_blend_that_was_run_is_not_proposed() {
        Eluent first = proposals(12).get(0).eluent();
        assertThat(from(List.of(RUN.get(0), RUN.get(1), first)))
                .extracting(BlendProposal::eluent)
                .doesNotContain(first);
    }

    @Test
    void solvents_that_do_not_mix_are_not_blended() {
        Estimates estimates = on(
                "silica",
                reading(RED, neat("hexane"), "silica", 0.05),
                reading(RED, neat("acetone"), "silica", 0.8),
                reading(BLUE, neat("hexane"), "silica", 0.2),
                reading(BLUE, neat("acetone"), "silica", 0.9));
        BlendProposals proposals =
                new BlendProposals(List.of(RED, BLUE), estimates, Shipped.data().miscibility(), wishes(12));
        assertThat(proposals.from(List.of(solvent("hexane"), solvent("acetone")), List.of()))
                .isNotEmpty();
        assertThat(proposals.from(List.of(solvent("hexane"), solvent("methanol")), List.of()))
                .isEmpty();
    }

    @Test
    void nothing_is_proposed_while_one_dye_cannot_be_placed() {
        Dye unseen = neutral("unseen");
        assertThat(new BlendProposals(
                                List.of(RED, BLUE, unseen),
                                estimates(),
                                Shipped.data().miscibility(),
                                wishes(12))
                        .from(List.of(solvent("hexane"), solvent("acetone")), RUN))
                .isEmpty();
    }

    private static List<BlendProposal> proposals(int most) {
        return new BlendProposals(
                        List.of(RED, BLUE), estimates(), Shipped.data().miscibility(), wishes(most))
                .from(List.of(solvent("hexane"), solvent("acetone")), RUN);
    }

    private static List<BlendProposal> from(List<Eluent> run) {
        return new BlendProposals(
                        List.of(RED, BLUE), estimates(), Shipped.data().miscibility(), wishes(12))
                .from(List.of(solvent("hexane"), solvent("acetone")), run);
    }

    private static Estimates estimates() {
        return on(
                "silica",
                reading(RED, RUN.get(0), "silica", 0.05),
                reading(RED, RUN.get(1), "silica", 0.85),
                reading(BLUE, RUN.get(0), "silica", 0.16),
                reading(BLUE, RUN.get(1), "silica", 0.92));
    }
}
