package org.wickwise.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.wickwise.Shipped;

/** The command that draws: what it prints, and what it says where there is nothing to draw. */
class DrawTest {

    @Test
    void itPrintsThePicturesThatTheDocumentsShow() throws IOException {
        for (String picture : new String[] {"strips", "profile"}) {
            CommandLineRun run = CommandLineRun.of("draw", Shipped.DEMO.toString(), picture);
            assertThat(run.code()).isEqualTo(ExitCodes.PLANNED);
            assertThat(run.out()).isEqualTo(Files.readString(Path.of("docs/ferry-ink-" + picture + ".svg")));
        }
    }

    @Test
    void aRefusalHasNoProfileButAMessageWithTheWayOut() {
        String file =
                Shipped.PUBLISHED.resolve("d15-six-dyes-salt-water-paper.yaml").toString();
        CommandLineRun run = CommandLineRun.of("draw", file, "profile");
        assertThat(run.code()).isEqualTo(ExitCodes.REFUSED);
        assertThat(run.out()).isEmpty();
        assertThat(run.err())
                .contains("no plan is sound: Blue 2 comes off in no eluent that may enter this column")
                .contains("which strip to run next");
        assertThat(CommandLineRun.of("draw", file, "strips").out()).startsWith("<svg");
    }

    @Test
    void aPlanByEyeHasNoProfileAndTheMessageNamesTheStripsToMeasure() {
        String file = Shipped.PUBLISHED.resolve("d03-grape-drink-c18.yaml").toString();
        CommandLineRun run = CommandLineRun.of("draw", file, "profile");
        assertThat(run.code()).isEqualTo(ExitCodes.REFUSED);
        assertThat(run.out()).isEmpty();
        assertThat(run.err())
                .contains("no dye was measured in every eluent")
                .contains("run strips in water + methanol 7:3 and methanol", "`travel mm` of every dye");
    }

    @Test
    void anUnknownPictureNamesTheKnownOnes() {
        CommandLineRun run = CommandLineRun.of("draw", Shipped.DEMO.toString(), "colunm");
        assertThat(run.code()).isEqualTo(ExitCodes.BAD_INPUT);
        assertThat(run.err()).startsWith("PICTURE is `colunm`; expected one of strips, profile, run");
    }
}
