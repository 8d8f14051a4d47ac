package org.wickwise.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import org.wickwise.plan.Plan;
import org.wickwise.plan.PlanLine;
import org.wickwise.report.JsonReport;
import org.wickwise.report.LessonText;
import org.wickwise.report.MarkdownReport;
import org.wickwise.report.ReasonPicture;
import org.wickwise.report.ReasonText;
import org.wickwise.report.TextReport;
import org.wickwise.rulebook.Lessons;
import org.wickwise.text.Place;
import org.wickwise.text.Problem;
import org.wickwise.text.ProblemsFound;
import org.wickwise.why.Answers;
import org.wickwise.why.Lesson;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says why a line of the plan stands there, or what is known of a solvent, a dye, a pair or a strip, and why. */
@Command(
        name = "why",
        mixinStandardHelpOptions = true,
        description = "Says why, down to the ruler and the handbook: of a line of the plan, a solvent, a dye,"
                + " two dyes, a strip or a caution.",
        footer = {
            "",
            "  wickwise why CASE step-1         a line of the plan, by its label",
            "  wickwise why CASE SOLVENT        a solvent or blend, by any of its names",
            "  wickwise why CASE DYE            a dye; two dyes as A and B, or A/B",
            "  wickwise why CASE strip in A     a strip; the second one as strip 2 in A",
            "  wickwise why CASE ignition       a caution, or all of a topic",
            "  wickwise why CASE RULE           a rule or a limit, by its name",
            "",
            "As lesson it is a short explanation for a student, as svg a drawing of",
            "what rests on what. Without WHAT it lists what can be asked.",
            "",
            "The reason is a tree: under each statement stand the rule that concluded it,",
            "with its own sentences, and what the rule went by: readings with file and",
            "line, table values with their source, limits you may change."
        })
final class WhyCommand implements Callable<Integer> {

    /** The shapes an answer can take. */
    enum Shape {
        TEXT,
        MARKDOWN,
        JSON,
        LESSON,
        SVG;

        @Override
        public String toString() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    @Parameters(index = "0", paramLabel = "CASE", description = "the case file")
    private Path caseFile;

    @Parameters(
            index = "1..*",
            arity = "0..*",
            paramLabel = "WHAT",
            description = "what is asked about; quotation marks may be left out")
    private List<String> words = List.of();

    @Option(
            names = "--as",
            paramLabel = "SHAPE",
            defaultValue = "text",
            description = "the shape of the answer: ${COMPLETION-CANDIDATES} (default: text)")
    private Shape shape;

    @Option(
            names = "--levels",
            paramLabel = "NUMBER",
            description = "how many steps below the answer a drawing shows (default: as many as fit)")
    private Optional<Integer> levels;

    @Mixin
    private OwnRulesOption rules;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        if (levels.filter(number -> number < 1).isPresent()) {
            throw new ParameterException(
                    spec.commandLine(), "--levels is " + levels.get() + "; expected 1 or more, such as --levels 3");
        }
        Desk desk = Desk.of(caseFile, rules.folder());
        Plan plan = desk.plan();
        Answers answers = new Answers(plan, desk.judge(), desk.planner());
        String question = String.join(" ", words);
        String answer = question.isBlank()
                ? whatCanBeAsked(plan, answers)
                : shown(question, answers.to(question, caseFile.toString()), plan, desk);
        spec.commandLine().getOut().print(answer);
        spec.commandLine().getOut().flush();
        return ExitCodes.PLANNED;
    }

    private String shown(String question, List<PlanLine> lines, Plan plan, Desk desk) {
        if (lines.size() > 1) {
            return several(question, lines);
        }
        PlanLine line = lines.get(0);
        return switch (shape) {
            case TEXT -> ReasonText.of(line, Terminal.heading());
            case MARKDOWN -> MarkdownReport.of(line);
            case JSON -> JsonReport.of(line);
            case LESSON -> LessonText.of(Lesson.of(line, plan.judgement(), lessons(desk)), Terminal.heading());
            case SVG -> ReasonPicture.of(line, steps());
        };
    }

    private String several(String question, List<PlanLine> lines) {
        String title = "Several are called so: " + question;
        return switch (shape) {
            case TEXT, LESSON -> TextReport.answered(title, lines, Terminal.heading());
            case MARKDOWN -> MarkdownReport.of(title, lines);
            case JSON -> JsonReport.of(title, lines);
            case SVG -> throw drawnApart(question, lines);
        };
    }

    private OptionalInt steps() {
        return levels.map(OptionalInt::of).orElseGet(OptionalInt::empty);
    }

    /** A picture shows one answer. */
    private ProblemsFound drawnApart(String question, List<PlanLine> lines) {
        List<String> labels = lines.stream().map(PlanLine::label).toList();
        return new ProblemsFound(List.of(new Problem(
                Place.wholeFile(caseFile.toString()),
                "`" + question + "` names " + labels.size() + " things",
                "one thing to draw",
                "ask for one of these: `" + String.join("`, `", labels) + "`")));
    }

    private static Lessons lessons(Desk desk) {
        return Lessons.read(Workbench.home().resolve("rules"), desk.judge().rulebook(), desk.data());
    }

    private static String whatCanBeAsked(Plan plan, Answers answers) {
        StringBuilder text = new StringBuilder("This plan can be asked about:\n");
        plan.lines().forEach(line -> text.append("  ").append(line.label()).append("\n"));
        text.append("and in plain words about:\n");
        answers.names().forEach(name -> text.append("  ").append(name).append("\n"));
        return text.toString();
    }
}
