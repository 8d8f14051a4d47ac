package org.wickwise.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.wickwise.plan.PlanLine;
import org.wickwise.report.ReasonText;
import org.wickwise.rulebook.Judge;
import org.wickwise.rulebook.RuleExample;
import org.wickwise.rulebook.RuleExamplesReader;
import org.wickwise.text.Words;
import org.wickwise.why.RuleTrial;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tries the examples beside rules. */
@Command(
        name = "try",
        mixinStandardHelpOptions = true,
        description = "Tries the examples of rules: does each fire, and stay silent, where its example says so?",
        footer = {
            "",
            "The examples of your own rules stand in FOLDER/examples. Without FOLDER the",
            "shipped examples are tried. Of an example that does not hold the reason is",
            "printed as a tree."
        })
final class RulesTryCommand implements Callable<Integer> {

    private static final String EXAMPLES = "examples";

    @Parameters(arity = "0..1", paramLabel = "FOLDER", description = "a folder with rules of your own")
    private Optional<Path> folder;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        Judge judge = Workbench.in(Workbench.home(), folder).judge();
        Path place = folder.map(Workbench::named)
                .orElse(Workbench.home().resolve("rules"))
                .resolve(EXAMPLES);
        String shownAs = folder.map(Path::toString).orElse("rules") + "/" + EXAMPLES;
        List<RuleExample> examples =
                Files.isDirectory(place) ? RuleExamplesReader.read(place, shownAs, judge.data()) : List.of();
        List<PlanLine> failures = RuleTrial.of(examples, judge);
        failures.forEach(failure -> spec.commandLine().getOut().println(ReasonText.of(failure, Terminal.heading())));
        spec.commandLine().getOut().println(inShort(examples.size(), failures.size(), shownAs));
        List<String> untried = judge.rulebook().own().ruleNames().stream()
                .filter(rule ->
                        examples.stream().noneMatch(example -> example.rule().equals(rule)))
                .toList();
        if (!untried.isEmpty() && !examples.isEmpty()) {
            spec.commandLine().getOut().println("No example tries " + Words.joined(untried) + ".");
        }
        return failures.isEmpty() ? ExitCodes.PLANNED : ExitCodes.BAD_INPUT;
    }

    private static String inShort(int examples, int failures, String place) {
        if (examples == 0) {
            return "There are no examples in " + place + ". Write one for each rule: where it fires, where it stays"
                    + " silent.";
        }
        if (examples == 1) {
            return failures == 0 ? "The one example holds." : "The one example does not hold.";
        }
        return failures == 0
                ? "All " + examples + " examples hold."
                : failures + " of " + examples + " examples " + (failures == 1 ? "does not hold." : "do not hold.");
    }
}
