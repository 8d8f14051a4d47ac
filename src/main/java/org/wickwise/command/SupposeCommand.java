package org.wickwise.command;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.wickwise.plan.Plan;
import org.wickwise.plan.PlanLine;
import org.wickwise.why.Comparison;
import org.wickwise.why.Supposition;
import org.wickwise.why.SuppositionReader;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says what would be different if something were otherwise. */
@Command(
        name = "suppose",
        mixinStandardHelpOptions = true,
        description = "Says what would be different if something were otherwise. No file is touched.",
        footer = {
            "",
            "Each CHANGE is a short sentence in quotes:",
            "",
            "  \"DYE in SOLVENT at 30 mm\"        \"DYE in SOLVENT at Rf 0.4\"",
            "  \"DYE stays in SOLVENT\"           \"without the strip in SOLVENT\"",
            "  \"a strip in SOLVENT: DYE at Rf 0.4, DYE stays\"",
            "  \"without the bottle SOLVENT\"     \"with the bottle SOLVENT\"",
            "  \"the column is PHASE\"            \"the setting is secondary school\"",
            "  \"the parting gap is 0.15\""
        })
final class SupposeCommand implements Callable<Integer> {

    @Mixin
    private CaseAsked asked;

    @Parameters(index = "1..*", arity = "1..*", paramLabel = "CHANGE", description = "what is supposed, in quotes")
    private List<String> changes;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        Desk desk = asked.desk();
        Supposition supposition = SuppositionReader.read(
                changes, desk.written(), desk.judge().rulebook().limits(), desk.data());
        Plan after = desk.planner().plan(desk.judge().judge(supposition.supposed(), supposition.limits()));
        List<PlanLine> lines = Comparison.of(desk.plan(), after, desk.judge().objections(after.judgement()));
        String title = "Suppose: " + String.join("; ", changes);
        return asked.answered(title, lines, Optional.empty(), spec);
    }
}
