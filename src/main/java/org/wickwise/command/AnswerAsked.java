package org.wickwise.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.wickwise.plan.Plan;
import org.wickwise.plan.PlanLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A question about a file, and how it is to be answered: whole or one line with its reason, in which form, by which rules. */
final class AnswerAsked {

    @Parameters(
            index = "0",
            paramLabel = "FILE",
            description = "the file of a case, a lesson, or an entry of a notebook")
    private Path named;

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "LABEL",
            description = "the label of a line, to see its reason as a tree")
    private Optional<String> label;

    @Option(
            names = "--as",
            paramLabel = "FORM",
            defaultValue = "text",
            description = "the form of the answer: ${COMPLETION-CANDIDATES} (default: text)")
    private Form form;

    @Mixin
    private OwnRulesOption rules;

    /** The file as it was named, or the one of that name beside the program. */
    Path file() {
        return Workbench.named(named);
    }

    /** The file as it was named, for messages. */
    Path named() {
        return named;
    }

    /** Empty where only the shipped rules count. */
    Optional<Path> ownRules() {
        return rules.folder();
    }

    /** A few lines under a title, or the one that is asked about with its reason. */
    String lines(String title, List<PlanLine> lines) {
        return Printed.linesOrOne(title, lines, label, named, form);
    }

    /**
     * A whole plan under its sections, or the line that is asked about with its reason.
     *
     * @param question how a person asks for the reason of a line
     */
    String plan(Plan plan, String question) {
        return label.isPresent() ? lines(plan.judged().title(), plan.lines()) : form.of(plan, question);
    }
}
