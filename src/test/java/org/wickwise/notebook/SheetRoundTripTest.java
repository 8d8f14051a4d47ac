package org.wickwise.notebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.wickwise.Shipped;
import org.wickwise.bench.Case;
import org.wickwise.strip.Behaviour;
import org.wickwise.strip.Mishap;
import org.wickwise.strip.Spot;
import org.wickwise.strip.Strip;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Place;

/** Whatever strips are written as a table, the same strips are read back. */
class SheetRoundTripTest {

    private static final Case DEMO = Shipped.caseIn(Shipped.DEMO);
    private static final Place PLACE = new Place("test", 1);
    private static final List<Eluent> ELUENTS =
            DEMO.strips().stream().map(Strip::eluent).distinct().toList();

    @Property(tries = 100)
    void any_table_that_is_written_is_read_back_the_same(@ForAll("classes") Map<String, List<Strip>> written)
            throws IOException {
        Path file = Files.createTempFile("table", ".csv");
        try {
            Set<String> spots = written.values().stream()
                    .flatMap(List::stream)
                    .flatMap(strip -> strip.spots().stream())
                    .map(SheetWriter::spotOf)
                    .collect(Collectors.toCollection(TreeSet::new));
            try (BufferedWriter out = Files.newBufferedWriter(file)) {
                SheetWriter table = SheetWriter.begun(out, DEMO.dyes(), spots);
                for (Map.Entry<String, List<Strip>> group : written.entrySet()) {
                    for (Strip strip : group.getValue()) {
                        table.write(group.getKey(), strip);
                    }
                }
            }
            ClassSheet sheet = ClassSheet.read(file, DEMO.dyes());
            SheetStrips strips = new SheetStrips(sheet, DEMO, DEMO.column().phase(), Shipped.data());
            assertThat(sheet.leftOut()).isEmpty();
            assertThat(sheet.groups()).containsExactlyInAnyOrderElementsOf(written.keySet());
            written.forEach((group, those) -> {
                SheetStrips.OfGroup read = strips.of(group);
                assertThat(read.leftOut()).isEmpty();
                assertThat(read.strips().stream().map(SheetRoundTripTest::said).toList())
                        .isEqualTo(those.stream().map(SheetRoundTripTest::said).toList());
            });
        } finally {
            Files.delete(file);
        }
    }

    /** All of a strip but where it was written down. */
    private static String said(Strip strip) {
        return List.of(
                        strip.eluent().name(),
                        strip.phase().name(),
                        strip.replicate(),
                        strip.frontMillimetres(),
                        strip.rulerDivisionMillimetres(),
                        strip.spots().stream()
                                .map(spot -> spot.dyes() + " " + spot.position())
                                .toList(),
                        new TreeSet<>(strip.mishaps()),
                        new TreeSet<>(strip.streaked()),
                        new TreeSet<>(strip.atTheEdge()),
                        new TreeSet<>(strip.notSeen()))
                .toString();
    }

    @Provide
    Arbitrary<Map<String, List<Strip>>> classes() {
        Arbitrary<String> names = Arbitraries.strings()
                .withChars("aZ9 ,;\"'=+-@\u00fc\n\t.")
                .ofMinLength(1)
                .ofMaxLength(8)
                .map(name -> name.replaceAll("\\s+", " ").strip())
                .filter(name -> !name.isEmpty() && !name.startsWith("'"));
        return Arbitraries.maps(names, strips())
                .ofMinSize(1)
                .ofMaxSize(4)
                .filter(groups -> groups.keySet().stream()
                                .map(String::toLowerCase)
                                .distinct()
                                .count()
                        == groups.size())
                .map(LinkedHashMap::new);
    }

    private static Arbitrary<List<Strip>> strips() {
        return strip().list().ofMinSize(1).ofMaxSize(5).map(strips -> {
            List<Strip> numbered = new ArrayList<>();
            strips.forEach(strip -> numbered.add(strip.numbered(numbered.size() + 1)));
            return numbered;
        });
    }

    private static Arbitrary<Strip> strip() {
        Arbitrary<List<Spot.Position>> positions = Arbitraries.oneOf(
                        Arbitraries.doubles().between(0, 50).ofScale(3).<Spot.Position>map(Spot.Travelled::new),
                        Arbitraries.doubles().between(0, 1).ofScale(4).<Spot.Position>map(Spot.Quoted::new),
                        Arbitraries.of(Behaviour.values()).<Spot.Position>map(Spot.Seen::new))
                .list()
                .ofSize(DEMO.dyes().size());
        Arbitrary<Set<Mishap>> mishaps = Arbitraries.of(Mishap.values()).set().ofMaxSize(2);
        Arbitrary<Set<Dye>> some = Arbitraries.of(DEMO.dyes()).set().ofMaxSize(2);
        Arbitrary<Double> fronts = Arbitraries.doubles().between(50, 120).ofScale(2);
        Arbitrary<Boolean> shared = Arbitraries.of(true, false);
        return Combinators.combine(Arbitraries.of(ELUENTS), fronts, positions, mishaps, some, some, some, shared)
                .as(SheetRoundTripTest::strip);
    }

    private static Strip strip(
            Eluent eluent,
            double front,
            List<Spot.Position> positions,
            Set<Mishap> mishaps,
            Set<Dye> streaked,
            Set<Dye> atTheEdge,
            Set<Dye> notSeen,
            boolean shared) {
        List<Dye> seen =
                DEMO.dyes().stream().filter(dye -> !notSeen.contains(dye)).toList();
        List<Spot> spots = new ArrayList<>();
        if (shared && seen.size() > 1) {
            spots.add(new Spot(seen.subList(0, 2), positions.get(0), PLACE));
            seen.stream().skip(2).forEach(dye -> spots.add(new Spot(List.of(dye), positions.get(2), PLACE)));
        } else {
            for (int i = 0; i < seen.size(); i++) {
                spots.add(new Spot(List.of(seen.get(i)), positions.get(i), PLACE));
            }
        }
        spots.sort(Comparator.comparing(spot -> spot.dyes().get(0)));
        return new Strip(
                eluent,
                DEMO.column().phase(),
                1,
                OptionalDouble.of(front),
                OptionalDouble.of(0.5),
                List.copyOf(spots),
                List.of(),
                mishaps,
                streaked,
                atTheEdge,
                notSeen,
                PLACE);
    }
}
