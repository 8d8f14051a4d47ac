package org.wickwise.column;

/**
 * What leaves between two pools and belongs to neither.
 *
 * @param earlier band of the pool before it
 * @param later band of the pool after it
 * @param fromMillilitres where the first pool ends
 * @param toMillilitres where the second begins; the same where one cut parts them
 */
public record Between(int earlier, int later, double fromMillilitres, double toMillilitres) {

    public double millilitres() {
        return toMillilitres - fromMillilitres;
    }

    /** Whether both pools meet in one cut. */
    public boolean isOneCut() {
        return toMillilitres == fromMillilitres;
    }
}
