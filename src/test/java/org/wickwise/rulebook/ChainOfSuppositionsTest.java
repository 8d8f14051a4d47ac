package org.wickwise.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wickwise.Shipped;
import org.wickwise.bench.Case;
import org.wickwise.strip.Spot;
import org.wickwise.strip.Strip;
import org.wickwise.text.ProblemsFound;

/** However a case that is laid out got to be what it is, it is judged as if it were judged afresh. */
class ChainOfSuppositionsTest {

    private static final int CHANGES = 40;
    private static final Judge JUDGE = Shipped.bench().judge();

    static Stream<Path> cases() {
        return Stream.of(
                Shipped.DEMO,
                Shipped.PUBLISHED.resolve("d04-spinach-alumina.yaml"),
                Shipped.PUBLISHED.resolve("d07-four-dyes-silica.yaml"));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void a_chain_of_suppositions_concludes_what_judging_each_afresh_does(Path file) {
        Random random = new Random(19);
        Case written = Shipped.caseIn(file);
        Case supposed = written;
        Map<String, Limit> limits = JUDGE.rulebook().limits();
        try (LaidOutCase laidOut = JUDGE.layOut(written)) {
            for (int i = 0; i < CHANGES; i++) {
                int kind = random.nextInt(10);
                if (kind == 0) {
                    supposed = written;
                } else if (kind == 1) {
                    supposed = withoutAStrip(supposed, random);
                } else if (kind == 2) {
                    limits = withAnotherLimit(limits, random);
                } else {
                    supposed = readOtherwise(supposed, random);
                }
                assertSame(laidOut, supposed, limits, "after change " + i + " of kind " + kind);
            }
        }
    }

    private static void assertSame(LaidOutCase laidOut, Case supposed, Map<String, Limit> limits, String when) {
        Optional<Judgement> afresh;
        try {
            afresh = Optional.of(JUDGE.judge(supposed, limits));
        } catch (ProblemsFound contradiction) {
            afresh = Optional.empty();
        }
        if (afresh.isEmpty()) {
            assertThat(contradicts(laidOut, supposed, limits)).as(when).isTrue();
            return;
        }
        Judgement expected = afresh.get();
        Judgement found = laidOut.suppose(supposed, limits);
        assertThat(found.reasons().keySet())
                .as("conclusions " + when)
                .isEqualTo(expected.reasons().keySet());
        assertThat(found.movements()).as("movements " + when).isEqualTo(expected.movements());
        assertThat(found.gaps()).as("gaps " + when).isEqualTo(expected.gaps());
        assertThat(found.blends()).as("blends " + when).isEqualTo(expected.blends());
        assertThat(found.eluents()).as("eluents " + when).isEqualTo(expected.eluents());
        assertThat(found.facts()).as("facts " + when).isEqualTo(expected.facts());
    }

    private static boolean contradicts(LaidOutCase laidOut, Case supposed, Map<String, Limit> limits) {
        try {
            laidOut.suppose(supposed, limits);
            return false;
        } catch (ProblemsFound contradiction) {
            return true;
        }
    }

    private static Case withoutAStrip(Case from, Random random) {
        if (from.strips().size() < 3) {
            return from;
        }
        List<Strip> strips = new ArrayList<>(from.strips());
        strips.remove(random.nextInt(strips.size()));
        return from.with(strips);
    }

    private static Case readOtherwise(Case from, Random random) {
        List<Strip> strips = new ArrayList<>(from.strips());
        int which = random.nextInt(strips.size());
        Strip strip = strips.get(which);
        List<Spot> spots = new ArrayList<>(strip.spots());
        spots.replaceAll(spot -> random.nextInt(spots.size()) == 0
                ? new Spot(spot.dyes(), readOtherwise(spot.position(), strip, random), spot.place())
                : spot);
        strips.set(which, strip.with(strip.frontMillimetres(), spots));
        return from.with(strips);
    }

    /** Mostly near to what was read before, which a rule may not tell from it. */
    private static Spot.Position readOtherwise(Spot.Position position, Strip strip, Random random) {
        double share = random.nextInt(3) == 0 ? random.nextDouble() : 0.02 * random.nextGaussian();
        if (position instanceof Spot.Travelled travelled) {
            double front = strip.frontMillimetres().orElseThrow();
            return new Spot.Travelled(Math.min(front, Math.abs(travelled.millimetres() + share * front)));
        }
        return position instanceof Spot.Quoted quoted
                ? new Spot.Quoted(Math.min(1, Math.abs(quoted.retardationFactor() + share)))
                : position;
    }

    private static Map<String, Limit> withAnotherLimit(Map<String, Limit> limits, Random random) {
        String name = List.of("staying limit", "parting gap", "scatter of a retention line")
                .get(random.nextInt(3));
        Limit before = limits.get(name);
        Map<String, Limit> changed = new HashMap<>(limits);
        changed.put(name, before.supposed(before.value() * (0.8 + 0.4 * random.nextDouble()), before.place()));
        return changed;
    }
}
