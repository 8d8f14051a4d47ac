package org.wickwise.rulebook;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.wickwise.bench.Case;
import org.wickwise.reason.Reason;
import org.wickwise.strip.Strip;
import org.wickwise.substance.Bottle;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.Ladder;
import org.wickwise.substance.Shelf;
import org.wickwise.substance.Solvent;
import org.wickwise.substance.SolventData;
import org.wickwise.substance.TableValue;
import org.wickwise.text.Numbers;

/** Lays a case out as facts: first what happened to the strips, then the eluents and what is known of them. */
final class CaseFacts {

    private CaseFacts() {}

    static Collection<Object> ofTheStrips(Case written) {
        List<Object> facts = new ArrayList<>();
        facts.add(new Fact.MixtureSize(written.dyes().size()));
        facts.add(new Fact.SettingIs(written.setting(), written.settingPlace()));
        facts.add(written.column());
        written.fadesInLight().ifPresent(place -> facts.add(new Fact.FadesInLight(place)));
        for (var dye : written.dyes()) {
            facts.add(dye);
            facts.add(new Fact.ClassOf(dye));
        }
        for (Strip strip : written.strips()) {
            facts.add(strip);
            strip.mishaps().forEach(mishap -> facts.add(new Fact.MishapOn(strip, mishap)));
            strip.streaked().forEach(dye -> facts.add(new Fact.StreakOf(strip, dye)));
            strip.atTheEdge().forEach(dye -> facts.add(new Fact.AtTheEdge(strip, dye)));
            strip.frontMillimetres().ifPresent(front -> facts.add(new Fact.FrontOf(strip, front)));
            if (!strip.phase().name().equals(written.column().phaseName())) {
                facts.add(new Fact.OtherPhase(strip, written.column().phaseName()));
            }
        }
        return facts;
    }

    /** The eluents of the strips and the neat solvents of the shelf, in the order of their names. */
    static List<Eluent> eluents(Case written) {
        Set<Eluent> eluents = new TreeSet<>();
        written.strips().forEach(strip -> eluents.add(strip.eluent()));
        written.shelf().contents().forEach(eluents::add);
        return List.copyOf(eluents);
    }

    static Collection<Object> ofTheEluents(Case written, StripSummary summary, SolventData data) {
        List<Object> facts = new ArrayList<>();
        facts.addAll(summary.movements());
        facts.addAll(summary.gaps());
        facts.addAll(ofFurtherEluents(eluents(written), List.of(), written, data));
        return facts;
    }

    /** What is known of eluents that join others, which are laid out. */
    static Collection<Object> ofFurtherEluents(
            List<Eluent> further, List<Eluent> laidOut, Case written, SolventData data) {
        List<Object> facts = new ArrayList<>();
        for (Eluent eluent : further) {
            facts.add(eluent);
            composition(eluent, written, data, facts);
            data.miscibility().partingWithin(eluent).ifPresent(reason -> facts.add(new Fact.TwoLayers(eluent, reason)));
        }
        for (Eluent one : further) {
            for (Eluent other : further) {
                pair(one, other, written, data, facts);
            }
            for (Eluent other : laidOut) {
                pair(one, other, written, data, facts);
                pair(other, one, written, data, facts);
            }
        }
        return facts;
    }

    private static void composition(Eluent eluent, Case written, SolventData data, List<Object> facts) {
        for (Eluent.Part part : eluent.parts()) {
            Solvent solvent = part.solvent();
            facts.add(new Fact.PartOf(eluent, solvent, part.percent()));
            solvent.values().values().stream()
                    .flatMap(List::stream)
                    .filter(TableValue::used)
                    .forEach(value -> property(eluent, part.percent(), value, facts));
            data.solvents().forEach(other -> data.miscibility()
                    .parting(solvent, other)
                    .ifPresent(reason -> facts.add(new Fact.PartsFrom(eluent, other, reason))));
        }
        shares(eluent, data, facts);
        bottles(eluent, written, facts);
        eluent.additions().forEach(addition -> facts.add(new Fact.AdditiveIn(eluent, addition.additive())));
    }

    private static void property(Eluent eluent, double percent, TableValue value, List<Object> facts) {
        if (value.number().isPresent()) {
            facts.add(new Fact.PropertyOf(eluent, percent, value));
        } else if (value.constants().isEmpty()) {
            value.texts().forEach(word -> facts.add(new Fact.WordOf(eluent, word, value)));
        }
    }

    private static void bottles(Eluent eluent, Case written, List<Object> facts) {
        Shelf shelf = written.shelf();
        shelf.missingFor(eluent).forEach(solvent -> facts.add(new Fact.OffTheShelf(eluent, solvent, shelf.place())));
        for (Bottle bottle : shelf.bottlesFor(eluent)) {
            bottle.banned()
                    .ifPresent(reason -> facts.add(new Fact.Banned(eluent, bottle.name(), reason, bottle.place())));
            if (written.date().isPresent() && bottle.openedOn().isPresent()) {
                long months = ChronoUnit.MONTHS.between(
                        bottle.openedOn().get(), written.date().get());
                facts.add(new Fact.OpenFor(eluent, bottle.name(), months, bottle.place()));
            }
        }
    }

    private static void shares(Eluent eluent, SolventData data, List<Object> facts) {
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

    private static void pair(Eluent one, Eluent other, Case written, SolventData data, List<Object> facts) {
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
