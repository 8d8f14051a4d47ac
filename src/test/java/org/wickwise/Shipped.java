package org.wickwise;

import java.nio.file.Path;
import org.wickwise.bench.Case;
import org.wickwise.bench.CaseReader;
import org.wickwise.command.Workbench;
import org.wickwise.plan.Plan;
import org.wickwise.substance.SolventData;

/** The shipped rules and solvent data, laid out once for all tests. */
public final class Shipped {

    public static final Path HOME = Path.of("");
    public static final Path PUBLISHED = Path.of("src/test/resources/published");
    public static final Path DEMO = Path.of("docs/examples/ferry-ink.yaml");

    private Shipped() {}

    private static final class Laid {
        private static final Workbench BENCH = Workbench.in(HOME);
    }

    public static Workbench bench() {
        return Laid.BENCH;
    }

    public static SolventData data() {
        return bench().data();
    }

    public static Case caseIn(Path file) {
        return CaseReader.read(file, data());
    }

    public static Plan planOf(Path file) {
        return bench().plan(caseIn(file));
    }
}
