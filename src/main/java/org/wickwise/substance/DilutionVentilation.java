package org.wickwise.substance;

import org.wickwise.text.Amounts;

/**
 * Fresh air that thins out a vapour, Q = K G/C (ACGIH, Industrial Ventilation, from memory). It is no control for very toxic
 * vapours and takes no hood's place.
 *
 * @param cubicMetresPerHour Q, fresh air, above 0
 * @param mixingFactor K, 1 for air that mixes at once; 3 to 10 in ordinary rooms
 */
public record DilutionVentilation(double cubicMetresPerHour, double mixingFactor) {

    private static final double WHOLE_PARTS_PER_MILLION = 1e6;

    public DilutionVentilation {
        Amounts.above0("fresh air", cubicMetresPerHour, "m3/h");
        if (!(mixingFactor >= 1 && mixingFactor < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("the mixing factor is " + mixingFactor
                    + "; expected 1 or more, since no room mixes better than at once");
        }
    }

    /**
     * The fresh air that keeps a vapour at a share, Q = K 1e6 G/C.
     *
     * @param vapourCubicMetresPerHour G, what evaporates, above 0
     * @param kept C, above 0
     */
    public static DilutionVentilation toKeep(VapourShare kept, double vapourCubicMetresPerHour, double mixingFactor) {
        Amounts.above0("vapour", vapourCubicMetresPerHour, "m3/h");
        Amounts.above0("share to keep", kept.partsPerMillion(), "ppm");
        return new DilutionVentilation(
                mixingFactor * WHOLE_PARTS_PER_MILLION * vapourCubicMetresPerHour / kept.partsPerMillion(),
                mixingFactor);
    }

    /** Q' = Q/K, the fresh air that counts. */
    public double effectiveCubicMetresPerHour() {
        return cubicMetresPerHour / mixingFactor;
    }

    /** What is left of a vapour after a time, C = C0 exp(-Q' t/V); hours 0 or more. */
    public VapourShare after(double hours, VapourShare start, RoomAir room) {
        Amounts.atLeast0("time", hours, "h");
        return new VapourShare(
                start.partsPerMillion() * Math.exp(-effectiveCubicMetresPerHour() * hours / room.cubicMetres()));
    }

    /**
     * How long it takes until a vapour has thinned out, t = (V/Q') ln(C0/C).
     *
     * @param end above 0 and not above the start
     */
    public double hoursToFall(VapourShare start, VapourShare end, RoomAir room) {
        if (!(end.partsPerMillion() > 0 && end.partsPerMillion() <= start.partsPerMillion())) {
            throw new IllegalArgumentException("a vapour is to fall from " + start.partsPerMillion() + " to "
                    + end.partsPerMillion() + " ppm; expected an end above 0 and not above the start");
        }
        return room.cubicMetres()
                / effectiveCubicMetresPerHour()
                * Math.log(start.partsPerMillion() / end.partsPerMillion());
    }

    /**
     * What a steady source has brought into clean air after a time, C = (G/Q')(1 - exp(-Q' t/V)); hours 0 or more.
     *
     * @param vapourCubicMetresPerHour G, 0 or more
     */
    public VapourShare builtUp(double hours, double vapourCubicMetresPerHour, RoomAir room) {
        Amounts.atLeast0("time", hours, "h");
        Amounts.atLeast0("vapour", vapourCubicMetresPerHour, "m3/h");
        double steady = vapourCubicMetresPerHour / effectiveCubicMetresPerHour();
        double reached = -Math.expm1(-effectiveCubicMetresPerHour() * hours / room.cubicMetres());
        return new VapourShare(WHOLE_PARTS_PER_MILLION * Math.min(1, steady * reached));
    }
}
