package org.wickwise.checkvalues;

import static org.wickwise.checkvalues.Cells.each;
import static org.wickwise.checkvalues.Cells.limit;
import static org.wickwise.checkvalues.Cells.number;
import static org.wickwise.checkvalues.Cells.object;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.IntNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.wickwise.Shipped;
import org.wickwise.substance.DilutionVentilation;
import org.wickwise.substance.EvaporatedLiquid;
import org.wickwise.substance.FlammabilityScheme.LiquidClass;
import org.wickwise.substance.MineralDust;
import org.wickwise.substance.MolarVolume;
import org.wickwise.substance.RoomAir;
import org.wickwise.substance.VapourMixture;
import org.wickwise.substance.VapourShare;

/** Flammable liquids, vapour in the air, ventilation, dust. */
final class AirRows {

    private static final double KILOPASCAL_PER_MILLIMETRE_OF_MERCURY = 101.325 / 760;
    private static final double MILLILITRES_PER_PINT = 473.176;
    private static final double MINUTES_PER_HOUR = 60;
    private static final double LITRES_PER_CUBIC_METRE = 1000;
    private static final RoomAir CUBIC_FOOT = RoomAir.ofCubicFeet(1);

    private AirRows() {}

    static Map<String, UnaryOperator<JsonNode>> rows() {
        Map<String, UnaryOperator<JsonNode>> rows = new TreeMap<>();
        rows.put("CV-601", AirRows::classified);
        rows.put("CV-602", AirRows::classified);
        rows.put("CV-603", in -> object().set("GHS_category", each(in.get("cases"), AirRows::ghsCategory)));
        rows.put("CV-604", AirRows::evaporatedInARoom);
        rows.put("CV-605", AirRows::evaporatedInABox);
        rows.put("CV-606", AirRows::milligrams);
        rows.put("CV-607", in -> object().put(
                        "ppm_10pct_LEL",
                        percent(in, "LEL_pct").percent(limit("burning alarm")).partsPerMillion()));
        rows.put("CV-608", AirRows::saturated);
        rows.put("CV-609", AirRows::massToReachALimit);
        rows.put("CV-610", AirRows::exposure);
        rows.put("CV-611", AirRows::leChatelier);
        rows.put("CV-612", AirRows::ventilation);
        rows.put("CV-613", AirRows::cubicFeetOfOnePint);
        rows.put("CV-614", AirRows::purging);
        rows.put("CV-615", AirRows::dust);
        rows.put("CV-616", in -> object().set("NFPA_class", each(in.get("cases"), AirRows::nfpaClass)));
        rows.put("CV-617", AirRows::saturated);
        rows.put("CV-618", AirRows::leChatelier);
        rows.put("CV-619", AirRows::dust);
        return rows;
    }

    private static JsonNode classified(JsonNode in) {
        ObjectNode found = object();
        found.set("GHS_category", ghsCategory(in));
        found.set("NFPA_class", nfpaClass(in));
        return found;
    }

    private static JsonNode ghsCategory(JsonNode in) {
        return IntNode.valueOf(Integer.parseInt(classIn("UN GHS", in, "0")));
    }

    private static JsonNode nfpaClass(JsonNode in) {
        return TextNode.valueOf(classIn("NFPA 30", in, "none"));
    }

    private static String classIn(String scheme, JsonNode in, String otherwise) {
        return Shipped.data()
                .flammability(scheme)
                .orElseThrow()
                .of(number(in, "flash_C"), number(in, "boil_C"))
                .map(LiquidClass::name)
                .orElse(otherwise);
    }

    private static EvaporatedLiquid liquid(JsonNode in) {
        return new EvaporatedLiquid(number(in, "mL"), number(in, "density"), number(in, "M"));
    }

    private static MolarVolume molarVolume(JsonNode in) {
        return new MolarVolume(number(in, "Vm"));
    }

    private static VapourShare percent(JsonNode in, String name) {
        return VapourShare.ofVolumePercent(number(in, name));
    }

    private static JsonNode evaporatedInARoom(JsonNode in) {
        VapourShare share = new RoomAir(number(in, "room_m3")).with(liquid(in), molarVolume(in));
        return object().put("vapour_L", liquid(in).vapourLitres(molarVolume(in)))
                .put("ppm", share.partsPerMillion())
                .put("pct_of_LEL", share.percentOf(percent(in, "LEL_pct")))
                .put("pct_of_PEL", share.percentOf(new VapourShare(number(in, "PEL_ppm"))));
    }

