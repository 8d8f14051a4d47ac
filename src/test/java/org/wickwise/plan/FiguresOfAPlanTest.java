package org.wickwise.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wickwise.Shipped;
import org.wickwise.column.Band;

/** What a plan says of volumes, purity and recovery follows from what is known, and from what is not. Invented cases. */
class FiguresOfAPlanTest {

    private static final String LOAD = "  load mL: 3\n";
    private static final String PAIR =
            """
            title: gate paint (invented)
            mixture:
              name: gate paint
              load mL: 3
              dyes: [{name: moss, class: neutral}, {name: brick, class: neutral}]
            column:
              stationary phase: silica
              bore mm: 10
              bed mm: 100
            setting: college
            shelf: [ethyl acetate]
            strips:
              - {solvent: ethyl acetate, front mm: 80, travel mm: {moss: 44, brick: 20}}
            """;

    @TempDir
    private Path folder;

    @Test
    void a_load_that_moves_at_once_widens_the_bands_and_brings_them_sooner() throws IOException {
        Plan wide = plan(PAIR);
        Plan thin = plan(PAIR.replace(LOAD, ""));
        double load = 3 / wide.judged().column().columnVolumeMillilitres().orElseThrow();
        for (Band band : thin.elution().orElseThrow().bands().values()) {
            Band widened = wide.elution().orElseThrow().bands().values().stream()
                    .filter(other -> Math.abs(other.middleMillilitres() - band.middleMillilitres()) < load)
                    .findFirst()
                    .orElseThrow();
            assertThat(widened.middleMillilitres()).isCloseTo(band.middleMillilitres() - load / 2, within(1e-9));
            assertThat(widened.sigmaMillilitres())
                    .isCloseTo(Math.sqrt(Math.pow(band.sigmaMillilitres(), 2) + load * load / 12), within(1e-9));
        }
        assertThat(text(wide, "load-volume"))
                .contains("which widens the bands, and the figures of this plan count that");
    }

    private Plan plan(String text) throws IOException {
        return Shipped.planOf(Files.writeString(folder.resolve("case.yaml"), text));
    }

    private static String text(Plan plan, String label) {
        return plan.line(label).orElseThrow().text();
    }
}
