package org.wickwise;

import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;
import com.tngtech.archunit.library.Architectures.LayeredArchitecture;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The rooms of the program, from the ground up: a room may use those before it, never those after it. */
class RoomsTest {

    private static final List<String> ROOMS = List.of(
            "text",
            "reason",
            "substance",
            "strip",
            "column",
            "bench",
            "notebook",
            "rulebook",
            "plan",
            "why",
            "lesson",
            "report",
            "command");

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("org.wickwise");

    @Test
    void roomsDependDownwardsOnly() {
        LayeredArchitecture rooms = layeredArchitecture().consideringOnlyDependenciesInLayers();
        for (String room : ROOMS) {
            rooms = rooms.layer(room).definedBy("org.wickwise." + room);
        }
        for (int i = 0; i < ROOMS.size() - 1; i++) {
            rooms = rooms.whereLayer(ROOMS.get(i))
                    .mayOnlyBeAccessedByLayers(
                            ROOMS.subList(i + 1, ROOMS.size()).toArray(String[]::new));
        }
        rooms.because("a chemist's rule must not depend on how a report is printed")
                .check(CLASSES);
    }

    @Test
    void onlyTheRulebookKnowsTheRuleEngine() {
        ArchRuleDefinition.noClasses()
                .that()
                .resideOutsideOfPackage("org.wickwise.rulebook")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.kie..", "org.drools..")
                .because("the engine can be exchanged without touching chemistry or reports")
                .check(CLASSES);
    }

    @Test
    void everyClassLivesInARoom() {
        ArchRuleDefinition.classes()
                .should()
                .resideInAnyPackage(
                        Stream.concat(Stream.of("org.wickwise"), ROOMS.stream().map(room -> "org.wickwise." + room))
                                .toArray(String[]::new))
                .check(CLASSES);
    }

    @Test
    void noSolventDyeOrStationaryPhaseIsNamedInTheProgram() throws IOException {
        List<String> names = new ArrayList<>(Shipped.data().solventNames());
        names.addAll(Shipped.data().stationaryPhaseNames());
        Shipped.data().stationaryPhases().forEach(phase -> names.addAll(phase.also()));
        names.addAll(List.of("methylene blue", "fluorescein", "straw", "harbour blue"));
        List<String> found = new ArrayList<>();
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            for (Path file :
                    files.filter(path -> path.toString().endsWith(".java")).toList()) {
                String text = Files.readString(file).toLowerCase(Locale.ROOT);
                for (String name : names) {
                    Pattern word = Pattern.compile("(?<![\\p{L}\\p{N}])" + Pattern.quote(name.toLowerCase(Locale.ROOT))
                            + "(?![\\p{L}\\p{N}])");
                    if (word.matcher(text).find()) {
                        found.add(file.getFileName() + " names " + name);
                    }
                }
            }
        }
        assertThat(found).isEmpty();
    }
}
