package org.wickwise.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.wickwise.bench.Case;
import org.wickwise.bench.CaseReader;
import org.wickwise.bench.Setting;
import org.wickwise.rulebook.Conclusion.Fit;
import org.wickwise.strip.Behaviour;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.Solvent;
import org.wickwise.substance.SolventData;
import org.wickwise.substance.StationaryPhase;
import org.wickwise.text.Place;
import org.wickwise.text.Problem;
import org.wickwise.text.YamlFile;

/**
 * Looks for what no rule judges: two dyes with every pair of behaviours, on every stationary phase, in every setting, in an
 * eluent that may enter. Where no rule says what the eluent is good for or what to do next, there is a gap.
 */
public final class RuleGaps {

    private static final Place WHOLE_BOOK = Place.wholeFile("rules");

    private final Judge judge;
    private final SolventData data;

    private RuleGaps(Judge judge) {
        this.judge = judge;
        this.data = judge.data();
    }

    /** One finding for each combination that no rule judges, with an example. */
    public static List<Problem> of(Judge judge) {
        RuleGaps gaps = new RuleGaps(judge);
        return gaps.data.stationaryPhases().stream()
                .flatMap(phase -> Stream.of(Setting.values()).flatMap(setting -> gaps.on(phase, setting).stream()))
                .toList();
    }

    private List<Problem> on(StationaryPhase phase, Setting setting) {
        Optional<Solvent> entering = data.solvents().stream()
                .filter(solvent -> mayEnter(solvent, phase, setting))
                .findFirst();
        if (entering.isEmpty()) {
            return List.of(gap(
                    "no solvent of the table may enter a column of " + phase + " in a " + setting.word(),
                    "a case with this column and setting, with any strip"));
        }
        List<Problem> found = new ArrayList<>();
        Behaviour[] behaviours = Behaviour.values();
        for (int i = 0; i < behaviours.length; i++) {
            for (int j = i; j < behaviours.length; j++) {
                Case tried = example(entering.get(), phase, setting, behaviours[i], behaviours[j]);
                if (!isJudged(judge.judge(tried), Eluent.neat(entering.get()))) {
                    found.add(gap(
                            "nothing is concluded where on " + phase + " in a " + setting.word() + " one dye "
                                    + behaviours[i].word() + " and the other " + behaviours[j].word(),
                            "two dyes in " + entering.get()));
                }
            }
        }
        return found;
    }

    private boolean mayEnter(Solvent solvent, StationaryPhase phase, Setting setting) {
        Case tried = example(solvent, phase, setting, Behaviour.STAYS, Behaviour.RUNS_AHEAD);
        return judge.judge(tried).holds(new Conclusion.Fitness(Eluent.neat(solvent), Fit.FIT));
    }

    private Case example(Solvent solvent, StationaryPhase phase, Setting setting, Behaviour one, Behaviour other) {
        return CaseReader.of(
                YamlFile.parse(
                        "gap",
                        String.join(
                                "\n",
                                "title: gap",
                                "mixture: {dyes: [{name: one, class: neutral}, {name: other, class: neutral}]}",
                                "column: {stationary phase: \"" + phase.name() + "\"}",
                                "setting: " + setting.word(),
                                "shelf: [\"" + solvent.name() + "\"]",
                                "strips:",
                                "  - {solvent: \"" + solvent.name() + "\", moves: {one: " + one.word() + ", other: "
                                        + other.word() + "}}")),
                data);
    }

    /** Whether some rule says what the eluent is good for, how the dyes part in it, or which strip to run. */
    private static boolean isJudged(Judgement judgement, Eluent eluent) {
        return judgement.reasons().keySet().stream()
                .anyMatch(conclusion -> conclusion instanceof Conclusion.Holds
                        || conclusion instanceof Conclusion.Sweeps
                        || conclusion instanceof Conclusion.Releases releases
                                && releases.eluent().equals(eluent)
                        || conclusion instanceof Conclusion.RunNext
                        || conclusion instanceof Conclusion.RunNextDye
                        || conclusion instanceof Conclusion.RunNextEluent);
    }

    private static Problem gap(String found, String example) {
        return new Problem(
                WHOLE_BOOK,
                found,
                "a rule for every combination",
                "write a rule, or leave it to the person at the bench; example: " + example,
                RuleTrouble.NOT_JUDGED.code(),
                "");
    }
}
