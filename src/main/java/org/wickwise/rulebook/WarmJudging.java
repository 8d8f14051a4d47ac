package org.wickwise.rulebook;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.rule.FactHandle;
import org.wickwise.bench.Case;
import org.wickwise.reason.Reason;
import org.wickwise.strip.Apart;
import org.wickwise.strip.Movement;
import org.wickwise.strip.Strip;

/**
 * A case whose rules stay laid out, so that readings can be put in the place of others and only what hangs on them is
 * judged again. What was said of the strips themselves, void or doubtful, stands as for the written readings. Conclusions
 * come without their reasons. Not for several threads.
 */
public final class WarmJudging implements AutoCloseable {

    private static final Reason.Concluded UNTOLD = new Reason.Concluded("", List.of());

    private final KieSession session;
    private final Case written;
    private final Set<Conclusion> verdicts;
    private final Judgement first;
    private final ReadingThresholds thresholds;
    private final Map<List<Object>, Set<Conclusion>> known = new HashMap<>();
    private final Map<String, FactHandle> laidOut = new HashMap<>();

    /**
     * @param session with the case laid out and judged
     * @param verdicts what was concluded of the strips before their readings were put together
     * @param first the judgement of the written readings
     */
    WarmJudging(KieSession session, Set<Conclusion> verdicts, Judgement first, ReadingThresholds thresholds) {
        this.session = session;
        this.written = first.judged();
        this.verdicts = verdicts;
        this.first = first;
        this.thresholds = thresholds;
        for (FactHandle handle : session.getFactHandles(fact -> fact instanceof Movement || fact instanceof Apart)) {
            laidOut.put(name(session.getObject(handle)), handle);
        }
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
        Set<Conclusion> conclusions = known.computeIfAbsent(thresholds.toldApart(summary), any -> judged(summary));
        Map<Conclusion, Reason.Concluded> untold = new LinkedHashMap<>();
        conclusions.forEach(conclusion -> untold.put(conclusion, UNTOLD));
        return new Judgement(
                written,
                first.eluents(),
                summary.movements(),
                summary.gaps(),
                first.blends(),
                untold,
                first.limits(),
                first.miscibility());
    }

    private Set<Conclusion> judged(StripSummary summary) {
        Map<String, Object> facts = new TreeMap<>();
        summary.movements().forEach(movement -> facts.put(name(movement), movement));
        summary.gaps().forEach(gap -> facts.put(name(gap), gap));
        Set<String> gone = new HashSet<>(laidOut.keySet());
        gone.removeAll(facts.keySet());
        gone.forEach(name -> session.delete(laidOut.remove(name)));
        facts.forEach((name, fact) -> {
            FactHandle handle = laidOut.get(name);
            if (handle == null) {
                laidOut.put(name, session.insert(fact));
            } else if (!session.getObject(handle).equals(fact)) {
                session.update(handle, fact);
            }
        });
        Judge.fire(session);
        return Judge.conclusions(session);
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

    private static String name(Object fact) {
        if (fact instanceof Movement movement) {
            return movement.getClass().getSimpleName() + " " + movement.dye() + " in " + movement.eluent();
        }
        Apart gap = (Apart) fact;
        return gap.getClass().getSimpleName() + " " + gap.ahead() + " before " + gap.behind() + " in " + gap.eluent();
    }

    @Override
    public void close() {
        session.dispose();
    }
}
