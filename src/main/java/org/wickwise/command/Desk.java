package org.wickwise.command;

import java.nio.file.Path;
import java.util.Optional;
import org.wickwise.bench.Case;
import org.wickwise.plan.Plan;
import org.wickwise.plan.Planner;
import org.wickwise.rulebook.Judge;
import org.wickwise.substance.SolventData;

/** A case with everything laid out to answer questions about it. */
record Desk(Case written, SolventData data, Judge judge, Planner planner) {

    /**
     * @param ownRules a folder with an instructor's own rules; empty where there is none
     * @throws org.wickwise.text.ProblemsFound when the case, the rules or the solvent data have problems
     */
    static Desk of(Path caseFile, Optional<Path> ownRules) {
        return Workbench.deskFor(caseFile, ownRules);
    }

    Plan plan() {
        return planner.plan(judge.judge(written));
    }
}
