package org.wickwise.lesson;

import org.wickwise.text.Numbers;

/** Amounts as they are made ready: rounded up, so that nothing falls short by rounding. */
final class ReadyAmount {

    private static final double LITRE = 1000;
    private static final double FINEST_SHARE = 20;

    private ReadyAmount() {}

    /** Rounded up to the next 1, 5, 10, 50, 100, ...: by no more than a twentieth, or by 1 below 20. */
    static double roundedUp(double amount) {
        double step = 1;
        double factor = 5;
        while (amount >= FINEST_SHARE * step * factor) {
            step *= factor;
            factor = factor == 5 ? 2 : 5;
        }
        return Math.ceil(Numbers.steady(amount / step)) * step;
    }

    /** "350 mL", "1.85 L". */
    static String millilitres(double millilitres) {
        return shown(roundedUp(millilitres));
    }

    /** The same without rounding up. */
    static String shown(double millilitres) {
        return millilitres >= LITRE
                ? Numbers.plain(millilitres / LITRE, 2) + " L"
                : Numbers.plain(millilitres, millilitres < 10 ? 1 : 0) + " mL";
    }

    /** "35 g", "1.2 kg". */
    static String grams(double grams) {
        return gramsShown(roundedUp(grams));
    }

    /** The same without rounding up. */
    static String gramsShown(double grams) {
        return grams >= LITRE
                ? Numbers.plain(grams / LITRE, 2) + " kg"
                : Numbers.plain(grams, grams < 10 ? 1 : 0) + " g";
    }
}
