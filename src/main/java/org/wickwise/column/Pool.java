package org.wickwise.column;

/**
 * What is collected together to have one dye.
 *
 * @param band which of the bands, counted from 0 in the order in which they were given
 * @param fromMillilitres where collecting begins
 * @param toMillilitres where it ends; the same where the pool is empty
 * @param purity amount of this dye over that of all dyes in it, 0 to 1; of an empty pool the purest that any narrow
 *     portion has, which is less than was wanted
 * @param recovery share of this dye's own amount that is in it, 0 to 1
 */
public record Pool(int band, double fromMillilitres, double toMillilitres, double purity, double recovery) {

    /** Whether no volume of the outflow has the wanted purity. */
    public boolean isEmpty() {
        return recovery == 0;
    }
}
