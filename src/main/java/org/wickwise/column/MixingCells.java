package org.wickwise.column;

import java.util.ArrayList;
import java.util.List;

/**
 * A column as a row of mixing cells (Martin and Synge 1941): in each the dye is always shared between liquid and bed, 1 :
 * k, and what the liquid carries on enters the next. The composition of the eluent travels as a sharp front that is not
 * held by the bed; cell i meets it i cell volumes after the first. As many cells as plates: N cells give V_R = V0 (1 + k)
 * and sigma = V_R/sqrt N in one eluent, whatever k. Holds for dilute dyes, which do not feel one another.
 *
 * @param columnVolumeMillilitres V0, the liquid in the bed, above 0
 * @param cells 1 or more
 */
public record MixingCells(double columnVolumeMillilitres, int cells) {

    /**
     * The largest share of a cell that one step moves on; up to 1 no amount becomes negative. At 100 cells this one keeps
     * elution volumes within 0.05 % and widths within 2 % of ever smaller steps.
     */
    private static final double LARGEST_SHARE = 0.8;
    /** Below this many cells the steps are shorter in proportion, since a step is then a greater part of the way. */
    private static final double MANY_CELLS = 40;

    public MixingCells {
        Expected.aboveZero("the column volume", columnVolumeMillilitres);
        Expected.aboveZero("the number of cells", cells);
    }

    /**
     * A dye loaded in a thin band at the top.
     *
     * @param pours in the order of pouring; the last one goes on until nearly all has left, or stays if it never moves
     */
    public Outflow elute(List<Pour> pours) {
        return narrow(pours).untilGone();
    }

    /**
     * A dye that comes evenly dissolved in a load. Volumes count from the end of the load, so what leaves during it has
     * a volume below 0.
     *
     * @param load its volume and the dye's k in it
     * @param pours after it; the last one goes on until nearly all has left, or stays if it never moves
     */
    public Outflow elute(Pour load, List<Pour> pours) {
        List<Pour> all = new ArrayList<>(List.of(load));
        all.addAll(pours);
        return new Passage(new Inlet(all, cellMillilitres()), cells, load.millilitres(), largestShare()).untilGone();
    }

    /** As {@link #elute(List)}, stopped when the last pour has gone in. */
    public Outflow pour(List<Pour> pours) {
        return narrow(pours).until(pours.stream().mapToDouble(Pour::millilitres).sum());
    }

    private Passage narrow(List<Pour> pours) {
        return new Passage(new Inlet(pours, cellMillilitres()), cells, 0, largestShare());
    }

    private double largestShare() {
        return LARGEST_SHARE * Math.min(1, cells / MANY_CELLS);
    }

    private double cellMillilitres() {
        return columnVolumeMillilitres / cells;
    }
}
