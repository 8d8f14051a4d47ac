package org.wickwise.rulebook;

import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.kie.api.KieBase;
import org.kie.api.runtime.KieSession;
import org.wickwise.bench.Case;
import org.wickwise.notebook.ColumnRun;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.SolventData;
import org.wickwise.text.Place;
import org.wickwise.text.Problem;
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
        return of(rulebook, data, keep, ShippedRules.none());
    }

    /**
     * @param keep the folder where compiled rules are kept between runs
     * @param shipped the rules of the package, loading
     */
    public static Judge of(Rulebook rulebook, SolventData data, Path keep, ShippedRules shipped) {
        return new Judge(rulebook, data, new CompiledRules(keep, shipped).of(RuleTranslation.of(rulebook.rules())));
    }

    /**
     * The rules of a book, compiled, as the content of a jar. With that jar on the class path of the same program, these
     * rules are compiled no more.
     */
    public static byte[] compiled(Rulebook rulebook) {
        return CompiledRules.jarOf(RuleTranslation.of(rulebook.rules()));
    }

    public Rulebook rulebook() {
        return rulebook;
    }

    /** The value of a limit of the rule book. */
    public double limit(String name) {
        return rulebook.limits().get(name).value();
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
        try (LaidOutCase laidOut = laidOut(rulebook, order)) {
            return laidOut.first(written);
        }
    }

    /**
     * The judgement of a case whose column was run: with likely reasons why it differed from what was expected.
     *
     * @throws ProblemsFound when strips that should agree contradict each other
     */
    public Judgement judge(Case written, ColumnRun run) {
        try (LaidOutCase laidOut = laidOut(rulebook, facts -> facts)) {
            return laidOut.first(written, run);
        }
    }

    /**
     * The judgement of a case under other limits than those of the rule book.
     *
     * @throws ProblemsFound when strips that should agree contradict each other
     */
    public Judgement judge(Case written, Map<String, Limit> limits) {
        try (LaidOutCase laidOut = laidOut(rulebook.with(limits), facts -> facts)) {
            return laidOut.first(written);
        }
    }

    /**
     * The judgement of a case whose column was run under other limits than those of the rule book.
     *
     * @throws ProblemsFound when strips that should agree contradict each other
     */
    public Judgement judge(Case written, ColumnRun run, Map<String, Limit> limits) {
        try (LaidOutCase laidOut = laidOut(rulebook.with(limits), facts -> facts)) {
            return laidOut.first(written, run);
        }
    }

    /**
     * A case judged and kept laid out, so that it can be changed.
     *
     * @throws ProblemsFound when strips that should agree contradict each other
     */
    public LaidOutCase layOut(Case written) {
        LaidOutCase laidOut = laidOut(rulebook, facts -> facts);
        laidOut.first(written);
        return laidOut;
    }

    /**
     * A case judged and kept laid out, so that other readings can be judged without starting again.
     *
     * @throws ProblemsFound when strips that should agree contradict each other
     */
    public WarmJudging keepWarm(Case written) {
        LaidOutCase laidOut = laidOut(rulebook, facts -> facts);
        return new WarmJudging(laidOut, laidOut.first(written));
    }

    private LaidOutCase laidOut(Rulebook book, UnaryOperator<Collection<Object>> order) {
        return new LaidOutCase(compiled.newKieSession(), book, data, order);
    }

    /** Says of a judgement of this judge why some rule did not conclude something. */
    public Objections objections(Judgement judgement) {
        return new Objections(rulebook.rules(), judgement);
    }

    /** Says how far the readings behind a judgement of this judge lie from the limits they were compared with. */
    public Margins margins(Judgement judgement) {
        return new Margins(rulebook.rules(), judgement);
    }

    /**
     * What can be told of an eluent without judging; empty where the conclusion about it hangs on other eluents too.
     *
     * @param wanted a conclusion about this eluent
     * @param written a judgement of this judge
     */
    public Optional<EluentAlone> alone(Conclusion wanted, Eluent eluent, Judgement written) {
        return EluentAlone.of(wanted, eluent, rulebook.rules(), written);
    }

    static void fire(KieSession session) {
        int fired = session.fireAllRules(MOST_FIRINGS);
        if (fired >= MOST_FIRINGS) {
            throw new ProblemsFound(List.of(new Problem(
                    Place.wholeFile("rules"),
                    "the rules did not come to an end after " + MOST_FIRINGS + " conclusions",
                    "rules that come to an end",
                    "look with `wickwise rules check`, or leave out the rules added last")));
        }
    }
}