    private static JsonNode evaporatedInABox(JsonNode in) {
        VapourShare share = new RoomAir(number(in, "box_m3")).with(liquid(in), molarVolume(in));
        return object().put("vol_pct", share.volumePercent()).put("above_LEL", share.exceeds(percent(in, "LEL_pct")));
    }

    private static JsonNode milligrams(JsonNode in) {
        return object().put(
                        "mg_m3",
                        new VapourShare(number(in, "ppm")).milligramsPerCubicMetre(number(in, "M"), molarVolume(in)));
    }

    private static JsonNode saturated(JsonNode in) {
        double kilopascal = number(in, "vapour_pressure_mmHg") * KILOPASCAL_PER_MILLIMETRE_OF_MERCURY;
        return object().put("ppm", VapourShare.saturated(kilopascal).partsPerMillion());
    }

    private static JsonNode massToReachALimit(JsonNode in) {
        RoomAir room = RoomAir.ofCubicFeet(number(in, "room_ft3"));
        return object().put("room_L", room.litres()).put("mass_g", room.gramsToReach(number(in, "limit_mg_L")));
    }

    private static JsonNode exposure(JsonNode in) {
        List<VapourMixture.Part> parts = new ArrayList<>();
        for (int i = 0; i < in.get("C_ppm").size(); i++) {
            parts.add(new VapourMixture.Part(
                    new VapourShare(in.get("C_ppm").get(i).asDouble()),
                    new VapourShare(in.get("L_ppm").get(i).asDouble())));
        }
        VapourMixture mixture = new VapourMixture(parts);
        return object().put("Em", mixture.sumOfShares()).put("acceptable", mixture.isWithinLimits());
    }

    private static JsonNode leChatelier(JsonNode in) {
        List<VapourMixture.Part> parts = in.get("vapour_fraction").properties().stream()
                .map(fuel -> new VapourMixture.Part(
                        VapourShare.ofVolumePercent(fuel.getValue().asDouble()),
                        percent(in.get("LEL_pct"), fuel.getKey())))
                .toList();
        return object().put("LEL_mix_pct", new VapourMixture(parts).limit().volumePercent());
    }

    /** The row comes in pints and cubic feet at 70 degF. */
    private static JsonNode ventilation(JsonNode in) {
        double millilitresPerMinute = number(in, "ER_pint_per_min") * MILLILITRES_PER_PINT;
        double litresPerMinute = new EvaporatedLiquid(millilitresPerMinute, number(in, "SG"), number(in, "MW"))
                .vapourLitres(atFahrenheit(70));
        double cubicMetresPerHour = litresPerMinute / LITRES_PER_CUBIC_METRE * MINUTES_PER_HOUR;
        DilutionVentilation needed =
                DilutionVentilation.toKeep(new VapourShare(number(in, "C_ppm")), cubicMetresPerHour, number(in, "K"));
        return object().put("G_cfm", cubicFeetPerMinute(cubicMetresPerHour))
                .put("Q_eff_cfm", cubicFeetPerMinute(needed.effectiveCubicMetresPerHour()))
                .put("Q_cfm", cubicFeetPerMinute(needed.cubicMetresPerHour()));
    }

    private static double cubicFeetPerMinute(double cubicMetresPerHour) {
        return cubicMetresPerHour / CUBIC_FOOT.cubicMetres() / MINUTES_PER_HOUR;
    }

    private static JsonNode cubicFeetOfOnePint(JsonNode in) {
        EvaporatedLiquid pint = new EvaporatedLiquid(number(in, "pint_mL"), number(in, "density_g_mL"), 1);
        double litres = pint.vapourLitres(atFahrenheit(number(in, "temperature_F")));
        return object().put("ft3_times_MW", litres / CUBIC_FOOT.litres());
    }

    private static MolarVolume atFahrenheit(double fahrenheit) {
        return MolarVolume.at((fahrenheit - 32) * 5 / 9);
    }

    private static JsonNode purging(JsonNode in) {
        DilutionVentilation ventilation = new DilutionVentilation(number(in, "Q_m3_h"), number(in, "K"));
        double hours = ventilation.hoursToFall(
                new VapourShare(number(in, "C0_ppm")),
                new VapourShare(number(in, "C_ppm")),
                new RoomAir(number(in, "room_m3")));
        return object().put("hours", hours);
    }

    private static JsonNode dust(JsonNode in) {
        double figure = limit("dust figure of the regulation");
        return object().put("PEL_mg_m3", MineralDust.milligramsPerCubicMetre(figure, number(in, "pct_SiO2")));
    }
}
