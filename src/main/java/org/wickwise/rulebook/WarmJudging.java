package org.wickwise.rulebook;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.rule.FactHandle;
import org.wickwise.bench.Case;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.ReadingThresholds.Told;
import org.wickwise.strip.Redraw;
import org.wickwise.strip.Strip;

/**
 * A case whose rules stay laid out, so that readings can be put in the place of others and only what hangs on them is
 * judged again. What was said of the strips themselves, void or doubtful, stands as for the written readings. Conclusions
 * come without their reasons. Not for several threads.
 */
public final class WarmJudging implements AutoCloseable {

    private static final Reason.Concluded UNTOLD = new Reason.Concluded("", List.of());

    private final LaidOutCase whole;
    private final KieSession session;
    private final StandingConclusions standing;
    private final Case written;
    private final Set<Conclusion> verdicts;
    private final Judgement first;
    private final ReadingThresholds thresholds;
    private final Map<String, FactHandle> handles = new HashMap<>();
    private Map<String, Told> laidOut;

    /**
     * @param whole the case, laid out and judged
     * @param first its judgement
     */
    WarmJudging(LaidOutCase whole, Judgement first, ReadingThresholds thresholds) {
        this.whole = whole;
        this.session = whole.session();
        this.standing = whole.standing();
        whole.firings().stop();
        this.written = first.judged();
        this.verdicts = standing.now();
        this.first = first;
        this.thresholds = thresholds;
        this.laidOut = thresholds.told(new StripSummary(first.movements(), first.gaps()));
        laidOut.forEach((name, told) -> handles.put(name, session.getFactHandle(told.reading())));
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
        Case changed = written.with(strips);
        StripSummary seen = StripSummary.of(changed, verdictsOn(strips), first.limits());
        StripSummary summary = seen.with(new Reckoning(changed, seen, first.limits()).in(first.eluents()));
        judge(thresholds.told(summary));
        Map<Conclusion, Reason.Concluded> untold = new HashMap<>();
        standing.now().forEach(conclusion -> untold.put(conclusion, UNTOLD));
        return new Judgement(
                written,
                first.eluents(),
                summary.movements(),
                summary.gaps(),
                first.blends(),
                List.of(),
                untold,
                first.limits(),
                first.miscibility());
    }

    /** Every strip read again within its uncertainty; the order in which strips were written does not matter. */
    public List<Redraw> redraw(long seed) {
        RulerReadings readings = new RulerReadings(first.limits());
        return written.strips().stream()
                .map(strip -> Redraw.of(
                        strip,
                        readings.ruler(strip),
                        first.limit("uncertainty of a reported Rf"),
                        new Random(31 * seed + strip.toString().hashCode())))
                .toList();
    }

    /** Lays out only the readings of which a rule can tell something else than before. */
    private void judge(Map<String, Told> next) {
        for (String name : laidOut.keySet()) {
            if (!next.containsKey(name)) {
                session.delete(handles.remove(name));
            }
        }
        next.forEach((name, told) -> {
            Told before = laidOut.get(name);
            if (before == null) {
                handles.put(name, session.insert(told.reading()));
            } else if (!before.sides().equals(told.sides())) {
                session.update(handles.get(name), told.reading());
            }
        });
        laidOut = next;
        Judge.fire(session);
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
