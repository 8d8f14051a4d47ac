package org.wickwise.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * The museum of broken case files, one mistake each. The head of a file says what the message must tell: {@code # line:
 * 9} the line it points at (0 for the whole file), {@code # says: ...} a telling fragment, {@code # problems: 2} how many
 * problems there are where it is not one.
 */
class BrokenFilesTest {

    private static final Path MUSEUM = Path.of("src/test/resources/broken");
    private static final Path SHELVES = Path.of("src/test/resources/broken-shelves");

    @TestFactory
    Stream<DynamicTest> everyBrokenFileGetsALocatedMessageWithAWayOut() throws IOException {
        try (Stream<Path> files = Files.list(MUSEUM)) {
            List<Path> sorted = files.sorted().toList();
            return sorted.stream()
                    .map(file -> DynamicTest.dynamicTest(file.getFileName().toString(), () -> messageOf(file)));
        }
    }

    @TestFactory
    Stream<DynamicTest> everyBrokenShelfGetsALocatedMessageWithAWayOut() throws IOException {
        try (Stream<Path> files = Files.list(SHELVES)) {
            List<Path> sorted = files.sorted().toList();
            return sorted.stream()
                    .map(file -> DynamicTest.dynamicTest(
                            file.getFileName().toString(),
                            () -> messageOf(file, "shelf", "--for", "silica", "--of", file.toString())));
        }
    }

    private static void messageOf(Path file) throws IOException {
        messageOf(file, "plan", file.toString());
    }

    private static void messageOf(Path file, String... arguments) throws IOException {
        CommandLineRun run = CommandLineRun.of(arguments);
        SoftAssertions softly = new SoftAssertions();
        softly.assertThat(run.code()).isEqualTo(ExitCodes.BAD_INPUT);
        softly.assertThat(run.out()).isEmpty();
        softly.assertThat(run.err()).doesNotContain("Exception", "\tat ");
        String problems = "1";
        for (String line : Files.readAllLines(file)) {
            if (line.startsWith("# line: ")) {
                String number = line.substring("# line: ".length());
                String place = file + (number.equals("0") ? "" : ":" + number) + ": ";
                softly.assertThat(run.err()).contains(place);
            } else if (line.startsWith("# says: ")) {
                softly.assertThat(run.err()).contains(line.substring("# says: ".length()));
            } else if (line.startsWith("# problems: ")) {
                problems = line.substring("# problems: ".length());
            }
        }
        softly.assertThat(run.err()).containsPattern("(?m)^" + problems + " problems?; nothing was done\\.$");
        softly.assertAll();
    }

    @Test
    void aMissingFileIsNamed() {
        CommandLineRun run = CommandLineRun.of("plan", "no-such-case.yaml");
        assertThat(run.code()).isEqualTo(ExitCodes.BAD_INPUT);
        assertThat(run.err()).contains("no-such-case.yaml: there is no such file", "check the spelling");
    }

    @Test
    void aFolderIsNoCase(@TempDir Path folder) {
        CommandLineRun run = CommandLineRun.of("plan", folder.toString());
        assertThat(run.code()).isEqualTo(ExitCodes.BAD_INPUT);
        assertThat(run.err()).contains("this is not a file");
    }

    @Test
    void fiftyMegabytesAreRefusedBeforeTheyAreRead(@TempDir Path folder) throws IOException {
        Path large = folder.resolve("large.yaml");
        Files.write(large, new byte[50_000_000]);
        CommandLineRun run = CommandLineRun.of("plan", large.toString());
        assertThat(run.code()).isEqualTo(ExitCodes.BAD_INPUT);
        assertThat(run.err()).contains("the file has 50000000 bytes", "at most 1000000 bytes");
    }

    @Test
    void aFileThatIsNotTextIsRefused(@TempDir Path folder) throws IOException {
        Path odd = folder.resolve("odd.yaml");
        Files.write(odd, new byte[] {'t', ':', ' ', (byte) 0xC3, (byte) 0x28});
        CommandLineRun run = CommandLineRun.of("plan", odd.toString());
        assertThat(run.code()).isEqualTo(ExitCodes.BAD_INPUT);
        assertThat(run.err()).contains("not UTF-8 text");
    }
}
