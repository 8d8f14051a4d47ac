package org.wickwise.why;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wickwise.Shipped;
import org.wickwise.rulebook.Judgement;
import org.wickwise.why.Subject.OfPair;

/** What the words of a question may mean. */
class SubjectsTest {

    @Test
    void pairs_are_named_in_the_order_in_which_the_words_can_be_parted(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("case.yaml");
        Files.writeString(
                file,
                """
                title: Dyes whose names run into one another (invented)
                mixture:
                  dyes: [{name: ash}, {name: bay and cork and dun}, {name: ash and bay}, {name: cork and dun},
                    {name: ash and bay and cork}, {name: dun}]
                column: {stationary phase: silica}
                setting: college
                shelf: [heptane]
                strips:
                  - {solvent: heptane, moves: {ash: stays, bay and cork and dun: stays, ash and bay: stays,
                      cork and dun: stays, ash and bay and cork: stays, dun: stays}}
                """);
        Judgement judgement = Shipped.bench().judge().judge(Shipped.caseIn(file));
        List<Subject> named = new Subjects(judgement, Shipped.data()).named("ash and bay and cork and dun");
        assertThat(named)
                .extracting(subject -> ((OfPair) subject).one() + " / " + ((OfPair) subject).other())
                .containsExactly(
                        "ash / bay and cork and dun", "ash and bay / cork and dun", "ash and bay and cork / dun");
    }
}
