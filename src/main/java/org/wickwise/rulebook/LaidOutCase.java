package org.wickwise.rulebook;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.rule.FactHandle;
import org.wickwise.bench.Case;
import org.wickwise.notebook.ColumnRun;
import org.wickwise.notebook.Poured;
import org.wickwise.notebook.RunOutcome;
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
        RECKONED,
        RUN
    }

    private final KieSession session;
    private final Rulebook rulebook;
    private final SolventData data;
    private final UnaryOperator<Collection<Object>> order;
    private final StandingConclusions standing = new StandingConclusions();
    private final Firings firings = new Firings();
    private final Map<Round, Map<Object, FactHandle>> laidOut = new HashMap<>();
    private final LaidOutReadings seenReadings;
    private final LaidOutReadings reckonedReadings;
    private final Remembered<StripSummary.InOneEluent, StripSummary> seen = new Remembered<>();
    private final Reckoning.Known reckoned = new Reckoning.Known();
    private Map<String, Limit> limits = Map.of();
    private ReadingThresholds thresholds;
    private EluentFacts known;

    /** @param order the order in which facts are laid before the rules; it changes nothing */
    LaidOutCase(KieSession session, Rulebook rulebook, SolventData data, UnaryOperator<Collection<Object>> order) {
        this.session = session;
        this.rulebook = rulebook;
        this.data = data;
        this.order = order;
        this.seenReadings = new LaidOutReadings(session);
        this.reckonedReadings = new LaidOutReadings(session);
        session.addEventListener(firings);
        session.addEventListener(standing);
        session.setGlobal("firings", firings);
    }

    /** The first judging, with its reasons; of later ones nothing is noted. */
    Judgement first(Case written) {
        return first(written, Optional.empty());
    }

    /** The first judging of a case whose column was run, with its reasons. */
    Judgement first(Case written, ColumnRun run) {
        return first(written, Optional.of(run));
    }

    private Judgement first(Case written, Optional<ColumnRun> run) {
        Judgement judgement = judged(written, run, rulebook.limits(), true);
        firings.stop();
        return judgement;
    }

    /**
     * The judgement of another case in the place of the one laid out. Conclusions come without their reasons.
     *
     * @throws org.wickwise.text.ProblemsFound when strips that should agree contradict each other
     */
    public Judgement suppose(Case supposed, Map<String, Limit> limits) {
        return judged(supposed, Optional.empty(), limits, false);
    }

    private Judgement judged(Case written, Optional<ColumnRun> run, Map<String, Limit> judgedBy, boolean withReasons) {
        judgeBy(judgedBy);
        List<Object> facts = new ArrayList<>();
        layOut(Round.STRIPS, CaseFacts.ofTheStrips(written), facts);
        layOut(Round.REPLICATES, ReplicateScatter.facts(written, standing.now(), limits), facts);
        seen.nextJudging();
        StripSummary summary = StripSummary.of(written, standing.now(), limits, seen);
        EluentFacts eluentFacts = eluentFacts(written);
        seenReadings.layOut(summary, thresholds);
        facts.addAll(summary.movements());
        facts.addAll(summary.gaps());
        layOut(Round.ELUENTS, eluentFacts.ofTheCase(), facts);
        Reckoning reckoning = new Reckoning(written, summary, limits, reckoned);
        List<BlendProposal> blends = reckoning.blends(standing.now(), data.miscibility(), rulebook.blends());
        List<Eluent> proposed = Stream.concat(
                        blends.stream().map(BlendProposal::eluent),
                        run.stream().flatMap(found -> found.poured().stream()).map(Poured::eluent))
                .filter(eluent -> !eluentFacts.eluents().contains(eluent))
                .distinct()
                .toList();
        List<Eluent> eluents = joined(eluentFacts.eluents(), proposed);
        StripSummary further = reckoning.in(eluents);
        reckonedReadings.layOut(further, thresholds);
        layOut(Round.RECKONED, eluentFacts.ofFurther(proposed), facts);
        facts.addAll(further.movements());
        facts.addAll(further.gaps());
        if (run.isPresent()) {
            RunOutcome outcome =
                    RunFacts.outcome(written, run.get(), summary.with(further).movements(), limits);
            layOut(Round.RUN, RunFacts.of(outcome, summary.with(further).movements(), limits), facts);
        }
        return judgement(
                written,
                eluents,
                summary.with(further),
                blends,
                facts,
                withReasons ? Reasons.of(rulebook.rules(), limits, firings, standing.now()) : untold());
    }

    /**
     * The judgement of other readings of the eluents that are laid out, with what was said of the strips themselves left as
     * it stands. Conclusions come without their reasons.
     */
    Judgement withReadings(Judgement first, Case changed, Set<Conclusion> verdicts) {
        seen.nextJudging();
        StripSummary summary = StripSummary.of(changed, verdicts, limits, seen);
        StripSummary further = new Reckoning(changed, summary, limits, reckoned).in(first.eluents());
        seenReadings.layOut(summary, thresholds);
        reckonedReadings.layOut(further, thresholds);
        Judge.fire(session);
        return judgement(first.judged(), first.eluents(), summary.with(further), first.blends(), List.of(), untold());
    }

    private Judgement judgement(
            Case written,
            List<Eluent> eluents,
            StripSummary readings,
            List<BlendProposal> blends,
            List<Object> facts,
            Map<Conclusion, Reason.Concluded> reasons) {
        return new Judgement(
                written,
                eluents,
                readings.movements(),
                readings.gaps(),
                blends,
                List.copyOf(facts),
                reasons,
                limits,
                data.miscibility());
    }

    private void judgeBy(Map<String, Limit> next) {
        if (!next.equals(limits)) {
            limits = next;
            thresholds = ReadingThresholds.of(rulebook.rules(), limits);
            seenReadings.forgetWhatWasTold();
            reckonedReadings.forgetWhatWasTold();
            layOut(Round.LIMITS, List.copyOf(limits.values()), new ArrayList<>());
        }
    }

    private EluentFacts eluentFacts(Case written) {
        if (known == null || !known.holdFor(written)) {
            known = new EluentFacts(written, data);
        }
        return known;
    }

    private Map<Conclusion, Reason.Concluded> untold() {
        Map<Conclusion, Reason.Concluded> untold = new HashMap<>();
        standing.now().forEach(conclusion -> untold.put(conclusion, UNTOLD));
        return untold;
    }

    private void layOut(Round round, Collection<?> wanted, List<Object> facts) {
        facts.addAll(wanted);
        Map<Object, FactHandle> there = laidOut.computeIfAbsent(round, any -> new IdentityHashMap<>());
        Set<Object> same = Collections.newSetFromMap(new IdentityHashMap<>());
        Set<Object> other = new LinkedHashSet<>();
        wanted.forEach(fact -> (there.containsKey(fact) ? same : other).add(fact));
        List<Object> gone =
                there.keySet().stream().filter(fact -> !same.contains(fact)).toList();
        for (Object fact : gone) {
            if (!other.remove(fact)) {
                session.delete(there.remove(fact));
            }
        }
        order.apply(other).forEach(fact -> there.put(fact, session.insert(fact)));
        Judge.fire(session);
    }

    private static List<Eluent> joined(List<Eluent> eluents, List<Eluent> further) {
        Set<Eluent> all = new TreeSet<>(eluents);
        all.addAll(further);
        return List.copyOf(all);
    }

    /** What holds of the case that is laid out. */
    Set<Conclusion> conclusions() {
        return Set.copyOf(standing.now());
    }

    Firings firings() {
        return firings;
    }

    @Override
    public void close() {
        session.dispose();
    }
}
