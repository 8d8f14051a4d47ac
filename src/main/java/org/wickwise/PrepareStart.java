package org.wickwise;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.wickwise.rulebook.Judge;
import org.wickwise.rulebook.Rulebook;
import org.wickwise.substance.SolventData;
import org.wickwise.substance.SolventDataReader;
import org.wickwise.text.ReadBefore;

/** Does at packaging what every start would have to do: compiles the shipped rules and reads the shipped YAML files. */
public final class PrepareStart {

    private PrepareStart() {}

    /** @param arguments the folder with {@code rules} and {@code solvent-data}; the folder of the jars */
    public static void main(String[] arguments) throws IOException {
        Path home = Path.of(arguments[0]);
        Path jars = Path.of(arguments[1]);
        Path rules = home.resolve("rules");
        Path solventData = home.resolve("solvent-data");
        SolventData data = SolventDataReader.read(solventData);
        Files.write(jars.resolve("compiled-rules.jar"), Judge.compiled(Rulebook.read(rules, data)));
        try (ZipOutputStream jar = new ZipOutputStream(Files.newOutputStream(jars.resolve("read-files.jar")))) {
            jar.putNextEntry(new ZipEntry(ReadBefore.RESOURCE));
            jar.write(ReadBefore.written(textsIn(rules, solventData)));
        }
    }

    private static List<String> textsIn(Path... folders) throws IOException {
        List<String> texts = new ArrayList<>();
        for (Path folder : folders) {
            for (Path file : filesIn(folder)) {
                texts.add(Files.readString(file));
            }
        }
        return texts;
    }

    private static List<Path> filesIn(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.toString().endsWith(".yaml"))
                    .sorted()
                    .toList();
        }
    }
}
