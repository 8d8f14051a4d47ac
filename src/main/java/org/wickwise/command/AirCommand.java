package org.wickwise.command;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.wickwise.lesson.AirLines;
import org.wickwise.plan.PlanLine;
import org.wickwise.substance.NamesOfTheTable;
import org.wickwise.substance.Solvent;
import org.wickwise.substance.SolventData;
import org.wickwise.text.Place;
import org.wickwise.text.Problems;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Says what the air of the room would hold at the worst. */
@Command(
        name = "air",
        mixinStandardHelpOptions = true,
        description = "Reckons what the air of the room would hold if everything evaporated; a caution, no permission.",
        footer = {
            "",
            "The lesson says `room: {cubic metres: 200, air changes per hour: 3, smallest",
            "space cubic metres: 0.2}`. All that `prepare` has ready is taken to evaporate,",
            "unless --evaporates names other amounts."
        })
final class AirCommand implements Callable<Integer> {

    private static final double MOST_MILLILITRES = 1e9;

    @Mixin
    private LessonAsked question;

    @Option(
            names = "--evaporates",
            paramLabel = "SOLVENT=ML",
            description = "so many millilitres of a solvent in place of what is prepared; may be given several times")
    private Map<String, Double> evaporates = new LinkedHashMap<>();

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        LessonAsked.Asked asked = question.asked();
        List<PlanLine> lines = evaporates.isEmpty()
                ? AirLines.of(asked.laidOut())
                : AirLines.of(asked.laidOut(), amounts(asked.laidOut().data()));
        return question.answered("Room air: " + asked.laidOut().lesson().basis().title(), lines, spec);
    }

    private Map<Solvent, Double> amounts(SolventData data) {
        Map<Solvent, Double> amounts = new LinkedHashMap<>();
        Problems problems = new Problems();
        evaporates.forEach((name, millilitres) -> {
            if (!(millilitres > 0 && millilitres <= MOST_MILLILITRES)) {
                throw new ParameterException(
                        spec.commandLine(),
                        "--evaporates " + name + " is " + millilitres
                                + " mL; expected a number above 0, such as --evaporates \"" + name + "=100\"");
            }
            new NamesOfTheTable(data, problems)
                    .solvent(name, Place.wholeFile("--evaporates"))
                    .ifPresent(solvent -> amounts.merge(solvent, millilitres, Double::sum));
        });
        problems.throwIfAny();
        return amounts;
    }
}
