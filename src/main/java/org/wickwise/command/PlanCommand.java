package org.wickwise.command;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.wickwise.notebook.Notebook;
import org.wickwise.plan.Plan;
import org.wickwise.plan.SurpriseLines;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Turns the strips of a case into a column plan. */
@Command(
        name = "plan",
        mixinStandardHelpOptions = true,
        description = "Turns the strips of a case into a column plan, or says why there is none.",
        footer = {
            "",
            "A case is a YAML file: the mixture, the column, the setting and the strips.",
            "Write down the solvent front and each spot's travel in millimetres, both from",
            "the origin:",
            "",
            "  title: My first case",
            "  mixture: {name: marker ink, dyes: [red, blue]}",
            "  column: {stationary phase: PHASE}",
            "  setting: college",
            "  strips:",
            "    - solvent: SOLVENT + SOLVENT 9:1",
            "      front mm: 72",
            "      travel mm: {red: 24, blue: 1}",
            "",
            "Each line of the plan carries a label; ask why it stands there with:",
            "  wickwise why CASE LABEL"
        })
final class PlanCommand implements Callable<Integer> {

    @Parameters(paramLabel = "CASE", description = "the case file")
    private Path caseFile;

    @Option(
            names = "--as",
            paramLabel = "FORM",
            defaultValue = "text",
            description = "the form of the plan: ${COMPLETION-CANDIDATES} (default: text)")
    private Form form;

    @Option(
            names = "--notebook",
            paramLabel = "FOLDER",
            description = "a notebook; says what of the strips surprises after what it remembers")
    private Optional<Path> notebook;

    @Mixin
    private OwnRulesOption rules;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        Desk desk = Desk.of(caseFile, rules.folder());
        Plan plan = notebook.map(folder -> remembering(desk, folder)).orElseGet(desk::plan);
        spec.commandLine().getOut().print(form.of(plan));
        spec.commandLine().getOut().flush();
        return plan.isRefusal() ? ExitCodes.REFUSED : ExitCodes.PLANNED;
    }

    private static Plan remembering(Desk desk, Path folder) {
        Plan plan = desk.plan();
        return plan.with(
                SurpriseLines.of(plan.judgement(), Remembering.of(desk, Notebook.in(Workbench.named(folder)))));
    }
}
