package org.wickwise.strip;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.StationaryPhase;
import org.wickwise.text.Place;

/**
 * A strip that somebody ran. Distances are in millimetres from the origin.
 *
 * @param replicate 1 unless the writer numbered strips in the same eluent
 * @param rulerDivisionMillimetres the ruler's finest division, where it was written down
 * @param gaps what was seen between spots
 * @param streaked dyes that left a streak instead of a spot
 * @param atTheEdge dyes whose spot touched the edge of the strip
 * @param notSeen dyes that nobody could see on this strip
 */
public record Strip(
        Eluent eluent,
        StationaryPhase phase,
        int replicate,
        OptionalDouble frontMillimetres,
        OptionalDouble rulerDivisionMillimetres,
        List<Spot> spots,
        List<SeenBetween> gaps,
        Set<Mishap> mishaps,
        Set<Dye> streaked,
        Set<Dye> atTheEdge,
        Set<Dye> notSeen,
        Place place) {

    /** What was seen between two dyes, the one further from the origin first. */
    public record SeenBetween(Dye ahead, Dye behind, GapLook look, Place place) {}

    /** The same strip read otherwise. */
    public Strip with(OptionalDouble otherFrontMillimetres, List<Spot> otherSpots) {
        return new Strip(
                eluent,
                phase,
                replicate,
                otherFrontMillimetres,
                rulerDivisionMillimetres,
                List.copyOf(otherSpots),
                gaps,
                mishaps,
                streaked,
                atTheEdge,
                notSeen,
                place);
    }

    /** The same strip as another repeat in its eluent. */
    public Strip numbered(int otherReplicate) {
        return new Strip(
                eluent,
                phase,
                otherReplicate,
                frontMillimetres,
                rulerDivisionMillimetres,
                spots,
                gaps,
                mishaps,
                streaked,
                atTheEdge,
                notSeen,
                place);
    }

    /**
     * The same strip with one dye elsewhere. What shared its spot stays, and what was seen between it and others is left out:
     * that was seen of another reading.
     */
    public Strip moved(Dye dye, Spot.Position position) {
        return new Strip(
                eluent,
                phase,
                replicate,
                frontMillimetres,
                rulerDivisionMillimetres,
                spots.stream()
                        .flatMap(spot -> spot.dyes().contains(dye) ? placedApart(spot, dye, position) : Stream.of(spot))
                        .toList(),
                gaps.stream()
                        .filter(gap -> !gap.ahead().equals(dye) && !gap.behind().equals(dye))
                        .toList(),
                mishaps,
                streaked,
                atTheEdge,
                notSeen,
                place);
    }

    private static Stream<Spot> placedApart(Spot spot, Dye dye, Spot.Position position) {
        List<Dye> others =
                spot.dyes().stream().filter(other -> !other.equals(dye)).toList();
        Spot moved = new Spot(List.of(dye), position, spot.place());
        return others.isEmpty() ? Stream.of(moved) : Stream.of(moved, new Spot(others, spot.position(), spot.place()));
    }

    /**
     * Where a spot of this Rf lies on this strip: in millimetres where its front is known.
     *
     * @param retardationFactor 0 to 1
     */
    public Spot.Position positionAt(double retardationFactor) {
        return frontMillimetres.isPresent()
                ? new Spot.Travelled(retardationFactor * frontMillimetres.getAsDouble())
                : new Spot.Quoted(retardationFactor);
    }

    /** The same strip with the spots of these dyes only. */
    public Strip of(List<Dye> some) {
        return new Strip(
                eluent,
                phase,
                replicate,
                frontMillimetres,
                rulerDivisionMillimetres,
                spots.stream()
                        .map(spot -> new Spot(
                                spot.dyes().stream().filter(some::contains).toList(), spot.position(), spot.place()))
                        .filter(spot -> !spot.dyes().isEmpty())
                        .toList(),
                gaps.stream()
                        .filter(gap -> some.contains(gap.ahead()) && some.contains(gap.behind()))
                        .toList(),
                mishaps,
                among(streaked, some),
                among(atTheEdge, some),
                among(notSeen, some),
                place);
    }

    private static Set<Dye> among(Set<Dye> dyes, List<Dye> some) {
        return dyes.stream().filter(some::contains).collect(Collectors.toCollection(TreeSet::new));
    }

    /** Whether nobody ran it for this case: its spots are those of earlier strips. */
    public boolean isRemembered() {
        return spots.stream().anyMatch(spot -> spot.position() instanceof Spot.Remembered);
    }

    public Optional<Spot> spotOf(Dye dye) {
        return spots.stream().filter(spot -> spot.dyes().contains(dye)).findFirst();
    }

    /** How a sentence calls this strip. */
    @Override
    public String toString() {
        return (replicate == 1 ? "the strip" : "strip " + replicate) + " in " + eluent.name();
    }
}
