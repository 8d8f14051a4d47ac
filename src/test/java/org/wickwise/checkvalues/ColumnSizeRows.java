package org.wickwise.checkvalues;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.wickwise.Shipped;
import org.wickwise.column.Bed;
import org.wickwise.column.Column;
import org.wickwise.column.ColumnSizes;
import org.wickwise.column.Percolation;
import org.wickwise.column.Setup;
import org.wickwise.substance.StationaryPhase;
import org.wickwise.text.Place;

/** Column sizes: the shipped table, beds, porosity, flow and pressure. */
final class ColumnSizeRows {

    private static final double PASCALS_PER_PSI = 6894.757;
    private static final Place HERE = Place.wholeFile("check-values.tsv");

    private ColumnSizeRows() {}

    static Map<String, UnaryOperator<JsonNode>> rows() {
        Map<String, UnaryOperator<JsonNode>> rows = new TreeMap<>();
        rows.put("CV-301", ColumnSizeRows::rowOfTheTable);
        rows.put("CV-302", ColumnSizeRows::smallest);
        rows.put("CV-303", in -> object().put(
                        "flow_mL_min",
                        Percolation.millilitresPerMinute(
                                number(in, "surface_fall_cm_per_min"), number(in, "diameter_mm"))));
        rows.put("CV-304", ColumnSizeRows::bed);
        rows.put("CV-305", ColumnSizeRows::pores);
        rows.put("CV-306", ColumnSizeRows::porosity);
        rows.put("CV-307", in -> object().put(
                        "V0_mL",
                        Bed.holdUpMillilitres(
                                number(in, "silica_g"), number(in, "packing_g_per_mL"), number(in, "total_porosity"))));
        rows.put("CV-309", in -> object().put(
                        "ratio_easy", Bed.adsorbentRatio(number(in, "silica_g"), number(in, "load_easy_mg")))
                .put("ratio_hard", Bed.adsorbentRatio(number(in, "silica_g"), number(in, "load_hard_mg"))));
        rows.put("CV-311", ColumnSizeRows::byGravity);
        rows.put("CV-312", ColumnSizeRows::byPressure);
        rows.put("CV-313", in -> water(in, "alumina_g"));
        rows.put("CV-315", ColumnSizeRows::pores);
        rows.put("CV-316", in -> object().put(
                        "total_porosity",
                        Bed.porosityFromSkeleton(number(in, "packing_g_per_mL"), number(in, "skeletal_g_per_mL"))));
        rows.put("CV-318", in -> water(in, "alumina_g"));
        rows.put("CV-704", in -> object().put(
                        "ratio", Percolation.pressureRatio(number(in, "eta1_mPas"), number(in, "eta2_mPas"))));
        rows.put("CV-706", in -> object().put(
                        "flow_ratio", Percolation.flowRatio(number(in, "eta1_mPas"), number(in, "eta2_mPas"))));
        return rows;
    }

    private static ColumnSizes table() {
        return Shipped.bench().judge().rulebook().columnSizes();
    }

    private static JsonNode rowOfTheTable(JsonNode in) {
        ColumnSizes table = table();
        double bore = number(in, "diameter_mm");
        ColumnSizes.Row row = table.rows().stream()
                .filter(one -> one.boreMillimetres() == bore)
                .findFirst()
                .orElseThrow();
        return object().put("eluant_mL", row.eluentMillilitres())
                .put(
                        "load_mg_dRf_ge_0_2",
                        table.capacityMilligrams(bore, table.bedMillimetres(), 0.2)
                                .orElseThrow())
                .put(
                        "load_mg_dRf_ge_0_1",
                        table.capacityMilligrams(bore, table.bedMillimetres(), 0.1)
                                .orElseThrow())
                .put("fraction_mL", table.fractionMillilitres(bore).orElseThrow());
    }

    private static JsonNode smallest(JsonNode in) {
        ColumnSizes.Row row = table().smallestFor(number(in, "sample_mg"), number(in, "delta_Rf"))
                .orElseThrow();
        return object().put("diameter_mm", row.boreMillimetres())
                .put("eluant_mL", row.eluentMillilitres())
                .put("fraction_mL", row.fractionMillilitres());
    }

    private static JsonNode bed(JsonNode in) {
        StationaryPhase phase = Shipped.data().stationaryPhases().get(0);
        StationaryPhase asked = new StationaryPhase(
                phase.name(),
                phase.also(),
                phase.kind(),
                phase.ladder(),
                phase.activity(),
                number(in, "packing_g_per_mL"),
                number(in, "total_porosity"),
                phase.figuresFrom(),
                phase.conditioning(),
                phase.holds(),
                phase.keepAway(),
                phase.climb(),
                phase.mineralPercentOfDust(),
                phase.stripsThatSpeakForIt());
        Column column = new Column(
                asked,
                OptionalDouble.of(10 * number(in, "diameter_cm")),
                OptionalDouble.of(10 * number(in, "bed_cm")),
                new Setup(
                        OptionalDouble.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        HERE),
                HERE);
        return object().put("bed_mL", column.bedMillilitres().orElseThrow())
                .put("silica_g", column.bedGrams().orElseThrow())
                .put("V0_mL", column.columnVolumeMillilitres().orElseThrow());
    }

    private static JsonNode pores(JsonNode in) {
        return object().put(
                        "pore_volume_mL_g", Bed.poreMillilitresPerGram(number(in, "pore_A"), number(in, "area_m2_g")));
    }

    private static JsonNode porosity(JsonNode in) {
        double packed = number(in, "packing_g_per_mL");
        return object().put("from_skeleton", Bed.porosityFromSkeleton(packed, number(in, "skeletal_g_per_mL")))
                .put(
                        "from_pores",
                        Bed.porosityFromPores(
                                number(in, "interstitial_porosity"), packed, number(in, "pore_volume_mL_g")));
    }

    private static JsonNode byGravity(JsonNode in) {
        double pascals =
                Percolation.headPascals(1000 * number(in, "liquid_head_m"), number(in, "density_kg_m3") / 1000);
        double surface = percolation(in).surfaceCentimetresPerMinute(pascals, number(in, "viscosity_mPas"));
        return object().put("pressure_Pa", pascals)
                .put("u_cm_min", surface)
                .put("flow_mL_min", Percolation.millilitresPerMinute(surface, 10 * number(in, "diameter_cm")));
    }

    private static JsonNode byPressure(JsonNode in) {
        double pascals = percolation(in).pascalsFor(number(in, "u_cm_min"), number(in, "viscosity_mPas"));
        return object().put("pressure_Pa", pascals).put("psi", pascals / PASCALS_PER_PSI);
    }

    private static Percolation percolation(JsonNode in) {
        return new Percolation(number(in, "dp_um"), number(in, "interstitial_porosity"), 1000 * number(in, "bed_m"));
    }

    private static JsonNode water(JsonNode in, String adsorbent) {
        return object().put("water_g", Bed.deactivatingGramsFor(number(in, adsorbent), number(in, "target_wt_pct")));
    }

    private static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }

    private static double number(JsonNode in, String name) {
        return in.get(name).asDouble();
    }
}
