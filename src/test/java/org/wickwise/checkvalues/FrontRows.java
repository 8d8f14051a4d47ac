package org.wickwise.checkvalues;

import static org.wickwise.checkvalues.Cells.number;
import static org.wickwise.checkvalues.Cells.object;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.wickwise.strip.EvaporatingFront;
import org.wickwise.strip.FrontConstant;
import org.wickwise.strip.FrontForecast;
import org.wickwise.strip.FrontLiquid;
import org.wickwise.strip.FrontReading;

/** How fast a front climbs. */
final class FrontRows {

    private static final double TEN_CENTIMETRES = 100;
    private static final double SECONDS_PER_MINUTE = 60;
    private static final double MILLIMETRES_PER_CENTIMETRE = 10;

    private FrontRows() {}

    static Map<String, UnaryOperator<JsonNode>> rows() {
        Map<String, UnaryOperator<JsonNode>> rows = new TreeMap<>();
        rows.put("CV-501", FrontRows::layer);
        rows.put("CV-502", FrontRows::fromTheMaker);
        rows.put("CV-503", FrontRows::anotherLiquid);
        rows.put("CV-504", FrontRows::forecast);
        rows.put("CV-505", FrontRows::evaporating);
        rows.put("CV-506", FrontRows::uncertainty);
        rows.put("CV-507", FrontRows::anotherLiquid);
        return rows;
    }

    private static JsonNode layer(JsonNode in) {
        FrontLiquid liquid = new FrontLiquid(number(in, "gamma_mN_m"), number(in, "eta_mPas"), number(in, "cos_theta"));
        return shown(FrontConstant.ofLayer(number(in, "P0"), number(in, "dp_um"), liquid));
    }

    private static JsonNode fromTheMaker(JsonNode in) {
        return shown(FrontConstant.of(new FrontReading(number(in, "time_min"), number(in, "rise_mm"))));
    }

    private static JsonNode shown(FrontConstant constant) {
        return object().put("kappa_cm2_s", constant.squareCentimetresPerSecond())
                .put("t_10cm_min", constant.minutesTo(TEN_CENTIMETRES));
    }

    private static JsonNode anotherLiquid(JsonNode in) {
        FrontConstant here = FrontConstant.ofSquareCentimetresPerSecond(number(in, "kappa_water"));
        FrontConstant other = here.inAnother(
                FrontLiquid.wetting(number(in, "gamma_w"), number(in, "eta_w")),
                FrontLiquid.wetting(number(in, "gamma_x"), number(in, "eta_x")));
        return object().put("ratio", other.squareMillimetresPerMinute() / here.squareMillimetresPerMinute())
                .put("t_10cm_min", other.minutesTo(TEN_CENTIMETRES));
    }

    private static JsonNode forecast(JsonNode in) {
        FrontForecast forecast = new FrontForecast(
                new FrontReading(number(in, "t1_min"), number(in, "z1_mm")),
                new FrontReading(number(in, "t2_min"), number(in, "z2_mm")));
        return object().put("kappa_mm2_min", forecast.constant().squareMillimetresPerMinute())
                .put("t_end_min", forecast.minutesAt(number(in, "z_end_mm")))
                .put("minutes_left", forecast.minutesLeftTo(number(in, "z_end_mm")));
    }

    private static JsonNode evaporating(JsonNode in) {
        FrontConstant constant = FrontConstant.ofSquareCentimetresPerSecond(number(in, "kappa_cm2_s"));
        EvaporatingFront front = new EvaporatingFront(constant, number(in, "evap_per_s") * SECONDS_PER_MINUTE);
        double minutes = number(in, "t_s") / SECONDS_PER_MINUTE;
        return object().put("z_cm", front.millimetresAfter(minutes) / MILLIMETRES_PER_CENTIMETRE)
                .put("z_limit_cm", front.stallsAtMillimetres() / MILLIMETRES_PER_CENTIMETRE)
                .put("z_no_evap_cm", constant.millimetresAfter(minutes) / MILLIMETRES_PER_CENTIMETRE);
    }

    /** The times do not matter to it. */
    private static JsonNode uncertainty(JsonNode in) {
        FrontForecast forecast =
                new FrontForecast(new FrontReading(0, number(in, "z1_mm")), new FrontReading(1, number(in, "z2_mm")));
        return object().put("rel_u_kappa", forecast.relativeUncertainty(number(in, "u_z_mm")));
    }
}
