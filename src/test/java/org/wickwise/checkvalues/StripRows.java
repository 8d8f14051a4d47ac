package org.wickwise.checkvalues;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.wickwise.Shipped;
import org.wickwise.strip.CensoredReading;
import org.wickwise.strip.Dixon;
import org.wickwise.strip.Outliers;
import org.wickwise.strip.PlaneToColumn;
import org.wickwise.strip.Repeats;
import org.wickwise.strip.RetardationFactor;
import org.wickwise.strip.Ruler;
import org.wickwise.strip.WeightedMean;

/** Strips: Rf, RM and k with their uncertainty, replicates, outliers, two spots compared. */
final class StripRows {

    /** For rows that are not about uncertainty. */
    private static final double SOME_UNCERTAINTY = 0.01;

    private static final Ruler SOME_RULER = new Ruler(1, 0);

    private StripRows() {}

    static Map<String, UnaryOperator<JsonNode>> rows() {
        Map<String, UnaryOperator<JsonNode>> rows = new TreeMap<>();
        rows.put("CV-101", in -> object().put("Rf", reading(in, SOME_RULER).value()));
        rows.put("CV-102", StripRows::severalSpots);
        rows.put("CV-103", StripRows::rmAndRetention);
        rows.put("CV-104", StripRows::fromRm);
        rows.put("CV-105", StripRows::planeToColumn);
        rows.put("CV-106", in -> uncertainties(in, new Ruler(number(in, "division_mm"), 0)));
        rows.put(
                "CV-107",
                in -> uncertainties(in, new Ruler(number(in, "division_mm"), number(in, "spot_centre_halfwidth_mm"))));
        rows.put("CV-108", StripRows::atOrigin);
        rows.put("CV-109", StripRows::repeats);
        rows.put("CV-110", StripRows::weighted);
        rows.put("CV-111", StripRows::grubbs);
        rows.put("CV-112", StripRows::grubbsCritical);
        rows.put("CV-113", StripRows::robust);
        rows.put("CV-114", StripRows::dixon);
        rows.put("CV-115", StripRows::compared);
        rows.put("CV-116", StripRows::fromRm);
        rows.put("CV-117", StripRows::atFront);
        rows.put("CV-118", StripRows::compared);
        return rows;
    }

    private static JsonNode severalSpots(JsonNode in) {
        ObjectNode found = object();
        in.get("spot_cm")
                .properties()
                .forEach(spot -> found.put(
                        spot.getKey(),
                        RetardationFactor.measured(
                                        10 * spot.getValue().asDouble(), 10 * number(in, "front_cm"), SOME_RULER)
                                .value()));
        return object().set("Rf", found);
    }

    private static JsonNode rmAndRetention(JsonNode in) {
        RetardationFactor factor = new RetardationFactor(number(in, "Rf"), SOME_UNCERTAINTY);
        return object().put("RM", factor.rm()).put("k", factor.retentionFactor());
    }

    private static JsonNode fromRm(JsonNode in) {
        return object().put(
                        "Rf",
                        RetardationFactor.ofRm(number(in, "RM"), SOME_UNCERTAINTY)
                                .value());
    }

    private static JsonNode planeToColumn(JsonNode in) {
        PlaneToColumn transfer = new PlaneToColumn(number(in, "xi"), number(in, "phase_ratio_col_over_plate"));
        double observed = number(in, "Rf_obs");
        return object().put("Rf_true", transfer.retardation(observed))
                .put("k_plate", transfer.retentionOnPlane(observed))
                .put("k_col", transfer.retentionOnColumn(observed));
    }

    private static JsonNode uncertainties(JsonNode in, Ruler ruler) {
        RetardationFactor factor = reading(in, ruler);
        return object().put("u_reading_mm", ruler.readingMillimetres())
                .put("u_spot_mm", ruler.spotMillimetres())
                .put("u_Rf", factor.uncertainty())
                .put("u_RM", factor.rmUncertainty())
                .put("u_k", factor.retentionUncertainty());
    }

    private static JsonNode atOrigin(JsonNode in) {
        CensoredReading reading = CensoredReading.atOrigin(number(in, "resolution_mm"), number(in, "development_mm"));
        return object().put("Rf_max", reading.retardationBound()).put("k_min", reading.retentionBound());
    }

