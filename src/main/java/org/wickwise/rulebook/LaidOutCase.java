package org.wickwise.rulebook;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.rule.FactHandle;
import org.wickwise.bench.Case;
import org.wickwise.reason.Reason;
import org.wickwise.strip.BlendProposal;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.SolventData;

/**
 * A case laid out before the rules, round by round, that can be changed: only what is different is taken away or laid out
 * anew, and the rules judge again only what hangs on it. Not for several threads.
 */
public final class LaidOutCase implements AutoCloseable {

    private static final Reason.Concluded UNTOLD = new Reason.Concluded("", List.of());

    /** What is laid out in which round. */
    private enum Round {
        LIMITS,
        STRIPS,
        REPLICATES,
        ELUENTS,
        RECKONED
    }

    private final KieSession session;
    private final Rulebook rulebook;
    private final SolventData data;
    private final UnaryOperator<Collection<Object>> order;
    private final StandingConclusions standing = new StandingConclusions();
    private final Firings firings = new Firings();
    private final Map<Round, Map<Object, FactHandle>> laidOut = new HashMap<>();

    /** @param order the order in which facts are laid before the rules; it changes nothing */
    LaidOutCase(KieSession session, Rulebook rulebook, SolventData data, UnaryOperator<Collection<Object>> order) {
        this.session = session;
        this.rulebook = rulebook;
        this.data = data;
        this.order = order;
        session.addEventListener(firings);
        session.addEventListener(standing);
        session.setGlobal("firings", firings);
    }

    /** The first judging, with its reasons. */
    Judgement first(Case written) {
        return judged(written, rulebook.limits(), true);
    }

    /**
     * The judgement of another case in the place of the one laid out. Conclusions come without their reasons.
     *
     * @throws org.wickwise.text.ProblemsFound when strips that should agree contradict each other
     */
    public Judgement suppose(Case supposed, Map<String, Limit> limits) {
        firings.stop();
        return judged(supposed, limits, false);
    }

    private Judgement judged(Case written, Map<String, Limit> limits, boolean withReasons) {
        List<Object> facts = new ArrayList<>();
        layOut(Round.LIMITS, List.copyOf(limits.values()), new ArrayList<>());
        layOut(Round.STRIPS, CaseFacts.ofTheStrips(written), facts);
        layOut(Round.REPLICATES, ReplicateScatter.facts(written, standing.now(), limits), facts);
        StripSummary summary = StripSummary.of(written, standing.now(), limits);
        layOut(Round.ELUENTS, CaseFacts.ofTheEluents(written, summary, data), facts);
        Reckoning reckoning = new Reckoning(written, summary, limits);
        List<BlendProposal> blends = reckoning.blends(standing.now(), data.miscibility(), rulebook.blends());
        List<Eluent> proposed =
                blends.stream().map(BlendProposal::eluent).distinct().toList();
        List<Eluent> eluents = joined(CaseFacts.eluents(written), proposed);
        StripSummary reckoned = reckoning.in(eluents);
        List<Object> further =
                new ArrayList<>(CaseFacts.ofFurtherEluents(proposed, CaseFacts.eluents(written), written, data));
        further.addAll(reckoned.movements());
        further.addAll(reckoned.gaps());
        layOut(Round.RECKONED, further, facts);
        StripSummary all = summary.with(reckoned);
        return new Judgement(
                written,
                eluents,
                all.movements(),
                all.gaps(),
                blends,
                List.copyOf(facts),
                withReasons ? Reasons.of(rulebook.rules(), limits, firings, standing.now()) : untold(),
                limits,
                data.miscibility());
    }

    private Map<Conclusion, Reason.Concluded> untold() {
        Map<Conclusion, Reason.Concluded> untold = new HashMap<>();
        standing.now().forEach(conclusion -> untold.put(conclusion, UNTOLD));
        return untold;
    }

    private void layOut(Round round, Collection<?> wanted, List<Object> facts) {
        facts.addAll(wanted);
        Map<Object, FactHandle> there = laidOut.computeIfAbsent(round, any -> new LinkedHashMap<>());
        Set<Object> next = new LinkedHashSet<>(order.apply(new ArrayList<>(wanted)));
        List<Object> gone =
                there.keySet().stream().filter(fact -> !next.contains(fact)).toList();
        gone.forEach(fact -> session.delete(there.remove(fact)));
        next.forEach(fact -> there.computeIfAbsent(fact, session::insert));
        Judge.fire(session);
    }

    private static List<Eluent> joined(List<Eluent> eluents, List<Eluent> further) {
        Set<Eluent> all = new TreeSet<>(eluents);
        all.addAll(further);
        return List.copyOf(all);
    }

    KieSession session() {
        return session;
    }

    StandingConclusions standing() {
        return standing;
    }

    Firings firings() {
        return firings;
    }

    @Override
    public void close() {
        session.dispose();
    }
}
