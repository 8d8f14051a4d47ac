package org.wickwise.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wickwise.Shipped;
import org.wickwise.bench.Case;
import org.wickwise.bench.CaseReader;
import org.wickwise.plan.Plan;
import org.wickwise.plan.Planner;
import org.wickwise.report.Heading;
import org.wickwise.report.JsonReport;
import org.wickwise.report.MarkdownReport;
import org.wickwise.report.TextReport;

/** The same case gives the same bytes, whatever the order of strips, facts and rules, and whatever the locale. */
class SameCaseSamePlanTest {

    @Property(tries = 25, shrinking = ShrinkingMode.OFF)
    void theOrderOfStripsAndFactsChangesNoByte(@ForAll Random random) {
        Case written = Shipped.caseIn(Shipped.DEMO);
        Judge judge = Shipped.bench().judge();
        Planner planner = new Planner(judge.rulebook());
        Plan shuffled = planner.plan(
                judge.judge(written.with(shuffled(written.strips(), random)), facts -> shuffled(facts, random)));
        assertThat(everything(shuffled)).isEqualTo(everything(Shipped.bench().plan(written)));
    }

    @Property(tries = 10, shrinking = ShrinkingMode.OFF)
    void theOrderOfFactsChangesNoByteOfAPublishedCase(@ForAll Random random) {
        Case written = Shipped.caseIn(Shipped.PUBLISHED.resolve("d07-four-dyes-silica.yaml"));
        Judge judge = Shipped.bench().judge();
        Plan shuffled = new Planner(judge.rulebook()).plan(judge.judge(written, facts -> shuffled(facts, random)));
        assertThat(everything(shuffled)).isEqualTo(everything(Shipped.bench().plan(written)));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2})
    void theOrderOfRulesChangesNoByte(long seed, @TempDir Path keep) {
        Rulebook shipped = Shipped.bench().judge().rulebook();
        Rulebook shuffled = shipped.inOrder(shuffled(shipped.rules(), new Random(seed)));
        Judge judge = Judge.of(shuffled, Shipped.data(), keep);
        Case written = Shipped.caseIn(Shipped.DEMO);
        assertThat(everything(new Planner(shuffled).plan(judge.judge(written))))
                .isEqualTo(everything(Shipped.bench().plan(written)));
    }

    @Test
    void theOrderOfKeysInTheCaseFileChangesNoPlan() {
        String strips = "strips: [{travel mm: {red: 30, blue: 1}, front mm: 80, solvent: toluene},"
                + " {solvent: ethanol, front mm: 80, travel mm: {red: 70, blue: 40}}]\n";
        String rest = "setting: college\ncolumn: {stationary phase: silica}\n";
        String dyes = "mixture: {dyes: [{name: red, class: neutral}, {class: neutral, name: blue}]}\n";
        Plan one = plan("title: keys\n" + rest + dyes + strips);
        Plan other = plan("title: keys\n" + dyes + rest + strips);
        assertThat(TextReport.of(one, Heading.plain())).isEqualTo(TextReport.of(other, Heading.plain()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"tr-TR", "de-DE", "ar-EG"})
    void theLocaleChangesNoByte(String tag) {
        String usual = everything(Shipped.planOf(Shipped.DEMO));
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag(tag));
            assertThat(everything(Shipped.planOf(Shipped.DEMO))).isEqualTo(usual);
        } finally {
            Locale.setDefault(before);
        }
    }

    private static Plan plan(String yaml) {
        return Shipped.bench().plan(CaseReader.parse("keys.yaml", yaml, Shipped.data()));
    }

    private static String everything(Plan plan) {
        return TextReport.of(plan, Heading.plain()) + MarkdownReport.of(plan) + JsonReport.of(plan);
    }

    private static <T> List<T> shuffled(Collection<T> some, Random random) {
        List<T> shuffled = new ArrayList<>(some);
        Collections.shuffle(shuffled, random);
        return shuffled;
    }
}
