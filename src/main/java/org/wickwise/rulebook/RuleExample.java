package org.wickwise.rulebook;

import java.util.Optional;
import org.wickwise.bench.Case;
import org.wickwise.notebook.ColumnRun;
import org.wickwise.text.Place;

/**
 * A small case in which a rule fires and one in which it stays silent.
 *
 * @param concludes the statement it then draws, with names
 * @param silent empty for a rule that holds in every case
 */
public record RuleExample(String rule, Situation fires, String concludes, Optional<Situation> silent, Place place) {

    /**
     * What an example lays before the rules.
     *
     * @param run the finished column, where the example tells of one
     */
    public record Situation(Case written, Optional<ColumnRun> run) {

        public Judgement judgedBy(Judge judge) {
            return run.map(found -> judge.judge(written, found)).orElseGet(() -> judge.judge(written));
        }
    }
}
