package org.wickwise;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.wickwise.bench.Case;
import org.wickwise.bench.CaseReader;
import org.wickwise.command.Workbench;
import org.wickwise.plan.Plan;
import org.wickwise.plan.Planner;
import org.wickwise.rulebook.Lessons;
import org.wickwise.rulebook.Rulebook;
import org.wickwise.substance.SolventData;

/** The shipped rules and solvent data, laid out once for all tests. */
public final class Shipped {

    public static final Path HOME = Path.of("");
    public static final Path PUBLISHED = Path.of("docs/published");
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

    public static Rulebook rulebook() {
        return bench().judge().rulebook();
    }

    public static Lessons lessons() {
        return Lessons.read(HOME.resolve("rules"), rulebook(), data());
    }

    public static Planner planner() {
        return new Planner(rulebook());
    }

    /** Every case that is shipped or published. */
    public static List<Path> cases() {
        try (Stream<Path> published = Files.list(PUBLISHED);
                Stream<Path> examples = Files.list(DEMO.getParent())) {
            return Stream.concat(examples, published)
                    .filter(Files::isRegularFile)
                    .filter(file -> file.toString().endsWith(".yaml"))
                    .filter(file -> Stream.of("shelf", "lesson", "class", "run")
                            .noneMatch(kind -> file.toString().endsWith("-" + kind + ".yaml")))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static Case caseIn(Path file) {
        return CaseReader.read(file, data());
    }

    public static Plan planOf(Path file) {
        return bench().plan(caseIn(file));
    }
}
