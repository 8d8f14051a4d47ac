package org.wickwise.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wickwise.Shipped;
import org.wickwise.text.Problem;
import org.wickwise.text.ProblemsFound;

/** A run as people write it, and what a slip in it gets. */
class RunReaderTest {

    private static final String CASE =
            """
            date: 2026-11-26
            mixture: {dyes: [red, blue]}
            column: {stationary phase: silica}
            setting: college
            """;

    @Test
    void a_run_is_read_with_its_fractions_end_to_end() {
        ColumnRun run = EntryReader.parse(
                        "run.yaml",
                        CASE
                                + """
                                run:
                                  poured: [{eluent: EtOAc, mL: 40}]
                                  load: {mL: 1, absorbance: {red: 0.5}, diluted: 50}
                                  fractions:
                                    - {mL: 10, colour: clear}
                                    - {mL: 5, absorbance: {red: 0.4, blue: 0}}
                                    - mL: 6
                                      dyes: [red]
                                      strip: {solvent: ethanol, front mm: 70, travel mm: {blue: 20}, not seen: [red]}
                                  pools: [{fractions: [2, 3], dry mg: 4}]
                                  still on the bed: [blue]
                                  went wrong: [bed cracked, ran dry]
                                """,
                        Shipped.data())
                .run()
                .orElseThrow();
        assertThat(run.poured().get(0).eluent().name()).isEqualTo("ethyl acetate");
        assertThat(run.fractions()).extracting(Fraction::fromMillilitres).containsExactly(0.0, 10.0, 15.0);
        assertThat(run.collectedMillilitres()).isEqualTo(21);
        assertThat(run.fractions().get(1).seen()).hasToString("[red]");
        assertThat(run.fractions().get(2).shows(run.stuck().iterator().next()))
                .as("the strip shows blue")
                .isTrue();
        assertThat(run.wentWrong()).containsExactly(RunMishap.BED_CRACKED, RunMishap.RAN_DRY);
        assertThat(run.load()
                        .orElseThrow()
                        .absorbed(run.fractions().get(1).seen().iterator().next()))
                .hasValue(25);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{poured: [], fractions: [{mL: 5}]} | does not say what was poured | write a line such as",
                "{poured: [{eluent: ethanol, mL: 5}]} | the run has no fraction | the clear ones too",
                "{poured: [{eluent: etanol, mL: 5}], fractions: [{mL: 5}]} | etanol | did you mean",
                "{poured: [{eluent: ethanol}], fractions: [{mL: 5}]} | a pour has no `mL` | add the key",
                "{poured: [{eluent: ethanol, mL: 5}], fractions: [{mL: 0}]} | the volume of a fraction is 0 mL | leave the line out",
                "{poured: [{eluent: ethanol, mL: 5}], fractions: [{mL: -5}]} | is -5 mL | measure again",
                "{poured: [{eluent: ethanol, mL: 5}], fractions: [{mL: 5, dyes: [rad]}]} | no dye `rad` | did you mean",
                "{poured: [{eluent: ethanol, mL: 5}], fractions: [{mL: 5, absorbance: {red: 7}}]} | the absorbance of red is 7 | dilute it",
                "{poured: [{eluent: ethanol, mL: 5}], fractions: [{mL: 5, absorbance: {red: -0.1}}]} | is -0.1 | set the photometer to zero",
                "{poured: [{eluent: ethanol, mL: 5}], fractions: [{mL: 5, dyes: [blue], absorbance: {red: 0.1}}]} | which does not stand under its `dyes` | add it",
                "{poured: [{eluent: ethanol, mL: 5}], fractions: [{mL: 5, diluted: 0.1}]} | the dilution is 0.1 times | made up to 10 mL",
                "{poured: [{eluent: ethanol, mL: 5}], fractions: [{mL: 5}], pools: [{fractions: [2], dry mg: 1}]} | the run has no fraction 2 | count the fractions",
                "{poured: [{eluent: ethanol, mL: 5}], fractions: [{mL: 5}], pools: [{fractions: [1], dry mg: 1}, {fractions: [1], dry mg: 2}]} | fraction 1 was weighed twice | put both pools together",
                "{poured: [{eluent: ethanol, mL: 5}], fractions: [{mL: 5}], went wrong: [bed craked]} | no known mishap of a column | did you mean `bed cracked`?",
                "{poured: [{eluent: ethanol, mL: 5}], fractions: [{mL: 5}], went wrong: [lights out]} | no known mishap of a column | tell it in your own words under `note`",
                "{poured: [{eluent: ethanol, mL: 5}], fractions: [{mL: 5}], load: {mL: 1}} | a load has no `absorbance` | add the key",
                "[heptane] | a run is a list | write `key: value` lines",
                "{poured: [{eluent: ethanol, mL: 5}], fractions: [{mL: 5, color: red}]} | `color` is not a key of a fraction | did you mean"
            })
    void a_slip_in_a_run_is_located_and_explained(String run, String found, String wayOut) {
        ProblemsFound problems = catchThrowableOfType(
                ProblemsFound.class, () -> EntryReader.parse("run.yaml", CASE + "run: " + run + "\n", Shipped.data()));
        assertThat(problems).as("refused: %s", run).isNotNull();
        Problem first = problems.problems().get(0);
        assertThat(first.place().toString()).isEqualTo("run.yaml:5");
        assertThat(first.found()).contains(found);
        assertThat(first.wayOut()).contains(wayOut);
    }

    @Test
    void a_run_without_a_column_is_refused() {
        ProblemsFound problems = catchThrowableOfType(
                ProblemsFound.class,
                () -> EntryReader.parse(
                        "run.yaml",
                        "date: 2026-11-26\nmixture: {dyes: [red, blue]}\nstrips on: silica\nrun: {poured: []}\n",
                        Shipped.data()));
        assertThat(problems.problems().get(0).found()).isEqualTo("there is a run, and no column it was run on");
    }
}
