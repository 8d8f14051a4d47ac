package org.wickwise.rulebook;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;
import org.wickwise.bench.Case;
import org.wickwise.strip.Draws;
import org.wickwise.strip.Redraw;
import org.wickwise.strip.Strip;

/**
 * A case whose rules stay laid out, so that readings can be put in the place of others and only what hangs on them is
 * judged again. What was said of the strips themselves, void or doubtful, stands as for the written readings. Conclusions
 * come without their reasons. Not for several threads.
 */
public final class WarmJudging implements AutoCloseable {

    private final LaidOutCase whole;
    private final Case written;
    private final List<String> names;
    private final Set<Conclusion> verdicts;
    private final Judgement first;

    /**
     * @param whole the case, laid out and judged
     * @param first its judgement
     */
    WarmJudging(LaidOutCase whole, Judgement first) {
        this.whole = whole;
        whole.firings().stop();
        this.written = first.judged();
        this.names = Draws.names(written.strips());
        this.verdicts = whole.conclusions();
        this.first = first;
    }

    /** The judgement of the readings as they were written, with its reasons. */
    public Judgement first() {
        return first;
    }

    /**
     * @param strips as many as were written and in the same order, with other readings
     * @throws org.wickwise.text.ProblemsFound when strips that should agree contradict each other
     */
    public Judgement with(List<Strip> strips) {
        return whole.withReadings(first, written.with(strips), verdictsOn(strips));
    }

    /**
     * Every strip read again within its uncertainty; the order in which strips were written does not matter.
     *
     * @param drawing which of the redraws of this seed, counted from 0
     */
    public List<Redraw> redraw(long seed, long drawing) {
        RulerReadings readings = new RulerReadings(first.limits());
        return IntStream.range(0, names.size())
                .mapToObj(number ->
                        redraw(written.strips().get(number), readings, Draws.of(seed, drawing, names.get(number))))
                .toList();
    }

    private Redraw redraw(Strip strip, RulerReadings readings, RandomGenerator random) {
        return Redraw.of(strip, readings.ruler(strip), first.limit("uncertainty of a reported Rf"), random);
    }

    private Set<Conclusion> verdictsOn(List<Strip> strips) {
        Set<Conclusion> changed = new HashSet<>();
        for (Conclusion verdict : verdicts) {
            if (verdict instanceof Conclusion.StripVerdict said) {
                changed.add(new Conclusion.StripVerdict(strips.get(numberOf(said.strip())), said.reading()));
            } else if (verdict instanceof Conclusion.SpotVerdict said) {
                changed.add(new Conclusion.SpotVerdict(strips.get(numberOf(said.strip())), said.dye(), said.reading()));
            }
        }
        return changed;
    }

    private int numberOf(Strip strip) {
        return written.strips().indexOf(strip);
    }

    @Override
    public void close() {
        whole.close();
    }
}
