package org.wickwise.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.wickwise.plan.Planner;
import org.wickwise.report.FindingText;
import org.wickwise.rulebook.Judge;
import org.wickwise.rulebook.OwnRules;
import org.wickwise.rulebook.RuleCheck;
import org.wickwise.rulebook.RuleGaps;
import org.wickwise.rulebook.Rulebook;
import org.wickwise.substance.SolventData;
import org.wickwise.substance.SolventDataReader;
import org.wickwise.text.Place;
import org.wickwise.text.Problem;
import org.wickwise.text.ProblemsFound;
import org.wickwise.text.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says everything that is wrong with rules. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        description = "Says everything that is wrong with the rules of a folder, with file, line and a way out.",
        footer = {
            "",
            "Without FOLDER the shipped rules are checked. Each kind of finding stands in",
            "square brackets and is explained in docs/rule-findings.md."
        })
final class RulesCheckCommand implements Callable<Integer> {

    @Parameters(arity = "0..1", paramLabel = "FOLDER", description = "a folder with rules of your own")
    private Optional<Path> folder;

    @Option(names = "--gaps", description = "look also for what no rule judges; takes longer")
    private boolean gaps;

    @Option(names = "--watch", description = "check again whenever a file of the folder is saved")
    private boolean watch;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        SolventData data = SolventDataReader.read(Workbench.home().resolve("solvent-data"));
        List<Problem> findings = told(data);
        if (watch) {
            SavedFiles.whenever(
                    folder.map(Workbench::named).orElse(Workbench.home().resolve("rules")), () -> told(data));
        }
        return findings.isEmpty() ? ExitCodes.PLANNED : ExitCodes.BAD_INPUT;
    }

    private List<Problem> told(SolventData data) {
        String name = folder.map(Path::toString).orElse("the shipped rules");
        List<Problem> findings = new ArrayList<>();
        Optional<Rulebook> book = read(data, findings);
        book.ifPresent(read -> findings.addAll(findings(read, data)));
        PrintWriter out = spec.commandLine().getOut();
        out.print(FindingText.of(findings, RulesCheckCommand::lineAt));
        out.println(
                findings.isEmpty()
                        ? sound(name, book.orElseThrow().own())
                        : findings.size() + (findings.size() == 1 ? " finding" : " findings") + " in " + name + ".");
        out.flush();
        return findings;
    }

    private Optional<Rulebook> read(SolventData data, List<Problem> findings) {
        try {
            return Optional.of(
                    Rulebook.readToCheck(Workbench.home().resolve("rules"), folder.map(Workbench::named), data));
        } catch (ProblemsFound unreadable) {
            findings.addAll(unreadable.problems());
            return Optional.empty();
        }
    }

    private List<Problem> findings(Rulebook book, SolventData data) {
        List<Problem> findings = new ArrayList<>(RuleCheck.of(book));
        try {
            new Planner(book);
        } catch (ProblemsFound unknownPreferences) {
            findings.addAll(unknownPreferences.problems());
        }
        if (gaps && findings.isEmpty()) {
            findings.addAll(RuleGaps.of(Judge.of(book, data, Workbench.compiledRules())));
        }
        return findings;
    }

    /** Says also what was looked at, so that nobody takes a file for read that is not. */
    private static String sound(String name, OwnRules own) {
        if (own.isEmpty()) {
            return "Nothing is wrong with " + name + ".";
        }
        List<String> parts = new ArrayList<>();
        add(parts, own.ruleNames().size(), "rule", "rules");
        add(parts, own.limits().size(), "limit", "limits");
        add(parts, own.switchedOff().size(), "shipped rule switched off", "shipped rules switched off");
        own.wishes().ifPresent(any -> parts.add("preferences"));
        return parts.isEmpty()
                ? "Nothing stands in " + name + " yet; write rules into a file such as " + name + "/our-room.yaml."
                : "Nothing is wrong with " + name + ": " + Words.joined(parts) + ".";
    }

    private static void add(List<String> parts, int number, String one, String more) {
        if (number > 0) {
            parts.add(number + " " + (number == 1 ? one : more));
        }
    }

    private static String lineAt(Place place) {
        Path beside = Workbench.home().resolve(place.file());
        Path file = Files.exists(beside) ? beside : Path.of(place.file());
        try {
            List<String> lines = Files.readAllLines(file);
            return place.line() > 0 && place.line() <= lines.size() ? lines.get(place.line() - 1) : "";
        } catch (IOException gone) {
            return "";
        }
    }
}
