package org.wickwise.plan;

import java.util.ArrayList;
import java.util.List;
import org.wickwise.column.Column;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Conclusion.MayPack;
import org.wickwise.rulebook.Conclusion.PackingKind;
import org.wickwise.rulebook.Judgement;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Numbers;

/** What to pack and load the column with, and what its bed holds. */
final class PackLines {

    private final Judgement judgement;
    private final MayPack packing;
    private final Column column;
    private final List<PlanLine> lines = new ArrayList<>();

    PackLines(Judgement judgement, MayPack packing) {
        this.judgement = judgement;
        this.packing = packing;
        this.column = judgement.judged().column();
    }

    List<PlanLine> lines() {
        Eluent with = packing.packing();
        String how = packing.kind() == PackingKind.HOLDS_ALL
                ? "every dye stays in it" + (judgement.tried(with) ? "" : " (estimated, not seen on a strip)")
                : packing.kind() == PackingKind.WEAKEST_PART
                        ? "the weak part of the first eluent (estimated, not tried on a strip)"
                        : "the first eluent itself, since nothing tried holds every dye and may come before it";
        add(
                "pack",
                "Pack the " + column.phaseName() + " column in " + with + ": " + how + ". "
                        + column.phase().conditioning(),
                reasonOfPacking());
        String load = packing.kind() == PackingKind.HOLDS_ALL
                ? "Load the mixture in the least " + with
                        + " that takes it up, let it sink in as a narrow band, and rinse the wall with the same; it may wait there."
                : "Load the mixture in the least " + with
                        + " that takes it up, as narrow a band as you can; the dyes may begin to move at once, so have the first flask ready.";
        add("load", load, reasonOfPacking());
        bed();
        return lines;
    }

    /** The rule that lets it pack, and what each dye does in it, or in the first eluent where nobody saw it. */
    private Reason reasonOfPacking() {
        Eluent seen = judgement.judged().dyes().stream()
                        .anyMatch(dye ->
                                judgement.behaviour(dye, packing.packing()).isPresent())
                ? packing.packing()
                : packing.first();
        Reason.Concluded rule = judgement.reason(packing);
        List<Reason> grounds = new ArrayList<>(List.of(rule));
        judgement.judged().dyes().stream()
                .flatMap(dye -> judgement.behaviour(dye, seen).stream())
                .map(judgement::reason)
                .forEach(grounds::add);
        return new Reason.Chosen("the column is packed with " + packing.packing(), List.of(), grounds);
    }

    private void bed() {
        if (column.bedMillilitres().isEmpty()) {
            return;
        }
        double bore = column.boreMillimetres().orElseThrow();
        double bed = column.bedMillimetres().orElseThrow();
        String text = "The bed of " + Numbers.plain(bore, 1) + " mm by " + Numbers.plain(bed, 1) + " mm takes about "
                + Numbers.poured(column.bedGrams().orElseThrow()) + " g of dry " + column.phaseName()
                + "; one column volume, the liquid in it, is about "
                + Numbers.poured(column.columnVolumeMillilitres().orElseThrow()) + " mL.";
        add(
                "bed",
                text,
                new Reason.Calculated(
                        text,
                        "bed volume = pi d^2 L / 4 = "
                                + Numbers.fixed(column.bedMillilitres().orElseThrow(), 1)
                                + " mL; mass = " + Numbers.plain(column.phase().packedDensityGramsPerMillilitre(), 3)
                                + " g/mL x bed volume; column volume = "
                                + Numbers.plain(column.phase().totalPorosity(), 3) + " x bed volume",
                        column.phase().figuresFrom(),
                        List.of(column.reason())));
    }

    private void add(String label, String text, Reason reason) {
        lines.add(new PlanLine(label, Section.PACKING, text, reason));
    }
}
