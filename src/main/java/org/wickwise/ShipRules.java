package org.wickwise;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.wickwise.rulebook.Judge;
import org.wickwise.rulebook.Rulebook;
import org.wickwise.substance.SolventData;
import org.wickwise.substance.SolventDataReader;

/** Compiles the shipped rules when the program is packaged, so that nobody waits for it at a first start. */
public final class ShipRules {

    private ShipRules() {}

    /** @param arguments the folder with {@code rules} and {@code solvent-data}; the jar to be written */
    public static void main(String[] arguments) throws IOException {
        Path home = Path.of(arguments[0]);
        SolventData data = SolventDataReader.read(home.resolve("solvent-data"));
        Files.write(Path.of(arguments[1]), Judge.compiled(Rulebook.read(home.resolve("rules"), data)));
    }
}
