package org.wickwise.rulebook;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.wickwise.bench.Case;
import org.wickwise.strip.Strip;

/** Lays out as facts what a case says of itself and of what happened to its strips. */
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
}
