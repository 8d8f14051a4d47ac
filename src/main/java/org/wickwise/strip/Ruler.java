package org.wickwise.strip;

/**
 * How well distances on a strip are known.
 *
 * @param divisionMillimetres finest division of the ruler
 * @param spotCentreHalfWidthMillimetres the middle of a spot lies within this of the reading
 */
public record Ruler(double divisionMillimetres, double spotCentreHalfWidthMillimetres) {

    /**
     * Standard uncertainty of one reading, in millimetres: rectangular over one division (JCGM 100:2008, F.2.2.1).
     */
    public double readingMillimetres() {
        return divisionMillimetres / Math.sqrt(12);
    }

    /**
     * Standard uncertainty of the middle of a spot, in millimetres: the reading and a rectangular half-width, in
     * quadrature (JCGM 100:2008, 4.3.7 and 5.1.2).
     */
    public double spotMillimetres() {
        return Math.hypot(readingMillimetres(), spotCentreHalfWidthMillimetres / Math.sqrt(3));
    }
}
