package org.wickwise.rulebook;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wickwise.reason.Reason;
import org.wickwise.strip.RetardationFactor;
import org.wickwise.strip.Ruler;
import org.wickwise.strip.Spot;
import org.wickwise.strip.Spot.Travelled;
import org.wickwise.strip.Strip;
import org.wickwise.substance.Dye;
import org.wickwise.text.Numbers;

/** What one spot of one strip says as a number with its uncertainty, and how that is told. */
final class RulerReadings {

    private static final String RF_REFERENCE =
            "Rf = travel / front, both from the origin (IUPAC; Ettre, Pure Appl. Chem. 1993, 65, 819);"
                    + " u by JCGM 100:2008, 5.1.2, the origin shared by both distances";

    private final Map<String, Limit> limits;

    RulerReadings(Map<String, Limit> limits) {
        this.limits = limits;
    }

    Ruler ruler(Strip strip) {
        return new Ruler(
                strip.rulerDivisionMillimetres()
                        .orElse(limits.get("usual ruler division").value()),
                limits.get("spot centre half-width").value());
    }

    Optional<RetardationFactor> retardationFactor(Strip strip, Dye dye) {
        Spot.Position position = strip.spotOf(dye).map(Spot::position).orElseThrow();
        if (position instanceof Travelled travelled) {
            return Optional.of(RetardationFactor.measured(
                    travelled.millimetres(), strip.frontMillimetres().orElseThrow(), ruler(strip)));
        }
        if (position instanceof Spot.Quoted quoted) {
            return Optional.of(new RetardationFactor(
                    quoted.retardationFactor(),
                    limits.get("uncertainty of a reported Rf").value()));
        }
        if (position instanceof Spot.Remembered remembered) {
            return Optional.of(remembered.retardationFactor());
        }
        return Optional.empty();
    }

    Reason reading(Strip strip, Dye dye, RetardationFactor value) {
        Spot spot = strip.spotOf(dye).orElseThrow();
        if (spot.position() instanceof Spot.Remembered remembered) {
            return remembered.reason();
        }
        if (!(spot.position() instanceof Travelled travelled)) {
            return new Reason.Calculated(
                    "Rf of " + dye + " in " + strip.eluent() + " is " + value.shown(),
                    "as reported, without ruler readings",
                    "the case file",
                    List.of(observed(strip, dye)));
        }
        double front = strip.frontMillimetres().orElseThrow();
        return new Reason.Calculated(
                "Rf of " + dye + " in " + strip.eluent() + " is " + value.shown(),
                "Rf = " + Numbers.plain(travelled.millimetres(), 2) + " mm / " + Numbers.plain(front, 2)
                        + " mm; ± is twice the standard uncertainty " + Numbers.fixed(value.uncertainty(), 3)
                        + "; " + value.retentionShown(),
                RF_REFERENCE,
                List.of(observed(strip, dye)));
    }

    static Reason observed(Strip strip, Dye dye) {
        Spot spot = strip.spotOf(dye).orElseThrow();
        if (spot.position() instanceof Spot.Remembered remembered) {
            return remembered.reason();
        }
        return new Reason.Observed(
                dye + " " + spot.position().words() + " on " + strip
                        + strip.frontMillimetres().stream()
                                .mapToObj(front -> ", front at " + Numbers.plain(front, 2) + " mm")
                                .findFirst()
                                .orElse(""),
                spot.place());
    }
}
