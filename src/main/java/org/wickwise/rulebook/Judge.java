package org.wickwise.rulebook;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import org.kie.api.KieBase;
import org.kie.api.runtime.KieSession;
import org.wickwise.bench.Case;
import org.wickwise.strip.BlendProposal;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.SolventData;
import org.wickwise.text.ProblemsFound;

/** A rule book made ready to judge cases. Costs seconds to make the first time, milliseconds to ask; may be shared between threads. */
public final class Judge {

    private static final int MOST_FIRINGS = 500_000;

    private final Rulebook rulebook;
    private final SolventData data;
    private final KieBase compiled;

    private Judge(Rulebook rulebook, SolventData data, KieBase compiled) {
        this.rulebook = rulebook;
        this.data = data;
        this.compiled = compiled;
    }

    /** @param keep the folder where compiled rules are kept between runs */
    public static Judge of(Rulebook rulebook, SolventData data, Path keep) {
        return new Judge(rulebook, data, new CompiledRules(keep).of(RuleTranslation.of(rulebook.rules())));
    }

    public Rulebook rulebook() {
        return rulebook;
    }

    public SolventData data() {
        return data;
    }

    /** @throws ProblemsFound when strips that should agree contradict each other */
    public Judgement judge(Case written) {
        return judge(written, facts -> facts);
    }

    /** @param order the order in which facts are laid before the rules; it changes nothing, and a test holds that */
    Judgement judge(Case written, UnaryOperator<Collection<Object>> order) {
        try (WarmJudging judging = warm(written, order)) {
            return judging.first();
        }
    }

    /**
     * The same, kept laid out so that other readings can be judged without starting again.
     *
     * @throws ProblemsFound when strips that should agree contradict each other
     */
    public WarmJudging keepWarm(Case written) {
        return warm(written, facts -> facts);
    }

    private WarmJudging warm(Case written, UnaryOperator<Collection<Object>> order) {
        Firings firings = new Firings();
        KieSession session = compiled.newKieSession();
        try {
            StandingConclusions standing = new StandingConclusions();
            session.addEventListener(firings);
            session.addEventListener(standing);
            session.setGlobal("firings", firings);
            rulebook.limits().values().forEach(session::insert);
            List<Object> facts = new ArrayList<>();
            layOut(CaseFacts.ofTheStrips(written), order, facts, session);
            layOut(ReplicateScatter.facts(written, standing.now(), rulebook.limits()), order, facts, session);
            Set<Conclusion> verdicts = standing.now();
            StripSummary summary = StripSummary.of(written, verdicts, rulebook.limits());
            layOut(CaseFacts.ofTheEluents(written, summary, data), order, facts, session);
            Reckoning reckoning = new Reckoning(written, summary, rulebook.limits());
            List<BlendProposal> blends = reckoning.blends(standing.now(), data.miscibility(), rulebook.blends());
            List<Eluent> proposed =
                    blends.stream().map(BlendProposal::eluent).distinct().toList();
            List<Eluent> eluents = joined(CaseFacts.eluents(written), proposed);
            StripSummary reckoned = reckoning.in(eluents);
            List<Object> further =
                    new ArrayList<>(CaseFacts.ofFurtherEluents(proposed, CaseFacts.eluents(written), written, data));
            further.addAll(reckoned.movements());
            further.addAll(reckoned.gaps());
            layOut(further, order, facts, session);
            StripSummary all = summary.with(reckoned);
            Judgement first = new Judgement(
                    written,
                    eluents,
                    all.movements(),
                    all.gaps(),
                    blends,
                    List.copyOf(facts),
                    Reasons.of(rulebook.rules(), rulebook.limits(), firings, standing.now()),
                    rulebook.limits(),
                    data.miscibility());
            firings.stop();
            return new WarmJudging(
                    session, standing, verdicts, first, ReadingThresholds.of(rulebook.rules(), rulebook.limits()));
        } catch (RuntimeException e) {
            session.dispose();
            throw e;
        }
    }

    private static void layOut(
            Collection<Object> more, UnaryOperator<Collection<Object>> order, List<Object> facts, KieSession session) {
        facts.addAll(more);
        order.apply(more).forEach(session::insert);
        fire(session);
    }

    /** Says of a judgement of this judge why some rule did not conclude something. */
    public Objections objections(Judgement judgement) {
        return new Objections(rulebook.rules(), judgement);
    }

    private static List<Eluent> joined(List<Eluent> eluents, List<Eluent> further) {
        Set<Eluent> all = new TreeSet<>(eluents);
        all.addAll(further);
        return List.copyOf(all);
    }

    static void fire(KieSession session) {
        int fired = session.fireAllRules(MOST_FIRINGS);
        if (fired >= MOST_FIRINGS) {
            throw new IllegalStateException("the rules did not come to an end after " + MOST_FIRINGS + " conclusions");
        }
    }
}
