package org.wickwise.rulebook;

import java.time.Period;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.wickwise.bench.Case;
import org.wickwise.reason.Reason;
import org.wickwise.substance.Bottle;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.Ladder;
import org.wickwise.substance.Shelf;
import org.wickwise.substance.Solvent;
import org.wickwise.substance.SolventData;
import org.wickwise.substance.TableValue;
import org.wickwise.text.Numbers;

/**
 * What is known of eluents whatever the strips say: what they are made of, what bottles they need, which mix and which are
 * weaker. Holds as long as a case has the same eluents, shelf, column and date. Not for several threads.
 */
final class EluentFacts {

    private final Case written;
    private final SolventData data;
    private final List<Eluent> eluents;
    private final List<Object> ofTheCase;
    private final Map<Eluent, List<Object>> ofOthers = new HashMap<>();
    private final Map<Pair, List<Object>> ofPairs = new HashMap<>();

    private record Pair(Eluent one, Eluent other) {}

    EluentFacts(Case written, SolventData data) {
        this.written = written;
        this.data = data;
        this.eluents = eluents(written);
        List<Object> facts = new ArrayList<>();
        for (Eluent one : eluents) {
            alone(one, facts);
            eluents.forEach(other -> pair(one, other, facts));
        }
        this.ofTheCase = withoutRepeats(facts);
    }

    /** Whether another case has the same facts. */
    boolean holdFor(Case other) {
        return eluents.equals(eluents(other))
                && written.shelf().equals(other.shelf())
                && written.column().equals(other.column())
                && written.date().equals(other.date());
    }

    /** The eluents of the strips and what stands on the shelf, in the order of their names. */
    static List<Eluent> eluents(Case written) {
        Set<Eluent> eluents = new TreeSet<>();
        written.strips().forEach(strip -> eluents.add(strip.eluent()));
        written.shelf().contents().forEach(eluents::add);
        return List.copyOf(eluents);
    }

    /** The eluents of the case, in the order of their names. */
    List<Eluent> eluents() {
        return eluents;
    }

    /** What is known of the eluents of the strips and the shelf. */
    List<Object> ofTheCase() {
        return ofTheCase;
    }

    /** What is known of eluents that join those of the case. */
    List<Object> ofFurther(List<Eluent> further) {
        List<Object> facts = new ArrayList<>();
        for (Eluent one : further) {
            facts.addAll(ofOthers.computeIfAbsent(one, this::besideTheCase));
            further.forEach(other -> facts.addAll(ofPairs.computeIfAbsent(new Pair(one, other), this::ofPair)));
        }
        return facts;
    }

    private List<Object> besideTheCase(Eluent one) {
        List<Object> facts = new ArrayList<>();
        alone(one, facts);
        for (Eluent other : eluents) {
            pair(one, other, facts);
            pair(other, one, facts);
        }
        return withoutRepeats(facts);
    }

    private List<Object> ofPair(Pair pair) {
        List<Object> facts = new ArrayList<>();
        pair(pair.one(), pair.other(), facts);
        return facts;
    }

    private static List<Object> withoutRepeats(List<Object> facts) {
        return List.copyOf(new LinkedHashSet<>(facts));
    }

    private void alone(Eluent eluent, List<Object> facts) {
        facts.add(eluent);
        composition(eluent, facts);
        data.miscibility().partingWithin(eluent).ifPresent(reason -> facts.add(new Fact.TwoLayers(eluent, reason)));
    }

    private void composition(Eluent eluent, List<Object> facts) {
        for (Eluent.Part part : eluent.parts()) {
            Solvent solvent = part.solvent();
            facts.add(new Fact.PartOf(eluent, solvent, Numbers.steady(part.percent())));
            solvent.values().values().stream()
                    .flatMap(List::stream)
                    .filter(TableValue::used)
                    .forEach(value -> property(eluent, Numbers.steady(part.percent()), value, facts));
            data.solvents().forEach(other -> data.miscibility()
                    .parting(solvent, other)
                    .ifPresent(reason -> facts.add(new Fact.PartsFrom(eluent, other, reason))));
        }
        shares(eluent, facts);
        bottles(eluent, facts);
        eluent.additions().forEach(addition -> facts.add(new Fact.AdditiveIn(eluent, addition.additive())));
    }

    private static void property(Eluent eluent, double percent, TableValue value, List<Object> facts) {
        if (value.number().isPresent()) {
            facts.add(new Fact.PropertyOf(eluent, percent, value));
        } else if (value.constants().isEmpty()) {
            value.texts().forEach(word -> facts.add(new Fact.WordOf(eluent, word, value)));
        }
    }

    private void bottles(Eluent eluent, List<Object> facts) {
        Shelf shelf = written.shelf();
        shelf.missingFor(eluent).forEach(solvent -> facts.add(new Fact.OffTheShelf(eluent, solvent, shelf.place())));
        for (Bottle bottle : shelf.bottlesFor(eluent)) {
            bottle.banned()
                    .ifPresent(reason -> facts.add(new Fact.Banned(eluent, bottle.name(), reason, bottle.place())));
            if (written.date().isPresent() && bottle.openedOn().isPresent()) {
                Period open =
                        Period.between(bottle.openedOn().get(), written.date().get());
                facts.add(new Fact.OpenFor(eluent, bottle.name(), open, bottle.place()));
            }
        }
    }

    private void shares(Eluent eluent, List<Object> facts) {
        for (String family : data.families()) {
            facts.add(new Fact.ShareOf(
                    eluent, family, percent(eluent, solvent -> solvent.family().equals(family))));
        }
        facts.add(new Fact.ShareOf(eluent, Fact.ShareOf.WATERY, percent(eluent, Solvent::aqueous)));
    }

    private static double percent(Eluent eluent, Predicate<Solvent> kind) {
        return Numbers.steady(eluent.parts().stream()
                .filter(part -> kind.test(part.solvent()))
                .mapToDouble(Eluent.Part::percent)
                .sum());
    }

    private void pair(Eluent one, Eluent other, List<Object> facts) {
        if (one.equals(other)) {
            return;
        }
        data.miscibility().parting(one, other).ifPresent(reason -> facts.add(new Fact.DoNotMix(one, other, reason)));
        written.column().phase().ladder().map(Ladder::new).ifPresent(ladder -> {
            ladder.weaker(one, other).ifPresent(reason -> {
                facts.add(new Fact.WeakerThan(one, other, reason));
                weakestPart(ladder, one, other, reason, facts);
            });
        });
    }

    private static void weakestPart(Ladder ladder, Eluent one, Eluent other, Reason reason, List<Object> facts) {
        boolean isPart = one.isNeat()
                && other.parts().size() > 1
                && ladder.weakestPart(other)
                        .filter(one.parts().get(0).solvent()::equals)
                        .isPresent();
        if (isPart) {
            facts.add(new Fact.WeakestPart(one, other, reason));
        }
    }
}
