package org.wickwise.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.wickwise.lesson.BriefPlans;
import org.wickwise.lesson.ClassFindings;
import org.wickwise.lesson.ClassGroups;
import org.wickwise.lesson.ClassPlans;
import org.wickwise.lesson.ClassSummary;
import org.wickwise.lesson.GroupPlan;
import org.wickwise.lesson.Lesson;
import org.wickwise.lesson.LessonReader;
import org.wickwise.plan.Plan;
import org.wickwise.report.ClassText;
import org.wickwise.report.JsonReport;
import org.wickwise.text.Problem;
import org.wickwise.text.ProblemsFound;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Plans the columns of a whole class. */
@Command(
        name = "class",
        mixinStandardHelpOptions = true,
        description = "Makes every group's plan of a class, and says who can go on and who must run a strip again.",
        footer = {
            "",
            "The lesson file is a case file without strips that names the readings of the",
            "groups:",
            "",
            "  class: {groups: 12, sheet: READINGS.csv}",
            "",
            "or a folder with a case file of each, `cases: FOLDER`. A table has one row a",
            "strip, with the columns group, solvent, front mm and one for each dye; `sheet",
            "LESSONFILE` prints one to fill in. A row that cannot be taken is told and left",
            "out; everything else still counts.",
            "",
            "  wickwise class LESSONFILE             the class in short",
            "  wickwise class LESSONFILE 7           the plan of group 7",
            "  wickwise class LESSONFILE 7 step-1    why a line of that plan stands there",
            "  wickwise class LESSONFILE way-1       why a line of the summary stands there",
            "",
            "The exit code is 3 when no group can go on."
        })
final class ClassCommand implements Callable<Integer> {

    private static final List<String> LABELS =
            List.of("class", "way-", "repeat-", "again-", "far-", "pooled-", "left-out-", "told-", "more-");

    @Parameters(index = "0", paramLabel = "LESSONFILE", description = "the lesson file")
    private Path lessonFile;

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "GROUP",
            description = "the group whose plan is asked for, or the label of a line of the summary")
    private Optional<String> group;

    @Parameters(
            index = "2",
            arity = "0..1",
            paramLabel = "LABEL",
            description = "the label of a line of the group's plan that is asked about")
    private Optional<String> label;

    @Option(
            names = "--as",
            paramLabel = "FORM",
            defaultValue = "text",
            description = "the form of the answer: ${COMPLETION-CANDIDATES} (default: text)")
    private Form form;

    @Option(names = "--html", paramLabel = "FILE", description = "write one page with the class and every group's plan")
    private Optional<Path> html;

    @Option(
            names = "--csv",
            paramLabel = "FILE",
            description = "write a table with a row for each group, and beside it FILE-pooled and FILE-readings")
    private Optional<Path> csv;

    @Mixin
    private OwnRulesOption rules;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        Workbench bench = Workbench.in(Workbench.home(), rules.folder());
        Lesson lesson = LessonReader.read(Workbench.named(lessonFile), bench.data());
        ClassGroups groups = ClassGroups.of(lesson, bench.data());
        boolean ofTheSummary = group.filter(asked -> groups.names().stream().noneMatch(asked::equalsIgnoreCase))
                .filter(asked -> LABELS.stream().anyMatch(asked::startsWith))
                .isPresent();
        return group.isPresent() && !ofTheSummary ? ofOneGroup(groups, bench) : ofTheClass(lesson, groups, bench);
    }

    private int ofTheClass(Lesson lesson, ClassGroups groups, Workbench bench) throws IOException {
        ClassFindings findings =
                new ClassFindings(lesson, groups, bench.judge().rulebook().limits());
        try (ClassOutputs outputs = ClassOutputs.to(html, csv);
                BriefPlans brief = new BriefPlans(bench.judge(), bench.planner())) {
            Consumer<GroupPlan> each = planned -> {
                findings.add(planned);
                outputs.add(planned);
            };
            Progress progress =
                    new Progress(spec.commandLine().getErr(), groups.names().size(), "groups planned");
            if (html.isPresent()) {
                ClassPlans.sideBySide(groups, bench::plan, each, progress);
            } else {
                ClassPlans.inTurn(groups, brief::of, each, progress);
            }
            ClassSummary summary = findings.summary();
            List<Path> written = outputs.finish(summary);
            if (group.isPresent()) {
                return Printed.ending(
                        Printed.linesOrOne(summary.title(), summary.lines(), group, lessonFile, form), spec);
            }
            Printed.ending(inForm(summary), spec);
            if (!written.isEmpty()) {
                spec.commandLine()
                        .getErr()
                        .println("Written: "
                                + written.stream().map(Path::toString).collect(Collectors.joining(", ")));
            }
            return summary.anyGoesOn() ? ExitCodes.PLANNED : ExitCodes.REFUSED;
        }
    }

    private String inForm(ClassSummary summary) {
        return switch (form) {
            case TEXT -> ClassText.of(summary, Terminal.heading());
            case MARKDOWN -> ClassText.markdown(summary);
            case JSON -> JsonReport.of(summary.title(), summary.lines());
        };
    }

    private int ofOneGroup(ClassGroups groups, Workbench bench) {
        GroupPlan planned = ClassPlans.planOf(groups.named(group.orElseThrow(), lessonFile), bench::plan);
        if (planned.plan().isEmpty()) {
            throw new ProblemsFound(planned.leftOut());
        }
        Stream.concat(planned.leftOut().stream().map(Problem::toString), planned.told().stream())
                .forEach(spec.commandLine().getErr()::println);
        Plan plan = planned.plan().get();
        if (label.isPresent()) {
            return Printed.ending(
                    Printed.linesOrOne(plan.judged().title(), plan.lines(), label, lessonFile, form), spec);
        }
        Printed.ending(form.of(plan, "class LESSONFILE GROUP LABEL"), spec);
        return plan.isRefusal() ? ExitCodes.REFUSED : ExitCodes.PLANNED;
    }
}
