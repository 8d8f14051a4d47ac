package org.wickwise.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.wickwise.bench.Case;
import org.wickwise.plan.PlanLine;
import org.wickwise.report.TextReport;
import org.wickwise.text.Words;
import org.wickwise.why.Impact;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says what rules of one's own do to all known cases. */
@Command(
        name = "impact",
        mixinStandardHelpOptions = true,
        description = "Says what your rules do to every known case before you plan with them.",
        footer = {
            "",
            "Known cases are the shipped examples, the published cases and those of",
            "--cases. Cautions that vanish come first; they have to be accepted with",
            "--cautions-may-vanish, or the exit code is 3. Nothing is kept of that: plans",
            "are made with your rules either way."
        })
final class RulesImpactCommand implements Callable<Integer> {

    private static final int LINES_OF_A_CASE = 6;

    @Parameters(paramLabel = "FOLDER", description = "a folder with rules of your own")
    private Path folder;

    @Option(
            names = "--against",
            paramLabel = "FOLDER",
            description = "your rules as they were (default: the shipped rules alone)")
    private Optional<Path> against;

    @Option(names = "--cases", paramLabel = "FOLDER", description = "a folder with cases of your own")
    private List<Path> cases = List.of();

    @Option(names = "--cautions-may-vanish", description = "says that you mean it where a caution vanishes")
    private boolean cautionsMayVanish;

    @Spec
    private CommandSpec spec;

    private Workbench now;

    @Override
    public Integer call() {
        Workbench before = Workbench.in(Workbench.home(), against);
        now = Workbench.in(Workbench.home(), Optional.of(folder));
        List<Impact> impacts = new ArrayList<>();
        Set<String> silent = new LinkedHashSet<>(now.judge().rulebook().own().ruleNames());
        for (Case known : KnownCases.in(cases, before.data())) {
            Impact impact = Impact.of(before.plan(known), now.plan(known));
            silent.removeIf(
                    rule -> !impact.after().judgement().concludedBy(rule).isEmpty());
            impacts.add(impact);
        }
        PrintWriter out = spec.commandLine().getOut();
        List<Impact> vanishing =
                impacts.stream().filter(impact -> !impact.vanished().isEmpty()).toList();
        vanishing.forEach(impact -> out.println(vanished(impact)));
        List<Impact> refused = impacts.stream().filter(Impact::becomesRefusal).toList();
        refused.forEach(impact -> out.println(changed(impact, "No plan any more: ")));
        List<Impact> changed = impacts.stream()
                .filter(Impact::changesThePlan)
                .filter(impact -> !impact.becomesRefusal())
                .toList();
        changed.forEach(impact -> out.println(changed(impact, "Another plan: ")));
        out.println(inShort(impacts.size(), vanishing.size(), refused.size(), changed.size()));
        if (!silent.isEmpty()) {
            out.println(untried(List.copyOf(silent)));
        }
        if (vanishing.isEmpty() || cautionsMayVanish) {
            return ExitCodes.PLANNED;
        }
        out.println("Cautions vanish. Read them above; if you mean it, say so with --cautions-may-vanish.");
        return ExitCodes.REFUSED;
    }

    private String vanished(Impact impact) {
        return TextReport.answered(
                "A caution vanishes: " + impact.title(),
                impact.vanishedLines(now.judge(), now.planner()),
                Terminal.heading());
    }

    private String changed(Impact impact, String what) {
        List<PlanLine> lines = impact.comparison(now.judge());
        return TextReport.answered(
                what + impact.title(), lines.subList(0, Math.min(LINES_OF_A_CASE, lines.size())), Terminal.heading());
    }

    /** What never concludes anything was not tried by this, whatever it does. */
    private static String untried(List<String> rules) {
        return "In no known case " + Words.joined(rules) + (rules.size() == 1 ? " concludes" : " conclude")
                + " anything. Write an example, or name cases of your own with --cases.";
    }

    private static String inShort(int all, int vanishing, int refused, int changed) {
        return "Of " + all + " known cases " + vanishing + " lose a caution, " + refused + " have no plan any more, "
                + changed + " have another plan; the plan of the others stays.";
    }
}