    private static JsonNode atFront(JsonNode in) {
        CensoredReading reading = CensoredReading.atFront(number(in, "resolution_mm"), number(in, "development_mm"));
        return object().put("Rf_min", reading.retardationBound()).put("k_max", reading.retentionBound());
    }

    private static JsonNode repeats(JsonNode in) {
        Repeats repeats = Repeats.of(numbers(in.get("Rf")));
        return object().put("mean", repeats.mean())
                .put("s", repeats.standardDeviation())
                .put("u_mean", repeats.uncertainty())
                .put("half_width_95", repeats.halfWidth(0.95));
    }

    private static JsonNode weighted(JsonNode in) {
        List<RetardationFactor> factors = new ArrayList<>();
        for (int i = 0; i < in.get("Rf").size(); i++) {
            factors.add(new RetardationFactor(
                    in.get("Rf").get(i).asDouble(), in.get("u").get(i).asDouble()));
        }
        WeightedMean mean = WeightedMean.of(
                factors.stream().map(RetardationFactor::asNumber).toList());
        return object().put("mean", RetardationFactor.combined(factors).value())
                .put("u_internal", mean.internalUncertainty())
                .put("chi2", mean.chiSquare())
                .put("dof", mean.degreesOfFreedom())
                .put("u_reported", RetardationFactor.combined(factors).uncertainty());
    }

    private static JsonNode grubbs(JsonNode in) {
        double level = number(in, "alpha");
        Outliers.Grubbs grubbs = Outliers.grubbs(numbers(in.get("x")));
        return object().put("G", grubbs.statistic())
                .put("G_crit_one_sided", Outliers.criticalOneSided(grubbs.count(), level))
                .put("G_crit_two_sided", Outliers.criticalTwoSided(grubbs.count(), level))
                .put("outlier", grubbs.isOutlier(level));
    }

    private static JsonNode grubbsCritical(JsonNode in) {
        ArrayNode found = JsonNodeFactory.instance.arrayNode();
        in.get("n").forEach(count -> found.add(Outliers.criticalOneSided(count.asInt(), 0.05)));
        return object().set("G_crit", found);
    }

    private static JsonNode robust(JsonNode in) {
        List<Double> values = numbers(in.get("Rf"));
        Outliers.Robust robust = Outliers.robust(values, 0);
        double limit =
                Shipped.bench().judge().rulebook().limits().get("outlier limit").value();
        ArrayNode flagged = JsonNodeFactory.instance.arrayNode();
        values.stream()
                .filter(value -> Math.abs(robust.modifiedZ(value)) > limit)
                .forEach(flagged::add);
        ObjectNode found = object().put("median", robust.median())
                .put("MAD", robust.medianDeviation())
                .put("s_robust", robust.scatter())
                .put("modified_z_of_0_62", robust.modifiedZ(0.62))
                .put("Grubbs_G", Outliers.grubbs(values).statistic())
                .put("Grubbs_crit_two_sided_5pct", Outliers.criticalTwoSided(values.size(), 0.05));
        return found.set("flagged", flagged);
    }

    private static JsonNode dixon(JsonNode in) {
        Dixon dixon = Dixon.of(numbers(in.get("x")));
        return object().put("Q", dixon.ratio())
                .put("Q_crit_90pct_n10", dixon.critical90())
                .put("reject_at_90pct", dixon.ratio() > dixon.critical90());
    }

    private static JsonNode compared(JsonNode in) {
        RetardationFactor one = new RetardationFactor(number(in, "Rf1"), number(in, "u1"));
        RetardationFactor other = new RetardationFactor(number(in, "Rf2"), number(in, "u2"));
        return object().put("z", one.timesUncertaintyFrom(other))
                .put("different_at_95pct", one.differsFrom(other, 0.95));
    }

    /** The rows give readings of a ruler; a strip counts from its origin. */
    private static RetardationFactor reading(JsonNode in, Ruler ruler) {
        double origin = number(in, "origin_mm");
        return RetardationFactor.measured(number(in, "spot_mm") - origin, number(in, "front_mm") - origin, ruler);
    }

    private static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }

    private static double number(JsonNode in, String name) {
        return in.get(name).asDouble();
    }

    private static List<Double> numbers(JsonNode array) {
        List<Double> numbers = new ArrayList<>();
        array.forEach(one -> numbers.add(one.asDouble()));
        return numbers;
    }
}
