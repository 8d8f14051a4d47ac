package org.wickwise.rulebook;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.drools.model.codegen.ExecutableModelProject;
import org.kie.api.KieBase;
import org.kie.api.KieServices;
import org.kie.api.builder.KieBuilder;
import org.kie.api.builder.KieFileSystem;
import org.kie.api.builder.Message;
import org.kie.api.builder.ReleaseId;
import org.kie.api.runtime.KieSession;
import org.wickwise.bench.Case;
import org.wickwise.substance.SolventData;
import org.wickwise.text.ProblemsFound;

/** A rule book made ready to judge cases. Costs seconds to make, milliseconds to ask; may be shared between threads. */
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

    public static Judge of(Rulebook rulebook, SolventData data) {
        return new Judge(rulebook, data, compile(RuleTranslation.of(rulebook.rules())));
    }

    public Rulebook rulebook() {
        return rulebook;
    }

    public SolventData data() {
        return data;
    }

    /** @throws ProblemsFound when strips that should agree contradict each other */
    public Judgement judge(Case written) {
        Firings firings = new Firings();
        KieSession session = compiled.newKieSession();
        try {
            session.addEventListener(firings);
            session.setGlobal("firings", firings);
            rulebook.limits().values().forEach(session::insert);
            CaseFacts.ofTheStrips(written).forEach(session::insert);
            fire(session);
            StripSummary summary = StripSummary.of(written, verdicts(session), rulebook.limits());
            Collection<Object> facts = CaseFacts.ofTheEluents(written, summary, data);
            facts.forEach(session::insert);
            fire(session);
            Set<Conclusion> standing = conclusions(session);
            return new Judgement(
                    written,
                    CaseFacts.eluents(written),
                    summary.movements(),
                    summary.gaps(),
                    Reasons.of(rulebook.rules(), rulebook.limits(), firings, standing),
                    rulebook.limits());
        } finally {
            session.dispose();
        }
    }

    private static void fire(KieSession session) {
        int fired = session.fireAllRules(MOST_FIRINGS);
        if (fired >= MOST_FIRINGS) {
            throw new IllegalStateException("the rules did not come to an end after " + MOST_FIRINGS + " conclusions");
        }
    }

    private static Set<Conclusion> verdicts(KieSession session) {
        return conclusions(session);
    }

    private static Set<Conclusion> conclusions(KieSession session) {
        Set<Conclusion> conclusions = new HashSet<>();
        session.getObjects(Conclusion.class::isInstance).forEach(found -> conclusions.add((Conclusion) found));
        return conclusions;
    }

    private static KieBase compile(String rules) {
        KieServices services = KieServices.Factory.get();
        KieFileSystem files = services.newKieFileSystem();
        ReleaseId id = services.newReleaseId("org.wickwise", "rules", Integer.toHexString(rules.hashCode()));
        files.generateAndWritePomXML(id);
        files.write("src/main/resources/org/wickwise/rules/rules.drl", rules);
        KieBuilder builder = services.newKieBuilder(files).buildAll(ExecutableModelProject.class);
        List<Message> errors = builder.getResults().getMessages(Message.Level.ERROR);
        if (!errors.isEmpty()) {
            throw new IllegalStateException(
                    "a sentence of the vocabulary has no sound meaning: " + errors + "\n" + rules);
        }
        return services.newKieContainer(id).getKieBase();
    }

    Map<String, Limit> limits() {
        return rulebook.limits();
    }
}
