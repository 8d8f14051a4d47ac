package org.wickwise.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.wickwise.Shipped;
import org.wickwise.bench.Case;
import org.wickwise.bench.CaseReader;
import org.wickwise.plan.PlanLine;
import org.wickwise.rulebook.Conclusion.Reading;
import org.wickwise.rulebook.Conclusion.SpotVerdict;
import org.wickwise.strip.Apart;
import org.wickwise.text.ProblemsFound;

/** Readings of a class (invented) in one eluent: what is left out, what is doubted, and that the plan says so. */
class ReplicateScatterTest {

    private static final String STRIP = "  - {solvent: heptane, replicate: %d, Rf: {red: %.3f, blue: 0}%s}%n";

    @Test
    void aReadingOutOfLineIsLeftOutOfTheMeanAndNamedInThePlan() {
        Case written = written("", 0.35, 0.34, 0.36, 0.33, 0.37, 0.62);
        Judgement judgement = judge(written);
        assertThat(verdicts(judgement, Reading.VOID)).containsExactly("red on strip 6 in heptane");
        assertThat(rfOfRed(judgement)).isCloseTo(0.35, within(1e-9));
        assertThat(doubts(written))
                .contains("Void: On strip 6 in heptane red lies far from where the other strips put it, so this reading"
                        + " is left out of the mean; look at strip 6 in heptane again.");
    }

    /** Without the outlier vote this is a contradiction, 0.27 apart in Rf. */
    @Test
    void fourStripsThatDisagreeAreStillSentBack() {
        Case written = written("", 0.35, 0.34, 0.36, 0.62);
        assertThatThrownBy(() -> judge(written))
                .isInstanceOf(ProblemsFound.class)
                .hasMessageContaining("strips in one eluent no further apart than 0.2 in Rf");
    }

    @Test
    void twoHalvesOfAClassThatDisagreeAreSentBack() {
        Case written = written("", 0.30, 0.31, 0.29, 0.60, 0.61, 0.59);
        assertThatThrownBy(() -> judge(written)).isInstanceOf(ProblemsFound.class);
    }

    @Test
    void ofFourStripsTheSuspectOneIsDoubtfulAndCounts() {
        Case written = written("", 0.30, 0.30, 0.31, 0.45);
        Judgement judgement = judge(written);
        assertThat(verdicts(judgement, Reading.DOUBTFUL)).containsExactly("red on strip 4 in heptane");
        assertThat(rfOfRed(judgement)).isCloseTo(0.34, within(1e-9));
        assertThat(doubts(written)).anySatisfy(line -> assertThat(line)
                .startsWith("Doubtful: On strip 4 in heptane red lies away from where the other strips put it"));
    }

    @Test
    void aVoidStripNeitherVotesNorIsVotedOn() {
        Case written = written(", went wrong: [origin under the solvent]", 0.30, 0.30, 0.30, 0.30, 0.45);
        Judgement judgement = judge(written);
        assertThat(judgement.all(SpotVerdict.class)).isEmpty();
        assertThat(rfOfRed(judgement)).isCloseTo(0.30, within(1e-9));
    }

    /** Four on the column's phase and one on another are not five of a kind. */
    @Test
    void stripsOnAnotherStationaryPhaseDoNotVote() {
        Case written = written(", stationary phase: alumina", 0.30, 0.30, 0.30, 0.30, 0.45);
        assertThat(judge(written).all(SpotVerdict.class)).isEmpty();
    }

    @Test
    void theGapToADyeLeavesTheVoidReadingOut() {
        Judgement judgement = judge(written("", 0.35, 0.34, 0.36, 0.33, 0.37, 0.62));
        assertThat(judgement.gaps()).singleElement().satisfies(gap -> assertThat(((Apart.MeasuredGap) gap).gap())
                .isCloseTo(0.35, within(1e-6)));
    }

    @Test
    void theOrderOfFactsChangesNeitherVerdictNorReason() {
        Case written = written("", 0.35, 0.34, 0.36, 0.33, 0.37, 0.62);
        Judgement usual = judge(written);
        Judgement turned = Shipped.bench().judge().judge(written, facts -> {
            List<Object> reversed = new ArrayList<>(facts);
            Collections.reverse(reversed);
            return reversed;
        });
        assertThat(turned.reasons()).isEqualTo(usual.reasons());
    }

    /** @param remark a key more for the last strip */
    private static Case written(String remark, double... reds) {
        StringBuilder yaml = new StringBuilder("title: class\nsetting: college\nshelf: [heptane, ethyl acetate]\n"
                + "column: {stationary phase: silica}\n"
                + "mixture: {dyes: [{name: red, class: neutral}, {name: blue, class: neutral}]}\nstrips:\n");
        for (int i = 0; i < reds.length; i++) {
            yaml.append(String.format(Locale.ROOT, STRIP, i + 1, reds[i], i == reds.length - 1 ? remark : ""));
        }
        return CaseReader.parse("class.yaml", yaml.toString(), Shipped.data());
    }

    private static Judgement judge(Case written) {
        return Shipped.bench().judge().judge(written);
    }

    private static List<String> verdicts(Judgement judgement, Reading reading) {
        return judgement.all(SpotVerdict.class).stream()
                .filter(verdict -> verdict.reading() == reading)
                .map(verdict -> verdict.dye() + " on " + verdict.strip())
                .toList();
    }

    private static double rfOfRed(Judgement judgement) {
        return judgement.movements().stream()
                .filter(movement -> movement.dye().name().equals("red"))
                .map(movement -> movement.retardation().orElseThrow().value())
                .findFirst()
                .orElseThrow();
    }

    private static List<String> doubts(Case written) {
        return Shipped.bench().plan(written).lines().stream()
                .filter(line -> line.section() == PlanLine.Section.DOUBTS)
                .map(PlanLine::text)
                .toList();
    }
}
