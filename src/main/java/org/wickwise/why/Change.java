package org.wickwise.why;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.wickwise.bench.Case;
import org.wickwise.rulebook.Conclusion.Reading;
import org.wickwise.rulebook.Conclusion.StripVerdict;
import org.wickwise.rulebook.Judgement;
import org.wickwise.rulebook.Limit;
import org.wickwise.strip.RetardationFactor;
import org.wickwise.strip.Strip;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.SolventData;
import org.wickwise.substance.StationaryPhase;
import org.wickwise.text.Numbers;
import org.wickwise.text.Place;

/** One thing of a case that could be otherwise. */
public sealed interface Change {

    /** As `suppose` is asked for it. */
    String words();

    /** How large the change is among changes of its kind, 0 or more. */
    double size();

    /** The case after this change and others. */
    default Case in(Case written) {
        return written;
    }

    /** The limits after this change and others. */
    default Map<String, Limit> in(Map<String, Limit> limits) {
        return limits;
    }

    /** Another reading; its size is in standard uncertainties of the reading as written. */
    record OfReading(Strip strip, Dye dye, RetardationFactor written, int step, int steps) implements Change {

        /** Every other reading in so many steps from 0 to 1, of every dye that was measured on a strip that is not void. */
        static List<OfReading> all(Judgement judgement, int steps) {
            List<OfReading> all = new ArrayList<>();
            for (Strip strip : judgement.judged().strips()) {
                boolean isRead = !judgement.holds(new StripVerdict(strip, Reading.VOID))
                        && strip.phase().equals(judgement.judged().column().phase());
                for (Dye dye : isRead ? judgement.judged().dyes() : List.<Dye>of()) {
                    judgement.retardationFactor(strip, dye).ifPresent(written -> IntStream.rangeClosed(0, steps)
                            .mapToObj(step -> new OfReading(strip, dye, written, step, steps))
                            .filter(change -> change.size() > 0)
                            .forEach(all::add));
                }
            }
            return all;
        }

        /** One reading of a dye, whatever it says. */
        String spot() {
            return dye + " on " + strip + " " + strip.place();
        }

        double retardationFactor() {
            return (double) step / steps;
        }

        /** @param most in standard uncertainties of the reading */
        boolean isFurtherOffThan(double most) {
            return Numbers.steady(size()) > most;
        }

        @Override
        public String words() {
            return dye + " in " + strip.eluent() + (strip.replicate() == 1 ? "" : " on strip " + strip.replicate())
                    + " at Rf " + Numbers.plain(retardationFactor(), 4);
        }

        @Override
        public double size() {
            return Math.abs(retardationFactor() - written.value()) / written.uncertainty();
        }

        @Override
        public Case in(Case written) {
            Strip there = written.strips().stream()
                    .filter(other -> other.eluent().equals(strip.eluent())
                            && other.place().equals(strip.place()))
                    .findFirst()
                    .orElseThrow();
            return written.with(there, Optional.of(there.moved(dye, there.positionAt(retardationFactor()))));
        }

        /** One step nearer to the reading as written; empty when the next step is no nearer. */
        Optional<OfReading> nearer() {
            int next = retardationFactor() > written.value() ? step - 1 : step + 1;
            OfReading nearer = new OfReading(strip, dye, written, next, steps);
            return nearer.size() < size() ? Optional.of(nearer) : Optional.empty();
        }
    }

    /** Another limit; its size is a share of the range in which it may be set. */
    record OfLimit(Limit limit, double value) implements Change {

        /** Every other value over the range of the limit, in at least so many steps of a round number, and its two ends. */
        static Stream<OfLimit> all(Limit limit, int steps) {
            double step = roundNumberBelow((limit.highest() - limit.lowest()) / steps);
            long first = (long) Math.ceil(limit.lowest() / step);
            long last = (long) Math.floor(limit.highest() / step);
            return Stream.concat(
                            Stream.of(limit.lowest(), limit.highest()),
                            LongStream.rangeClosed(first, last).mapToObj(number -> Numbers.steady(number * step)))
                    .distinct()
                    .map(value -> new OfLimit(limit, value))
                    .filter(change -> change.size() > 0);
        }

        /** 1, 2 or 5 times a power of ten. */
        private static double roundNumberBelow(double value) {
            double power = Math.pow(10, Math.floor(Math.log10(value)));
            return value >= 5 * power ? 5 * power : value >= 2 * power ? 2 * power : power;
        }

        @Override
        public String words() {
            return "the " + limit.name() + " is " + Numbers.plain(value, 6);
        }

        @Override
        public Map<String, Limit> in(Map<String, Limit> limits) {
            Map<String, Limit> changed = new HashMap<>(limits);
            changed.put(limit.name(), limit.supposed(value, Place.wholeFile("needed")));
            return changed;
        }

        @Override
        public double size() {
            return Math.abs(value - limit.value()) / (limit.highest() - limit.lowest());
        }
    }

    /** A bottle put on the shelf or taken from it; one is as large as another. */
    record OfBottle(String name, boolean isAdded, SolventData data) implements Change {

        @Override
        public Case in(Case written) {
            return SuppositionReader.read(List.of(words()), written, Map.of(), data)
                    .supposed();
        }

        static List<OfBottle> all(Case written, SolventData data) {
            List<OfBottle> all = new ArrayList<>();
            written.shelf().bottles().forEach(bottle -> all.add(new OfBottle(bottle.name(), false, data)));
            data.solvents().stream()
                    .filter(solvent ->
                            written.shelf().bottleOf(Eluent.neat(solvent)).isEmpty())
                    .map(solvent -> new OfBottle(solvent.name(), true, data))
                    .forEach(all::add);
            return all;
        }

        @Override
        public String words() {
            return (isAdded ? "with" : "without") + " the bottle " + name;
        }

        @Override
        public double size() {
            return 1;
        }
    }

    /** Another stationary phase in the column; one is as large as another. Strips keep the phase they were run on. */
    record OfColumn(StationaryPhase phase, SolventData data) implements Change {

        /** Every stationary phase of the table but the column's. */
        static List<OfColumn> all(Case written, SolventData data) {
            return data.stationaryPhaseNames().stream()
                    .flatMap(name -> data.stationaryPhase(name).stream())
                    .distinct()
                    .filter(phase ->
                            !phase.name().equals(written.column().phase().name()))
                    .map(phase -> new OfColumn(phase, data))
                    .toList();
        }

        @Override
        public Case in(Case written) {
            return SuppositionReader.read(List.of(words()), written, Map.of(), data)
                    .supposed();
        }

        @Override
        public String words() {
            return "the column is " + phase.name();
        }

        @Override
        public double size() {
            return 1;
        }
    }
}
