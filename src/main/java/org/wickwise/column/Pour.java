package org.wickwise.column;

/**
 * An eluent poured through a column, as one dye meets it.
 *
 * @param millilitres how much is poured, above 0
 * @param retentionFactor k of the dye in it, 0 or more; infinite where the dye does not move
 */
public record Pour(double millilitres, double retentionFactor) {

    public Pour {
        if (!(millilitres > 0) || !(retentionFactor >= 0)) {
            throw new IllegalArgumentException("poured " + millilitres + " mL at k " + retentionFactor
                    + "; expected more than 0 mL and k of 0 or more");
        }
    }
}
