package org.wickwise.notebook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.wickwise.bench.Case;
import org.wickwise.notebook.DyeOutcome.Bound;
import org.wickwise.strip.RetardationFactor;
import org.wickwise.strip.Spot;
import org.wickwise.strip.Strip;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.StationaryPhase;
import org.wickwise.text.Place;

/**
 * What earlier strips showed of each dye in each eluent on each stationary phase. Only strips on which nothing went wrong
 * are remembered, and of them only spots that did not streak.
 */
public final class Memory {

    private final Map<Key, List<RememberedSpot>> spots = new TreeMap<>();
    private final Map<String, Eluent> eluents = new TreeMap<>();

    private record Key(String dye, String eluent, String phase) implements Comparable<Key> {

        private static final Comparator<Key> ORDER =
                Comparator.comparing(Key::eluent).thenComparing(Key::phase).thenComparing(Key::dye);

        @Override
        public int compareTo(Key other) {
            return ORDER.compare(this, other);
        }

        static Key of(Dye dye, Eluent eluent, StationaryPhase phase) {
            return new Key(dye.name().toLowerCase(Locale.ROOT), eluent.name(), phase.name());
        }
    }

    /**
     * Where one spot lay, or where a strip would have shown what a column did.
     *
     * @param how what is to be known of it beside its place; empty for a spot of its own on a strip
     */
    record RememberedSpot(LocalDate date, String mixture, double retardationFactor, String how, Place place) {}

    private final Scatter usual;

    private Memory(Scatter usual) {
        this.usual = usual;
    }

    /**
     * @param entries of a notebook, in any order
     * @param usual how far strips scatter
     * @param runs how surely the things of a finished column are known
     */
    public static Memory of(List<Entry> entries, Scatter usual, RunTolerances runs) {
        Memory memory = new Memory(usual);
        for (Entry entry : entries) {
            memory.keep(entry);
            if (entry.run().isPresent() && entry.column().isPresent()) {
                memory.keepColumn(entry, entry.column().get(), runs);
            }
        }
        memory.spots
                .values()
                .forEach(several ->
                        several.sort(Comparator.comparing(RememberedSpot::date).thenComparing(RememberedSpot::place)));
        return memory;
    }

    private void keep(Entry entry) {
        for (Strip strip : entry.strips().strips()) {
            if (!strip.mishaps().isEmpty()) {
                continue;
            }
            eluents.putIfAbsent(strip.eluent().name(), strip.eluent());
            for (Spot spot : strip.spots()) {
                OptionalDouble where = retardationFactor(spot, strip);
                spot.dyes().stream()
                        .filter(dye -> where.isPresent() && isSound(dye, strip))
                        .forEach(dye -> spots.computeIfAbsent(
                                        Key.of(dye, strip.eluent(), strip.phase()), key -> new ArrayList<>())
                                .add(new RememberedSpot(
                                        entry.date(),
                                        entry.strips().mixture(),
                                        where.getAsDouble(),
                                        spot.dyes().size() > 1 ? "sharing its spot" : "",
                                        spot.place())));
            }
        }
    }

    /** k of a dye that left whole, from a run of which nothing went wrong, counts as one strip of that day. */
    private void keepColumn(Entry entry, Case column, RunTolerances runs) {
        RunTeaches taught = RunTeaches.of(RunOutcome.of(
                column, entry.run().orElseThrow(), runs, (dye, eluent) -> onItsStrips(entry, dye, eluent)));
        if (taught.isDoubtful()) {
            return;
        }
        taught.retentions().stream()
                .filter(retention -> retention.bound() == Bound.ABOUT)
                .forEach(retention -> {
                    eluents.putIfAbsent(retention.eluent().name(), retention.eluent());
                    spots.computeIfAbsent(
                                    Key.of(retention.dye(), retention.eluent(), taught.phase()),
                                    key -> new ArrayList<>())
                            .add(new RememberedSpot(
                                    entry.date(),
                                    entry.strips().mixture(),
                                    retention.retardation().value(),
                                    "from k on a finished column",
                                    entry.run().orElseThrow().place()));
                });
    }

    private Optional<RetardationFactor> onItsStrips(Entry entry, Dye dye, Eluent eluent) {
        return entry.strips().strips().stream()
                .filter(strip ->
                        strip.eluent().equals(eluent) && strip.mishaps().isEmpty() && isSound(dye, strip))
                .flatMap(strip -> strip.spotOf(dye).stream()
                        .flatMapToDouble(spot -> retardationFactor(spot, strip).stream())
                        .mapToObj(value -> new RetardationFactor(value, usual.withinAClass())))
                .findFirst();
    }

    private static boolean isSound(Dye dye, Strip strip) {
        return !strip.streaked().contains(dye) && !strip.atTheEdge().contains(dye);
    }

    private static OptionalDouble retardationFactor(Spot spot, Strip strip) {
        if (spot.position() instanceof Spot.Travelled travelled
                && strip.frontMillimetres().isPresent()) {
            return OptionalDouble.of(
                    travelled.millimetres() / strip.frontMillimetres().getAsDouble());
        }
        return spot.position() instanceof Spot.Quoted quoted
                ? OptionalDouble.of(quoted.retardationFactor())
                : OptionalDouble.empty();
    }

    /** The eluents in which something is remembered of at least one of these dyes on this stationary phase, by name. */
    public List<Eluent> eluents(List<Dye> dyes, StationaryPhase phase) {
        Set<String> names = dyes.stream()
                .map(dye -> dye.name().toLowerCase(Locale.ROOT))
                .collect(Collectors.toCollection(TreeSet::new));
        return spots.keySet().stream()
                .filter(key -> names.contains(key.dye()) && key.phase().equals(phase.name()))
                .map(Key::eluent)
                .distinct()
                .map(eluents::get)
                .toList();
    }

    /** What is remembered of a dye there, robustly put together; empty when nothing is. */
    public Optional<Recollection> of(Dye dye, Eluent eluent, StationaryPhase phase) {
        List<RememberedSpot> several = spots.getOrDefault(Key.of(dye, eluent, phase), List.of());
        return several.isEmpty() ? Optional.empty() : Optional.of(Recollection.of(dye, eluent, several, usual));
    }
}
