package org.wickwise.why;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.wickwise.bench.Case;
import org.wickwise.rulebook.Conclusion;
import org.wickwise.rulebook.Conclusion.Fit;
import org.wickwise.rulebook.Conclusion.Reading;
import org.wickwise.rulebook.Judgement;
import org.wickwise.strip.Spot;
import org.wickwise.strip.Strip;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Place;

/** A strip that somebody could run next. */
public record StripToRun(Eluent eluent, Kind kind) {

    private static final Place NOT_RUN = Place.wholeFile("a strip that nobody ran");

    /** What the strip would be to those that were run. */
    public enum Kind {
        /** Nobody ran a strip in this eluent. */
        FIRST,
        /** Takes the place of strips of which nothing can be read. */
        INSTEAD_OF_VOID,
        /** Takes the place of strips that were read with doubt. */
        INSTEAD_OF_DOUBTFUL,
        /** Joins strips that were read without doubt. */
        FURTHER;

        /** Whether what the dyes do there was seen before. */
        public boolean isRepeat() {
            return this == FURTHER || this == INSTEAD_OF_DOUBTFUL;
        }

        boolean replaces() {
            return this == INSTEAD_OF_VOID || this == INSTEAD_OF_DOUBTFUL;
        }
    }

    /** Every strip that may be run for a judged case: one for each eluent that may enter the column, by name. */
    static List<StripToRun> all(Judgement judgement) {
        return judgement.eluents().stream()
                .filter(eluent -> !judgement.holds(new Conclusion.Fitness(eluent, Fit.UNFIT)))
                .map(eluent -> new StripToRun(eluent, kind(eluent, judgement)))
                .toList();
    }

    private static Kind kind(Eluent eluent, Judgement judgement) {
        List<Strip> strips = judgement.judged().strips().stream()
                .filter(strip -> strip.eluent().equals(eluent))
                .toList();
        if (strips.isEmpty()) {
            return Kind.FIRST;
        }
        if (strips.stream().anyMatch(strip -> isSound(strip, judgement))) {
            return Kind.FURTHER;
        }
        return judgement.tried(eluent) ? Kind.INSTEAD_OF_DOUBTFUL : Kind.INSTEAD_OF_VOID;
    }

    private static boolean isSound(Strip strip, Judgement judgement) {
        return !judgement.holds(new Conclusion.StripVerdict(strip, Reading.VOID))
                && !judgement.holds(new Conclusion.StripVerdict(strip, Reading.DOUBTFUL))
                && judgement.all(Conclusion.SpotVerdict.class).stream()
                        .noneMatch(verdict -> verdict.strip().equals(strip) && verdict.reading() != Reading.USABLE);
    }

    /** "a first strip in A", "the strip in A again", "a further strip in A". */
    public String words() {
        return switch (kind) {
            case FIRST -> "a first strip in " + eluent;
            case INSTEAD_OF_VOID, INSTEAD_OF_DOUBTFUL -> "the strip in " + eluent + " again";
            case FURTHER -> "a further strip in " + eluent;
        };
    }

    /** The strips of the case that stay beside this one, in an order that does not hang on the file's. */
    List<Strip> others(Case written) {
        return written.strips().stream()
                .filter(strip -> !kind.replaces() || !strip.eluent().equals(eluent))
                .sorted(Comparator.comparing(Strip::toString).thenComparing(Strip::place))
                .toList();
    }

    /**
     * The strip before anything is read on it, on the column's own stationary phase. It runs as far as the strips of this
     * eluent did, or as far as strips of the case usually did.
     *
     * @param usualFrontMillimetres where no strip of the case says how far a front runs
     */
    Strip unread(Case written, double usualFrontMillimetres) {
        List<Strip> alike = written.strips().stream()
                .filter(strip -> strip.eluent().equals(eluent))
                .toList();
        int replicate = kind == Kind.FURTHER
                ? alike.stream().mapToInt(Strip::replicate).max().orElse(0) + 1
                : 1;
        return new Strip(
                eluent,
                written.column().phase(),
                replicate,
                OptionalDouble.of(
                        middleFront(alike).orElse(middleFront(written.strips()).orElse(usualFrontMillimetres))),
                OptionalDouble.empty(),
                List.of(),
                List.of(),
                Set.of(),
                Set.of(),
                Set.of(),
                Set.copyOf(written.dyes()),
                NOT_RUN);
    }

    private static OptionalDouble middleFront(List<Strip> strips) {
        double[] fronts = strips.stream()
                .flatMapToDouble(strip -> strip.frontMillimetres().stream())
                .sorted()
                .toArray();
        return fronts.length == 0 ? OptionalDouble.empty() : OptionalDouble.of(fronts[fronts.length / 2]);
    }

    /** The strip with every dye at its true place. */
    static Strip at(Truth truth, Strip unread) {
        double front = unread.frontMillimetres().orElseThrow();
        List<Spot> spots = new ArrayList<>();
        for (Dye dye : truth.dyes()) {
            double travel = truth.retardation(dye, unread.eluent()) * front;
            spots.add(new Spot(List.of(dye), new Spot.Travelled(travel), NOT_RUN));
        }
        return new Strip(
                unread.eluent(),
                unread.phase(),
                unread.replicate(),
                unread.frontMillimetres(),
                unread.rulerDivisionMillimetres(),
                spots,
                List.of(),
                Set.of(),
                Set.of(),
                Set.of(),
                Set.of(),
                unread.place());
    }
}
