package org.wickwise.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.wickwise.report.LadderPicture;
import org.wickwise.report.ShelfText;
import org.wickwise.substance.Shelf;
import org.wickwise.substance.ShelfLadder;
import org.wickwise.substance.ShelfReader;
import org.wickwise.substance.Solvent;
import org.wickwise.substance.SolventData;
import org.wickwise.substance.SolventDataReader;
import org.wickwise.substance.StationaryPhase;
import org.wickwise.text.NearMiss;
import org.wickwise.text.Place;
import org.wickwise.text.Problem;
import org.wickwise.text.ProblemsFound;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Shows a shelf as a ladder of strength, or one solvent with every value and source. */
@Command(
        name = "shelf",
        mixinStandardHelpOptions = true,
        description = "Shows a shelf as a ladder for a stationary phase, or one solvent with every value and source.",
        footer = {
            "",
            "Without --of the shelf is the whole solvent table. A shelf file lists bottles,",
            "what is in them, how much is left, which are banned and why; it may build on",
            "another shelf and put its own values in the table's place.",
            "",
            "  wickwise shelf --for PHASE",
            "  wickwise shelf --for PHASE --of my-shelf.yaml --as svg > ladder.svg",
            "  wickwise shelf SOLVENT"
        })
final class ShelfCommand implements Callable<Integer> {

    /** How a ladder can be shown. */
    enum Shape {
        TEXT,
        SVG;

        @Override
        public String toString() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    @Parameters(arity = "0..1", paramLabel = "SOLVENT", description = "show this solvent with every value and source")
    private Optional<String> solvent;

    @Option(names = "--for", paramLabel = "PHASE", description = "the stationary phase to rank for")
    private Optional<String> phase;

    @Option(names = "--of", paramLabel = "SHELF", description = "a shelf file (default: the whole table)")
    private Optional<Path> shelfFile;

    @Option(
            names = "--as",
            paramLabel = "SHAPE",
            defaultValue = "text",
            description = "the shape of the ladder: ${COMPLETION-CANDIDATES} (default: text)")
    private Shape shape;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        SolventData table = SolventDataReader.read(Workbench.home().resolve("solvent-data"));
        Shelf shelf = shelfFile
                .map(file -> ShelfReader.read(file, table))
                .orElseGet(() -> Shelf.wholeTable(table, Place.wholeFile("solvent-data")));
        SolventData data = table.with(shelf.ownValues());
        if (solvent.isPresent()) {
            return print(values(solvent.get(), data));
        }
        StationaryPhase ranked = phase(data);
        return shape == Shape.SVG ? picture(shelf, ranked, data) : print(inWords(shelf, ranked, data));
    }

    private int print(String answer) {
        spec.commandLine().getOut().print(answer);
        spec.commandLine().getOut().flush();
        return ExitCodes.PLANNED;
    }

    private static String values(String name, SolventData data) {
        Solvent found = data.solvent(name)
                .orElseThrow(() -> isFile(name)
                        ? file(name)
                        : unknown(
                                "SOLVENT",
                                name,
                                data.solventNames(),
                                data.solvents().stream().map(Solvent::name).toList()));
        return ShelfText.of(found, data, Terminal.heading());
    }

    private StationaryPhase phase(SolventData data) {
        List<String> phases = data.stationaryPhaseNames();
        String name = phase.orElseThrow(() -> unknown("--for", "", phases, phases));
        return data.stationaryPhase(name).orElseThrow(() -> unknown("--for", name, phases, phases));
    }

    private static String inWords(Shelf shelf, StationaryPhase phase, SolventData data) {
        String ladder = phase.ladder().isEmpty()
                ? ""
                : ShelfText.of(ShelfLadder.of(shelf, phase, data.otherScales()), data, Terminal.heading());
        return ladder + ShelfText.of(phase, Terminal.heading());
    }

    private int picture(Shelf shelf, StationaryPhase phase, SolventData data) {
        if (phase.ladder().isPresent()) {
            return print(LadderPicture.of(ShelfLadder.of(shelf, phase, data.otherScales()), data));
        }
        spec.commandLine()
                .getErr()
                .println("--as svg: no ladder can be drawn, because no table ranks solvents on " + phase.name()
                        + "; only strips tell\n    leave `--as svg` out to read how it holds dyes");
        return ExitCodes.REFUSED;
    }

    private static boolean isFile(String name) {
        return name.endsWith(".yaml") || name.endsWith(".yml") || Files.exists(Workbench.named(Path.of(name)));
    }

    private static ProblemsFound file(String name) {
        return new ProblemsFound(List.of(new Problem(
                Place.wholeFile("SOLVENT"),
                "`" + name + "` is a file",
                "the name of a solvent",
                "a shelf is named with --of, as in `shelf --of " + name + " --for PHASE`")));
    }

    private static ProblemsFound unknown(String option, String word, List<String> known, List<String> shown) {
        String found = word.isEmpty() ? "nothing is said for it" : "`" + word + "` is not known here";
        return new ProblemsFound(List.of(new Problem(
                Place.wholeFile(option),
                found,
                "one of " + String.join(", ", shown),
                word.isEmpty()
                        ? "choose one, such as " + option + " " + shown.get(0)
                        : NearMiss.suggestion(word, known, List.of()))));
    }
}
