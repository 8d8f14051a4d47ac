package org.wickwise.notebook;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import org.wickwise.bench.Case;
import org.wickwise.strip.Mishap;
import org.wickwise.strip.Spot;
import org.wickwise.strip.Strip;
import org.wickwise.substance.Dye;
import org.wickwise.substance.DyeClass;
import org.wickwise.text.Node;
import org.wickwise.text.Node.Entry;
import org.wickwise.text.Node.Listing;
import org.wickwise.text.Node.Mapping;
import org.wickwise.text.Node.Scalar;
import org.wickwise.text.Numbers;
import org.wickwise.text.Place;

/** The strips of a case that was read from somewhere else than a case file, as an entry of a notebook has them. */
public final class WrittenStrips {

    private static final int DECIMALS = 3;

    private final Place place;

    private WrittenStrips(Place place) {
        this.place = place;
    }

    /**
     * Title, mixture and strips; neither column nor shelf, which the strips do not need.
     *
     * @param place what problems are told with
     */
    public static Mapping of(Case read, Place place) {
        WrittenStrips written = new WrittenStrips(place);
        return written.mapping(
                written.entry("title", read.title()),
                new Entry(written.scalar("mixture"), written.mixture(read)),
                written.entry("strips on", read.strips().get(0).phase().name()),
                new Entry(
                        written.scalar("strips"),
                        written.listing(
                                read.strips().stream().<Node>map(written::strip).toList())));
    }

    private Mapping mixture(Case read) {
        List<Node> dyes = read.dyes().stream().<Node>map(this::dye).toList();
        return mapping(entry("name", read.mixture()), new Entry(scalar("dyes"), listing(dyes)));
    }

    private Node dye(Dye dye) {
        return dye.dyeClass() == DyeClass.UNSTATED
                ? scalar(dye.name())
                : mapping(
                        entry("name", dye.name()), entry("class", dye.dyeClass().word()));
    }

    private Mapping strip(Strip strip) {
        List<Entry> keys =
                new ArrayList<>(List.of(entry("solvent", strip.eluent().name())));
        if (strip.replicate() > 1) {
            keys.add(entry("replicate", Integer.toString(strip.replicate())));
        }
        strip.frontMillimetres().ifPresent(front -> keys.add(entry("front mm", Numbers.plain(front, DECIMALS))));
        strip.rulerDivisionMillimetres()
                .ifPresent(division -> keys.add(entry("ruler mm", Numbers.plain(division, DECIMALS))));
        spots(strip, keys);
        names("went wrong", strip.mishaps().stream().map(Mishap::word).toList(), keys);
        names("streaked", dyes(strip.streaked()), keys);
        names("touched the edge", dyes(strip.atTheEdge()), keys);
        names("not seen", dyes(strip.notSeen()), keys);
        return new Mapping(List.copyOf(keys), place);
    }

    private void spots(Strip strip, List<Entry> keys) {
        List<Entry> travelled = new ArrayList<>();
        List<Entry> quoted = new ArrayList<>();
        List<Entry> seen = new ArrayList<>();
        for (Spot spot : strip.spots()) {
            String dyes = spot.dyes().stream().map(Dye::name).collect(Collectors.joining(" + "));
            if (spot.position() instanceof Spot.Travelled far) {
                travelled.add(entry(dyes, Numbers.plain(far.millimetres(), DECIMALS)));
            } else if (spot.position() instanceof Spot.Quoted rf) {
                quoted.add(entry(dyes, Numbers.plain(rf.retardationFactor(), DECIMALS)));
            } else if (spot.position() instanceof Spot.Seen watched) {
                seen.add(entry(dyes, watched.behaviour().word()));
            }
        }
        group("travel mm", travelled, keys);
        group("Rf", quoted, keys);
        group("moves", seen, keys);
    }

    private void group(String key, List<Entry> entries, List<Entry> keys) {
        if (!entries.isEmpty()) {
            keys.add(new Entry(scalar(key), new Mapping(List.copyOf(entries), place)));
        }
    }

    private void names(String key, List<String> names, List<Entry> keys) {
        if (!names.isEmpty()) {
            keys.add(new Entry(
                    scalar(key), listing(names.stream().<Node>map(this::scalar).toList())));
        }
    }

    private static List<String> dyes(Collection<Dye> dyes) {
        return dyes.stream().map(Dye::name).sorted().toList();
    }

    private Mapping mapping(Entry... entries) {
        return new Mapping(List.of(entries), place);
    }

    private Listing listing(List<Node> items) {
        return new Listing(items, place);
    }

    private Entry entry(String key, String value) {
        return new Entry(scalar(key), scalar(value));
    }

    private Scalar scalar(String text) {
        return new Scalar(text, place);
    }
}
