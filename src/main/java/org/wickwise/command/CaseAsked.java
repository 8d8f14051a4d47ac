package org.wickwise.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.wickwise.plan.PlanLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What every question about a case takes: the case, the rules it is judged by, and the form of the answer. */
final class CaseAsked {

    @Parameters(index = "0", paramLabel = "CASE", description = "the case file")
    private Path caseFile;

    @Option(
            names = "--as",
            paramLabel = "FORM",
            defaultValue = "text",
            description = "the form of the answer: ${COMPLETION-CANDIDATES} (default: text)")
    private Form form;

    @Mixin
    private OwnRulesOption rules;

    /** The case file as it was named, for messages. */
    String file() {
        return caseFile.toString();
    }

    /** @throws org.wickwise.text.ProblemsFound when the case, the rules or the solvent data have problems */
    Desk desk() {
        return Desk.of(caseFile, rules.folder());
    }

    /** Prints a few lines, or the one with this label and its reason as a tree, and ends the command. */
    int answered(String title, List<PlanLine> lines, Optional<String> label, CommandSpec spec) {
        return Printed.ending(Printed.linesOrOne(title, lines, label, caseFile, form), spec);
    }
}
