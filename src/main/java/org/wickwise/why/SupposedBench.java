package org.wickwise.why;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wickwise.bench.Case;
import org.wickwise.bench.Setting;
import org.wickwise.column.Column;
import org.wickwise.rulebook.Limit;
import org.wickwise.substance.Bottle;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.Shelf;
import org.wickwise.substance.Solvent;
import org.wickwise.substance.StationaryPhase;
import org.wickwise.text.NearMiss;
import org.wickwise.text.Numbers;

/** What is supposed of all that is no strip: bottles, column, setting and limits. */
final class SupposedBench {

    private final Supposing supposing;

    SupposedBench(Supposing supposing) {
        this.supposing = supposing;
    }

    private Case supposed() {
        return supposing.supposed();
    }

    void bottle(boolean with, String name) {
        Shelf shelf = supposed().shelf();
        Optional<Bottle> there = shelf.bottles().stream()
                .filter(bottle -> bottle.name().equalsIgnoreCase(name)
                        || supposing
                                .data()
                                .solvent(name)
                                .filter(solvent -> bottle.contents().equals(Eluent.neat(solvent)))
                                .isPresent())
                .findFirst();
        Optional<Solvent> solvent = supposing.data().solvent(name);
        if (with == there.isPresent()) {
            supposing.cannot(
                    with ? "the bottle " + name + " is on the shelf already" : "there is no bottle " + name,
                    with ? "a bottle that is not there" : "a bottle of the shelf",
                    NearMiss.suggestion(
                            name, shelf.bottles().stream().map(Bottle::name).toList(), List.of()));
        } else if (with && solvent.isEmpty()) {
            supposing.cannot(
                    "the table has no `" + name + "`",
                    "a solvent of the table",
                    NearMiss.suggestion(name, supposing.data().solventNames(), List.of()));
        } else if (supposing.once("the bottle " + name)) {
            List<Bottle> bottles = new ArrayList<>(shelf.bottles());
            there.ifPresent(bottles::remove);
            if (with) {
                bottles.add(Bottle.of(solvent.orElseThrow(), Supposing.SAID));
            }
            supposing.suppose(supposed().with(new Shelf(shelf.title(), bottles, shelf.ownValues(), shelf.place())));
        }
    }

    void column(String name) {
        Optional<StationaryPhase> phase = supposing.data().stationaryPhase(name);
        if (phase.isEmpty()) {
            supposing.cannot(
                    "`" + name + "` is not a known stationary phase",
                    "one of " + String.join(", ", supposing.data().stationaryPhaseNames()),
                    NearMiss.suggestion(name, supposing.data().stationaryPhaseNames(), List.of()));
        } else if (supposing.once("the column")) {
            Column column = supposed().column();
            supposing.suppose(supposed()
                    .with(new Column(
                            phase.get(),
                            column.boreMillimetres(),
                            column.bedMillimetres(),
                            column.setup(),
                            Supposing.SAID)));
        }
    }

    void setting(String word) {
        Optional<Setting> setting = Setting.named(word);
        if (setting.isEmpty()) {
            supposing.cannot(
                    "`" + word + "` is not a known setting",
                    "one of " + String.join(", ", Setting.words()),
                    NearMiss.suggestion(word, Setting.words(), List.of()));
        } else if (supposing.once("the setting")) {
            supposing.suppose(supposed().with(setting.get(), Supposing.SAID));
        }
    }

    void limit(String name, double value) {
        Limit limit = supposing.limits().get(name);
        if (limit == null) {
            supposing.cannot(
                    "`" + name + "` is not a known limit",
                    "a limit of rules/limits.yaml",
                    NearMiss.suggestion(name, supposing.limits().keySet(), List.of()));
        } else if (value < limit.lowest() || value > limit.highest()) {
            supposing.cannot(
                    "the " + name + " is " + Numbers.plain(value, 4),
                    "a value from " + Numbers.plain(limit.lowest(), 4) + " to " + Numbers.plain(limit.highest(), 4),
                    "suppose a value in that range; outside it the rules lose their meaning");
        } else if (supposing.once("the " + name)) {
            supposing.suppose(limit.supposed(value, Supposing.SAID));
        }
    }
}
