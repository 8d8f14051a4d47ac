package org.wickwise.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.wickwise.report.Heading;
import org.wickwise.report.TableText;
import org.wickwise.substance.KnownDisagreements;
import org.wickwise.substance.SolventData;
import org.wickwise.substance.SolventDataReader;
import org.wickwise.substance.TableCheck;
import org.wickwise.substance.TableCheck.Disagreement;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Checks the solvent table against itself. */
@Command(
        name = "table",
        mixinStandardHelpOptions = true,
        description = "Checks the solvent table against itself: values that physics or a standard tie together.",
        footer = {
            "",
            "It lists every disagreement with its explanation, and where the scales of",
            "strength order solvents differently. A disagreement that nobody has explained",
            "ends with exit code 2."
        })
final class TableCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        Path folder = Workbench.home().resolve("solvent-data");
        SolventData data = SolventDataReader.read(folder);
        KnownDisagreements known = KnownDisagreements.read(folder);
        List<Disagreement> found = TableCheck.of(data, known.tolerances());
        Heading heading = Terminal.heading();
        spec.commandLine().getOut().print(TableText.of(data, found, known, heading));
        spec.commandLine().getOut().flush();
        boolean unexplained = found.stream().map(known::explanationOf).anyMatch(Optional::isEmpty);
        return unexplained ? ExitCodes.BAD_INPUT : ExitCodes.PLANNED;
    }
}
