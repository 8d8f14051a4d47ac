package org.wickwise.checkvalues;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.wickwise.column.Plates;
import org.wickwise.column.RetentionTimes;
import org.wickwise.strip.Repeats;
import org.wickwise.strip.RetardationFactor;
import org.wickwise.strip.Ruler;
import org.wickwise.substance.PolarityIndex;

/** The worked examples of textbooks and course pages: plates, resolution, retention, Rf, blends by polarity index. */
final class WorkedExampleRows {

    private static final double SOME_UNCERTAINTY = 0.01;

    private WorkedExampleRows() {}

    static Map<String, UnaryOperator<JsonNode>> rows() {
        Map<String, UnaryOperator<JsonNode>> rows = new TreeMap<>();
        for (String peak : List.of("A", "B", "C", "D")) {
            rows.put("WD01-plates-" + peak, WorkedExampleRows::platesFromBaseWidth);
            rows.put("WD01-k-" + peak, WorkedExampleRows::retentionFactor);
            rows.put("WD01-distribution-" + peak, WorkedExampleRows::distribution);
        }
        rows.put("WD01-plates-mean", in -> object().put("mean", manyPlates(in).mean()));
        rows.put("WD01-plates-deviation", in -> object().put("s", manyPlates(in).standardDeviation()));
        rows.put("WD01-height", WorkedExampleRows::plateHeight);
        rows.put("WD01-selectivity", WorkedExampleRows::selectivity);
        rows.put("WD01-resolution", in -> object().put("Rs", resolution(in)));
        rows.put("WD01-longer", in -> object().put("length", longer(in)));
        rows.put("WD01-later", in -> object().put(
                        "retention",
                        RetentionTimes.onAnotherLength(
                                in.get("retention").get(1).asDouble(), number(in, "length"), longer(in))));
        rows.put("WD02-adjusted", WorkedExampleRows::adjustedFromChart);
        rows.put("WD02-k", WorkedExampleRows::retentionFactor);
        rows.put("WD02-resolution", in -> object().put("Rs", resolution(in)));
        rows.put("WD02-plates", WorkedExampleRows::platesFromBaseWidth);
        rows.put("WD02-height", WorkedExampleRows::plateHeight);
        for (String substance : List.of("aspirin", "caffeine")) {
            rows.put("WD03-k-" + substance, WorkedExampleRows::retentionFactor);
            rows.put("WD03-base-" + substance, WorkedExampleRows::platesFromBaseWidth);
            rows.put("WD03-half-height-" + substance, WorkedExampleRows::platesFromHalfHeight);
        }
        rows.put("WD03-selectivity", WorkedExampleRows::selectivity);
        rows.put("WD03-resolution", in -> object().put("Rs", resolution(in)));
        for (String page : List.of(
                "zollege", "ukessays", "chilli-1", "chilli-2", "hexane-1", "hexane-2", "toluene-1", "toluene-2")) {
            rows.put("WD04-" + page, WorkedExampleRows::retardation);
        }
        rows.put("WD05-resolution", in -> object().put("Rs", resolution(in)));
        rows.put("WD05-plates", WorkedExampleRows::platesFromBaseWidth);
        rows.put("WD05-plates-again", WorkedExampleRows::platesFromBaseWidth);
        rows.put("WD05-height", WorkedExampleRows::plateHeight);
        rows.put("WD06-k", WorkedExampleRows::retentionFactor);
        rows.put("WD06-blend", WorkedExampleRows::blend);
        rows.put("WD06-ratio", WorkedExampleRows::ratioOnAReversedPhase);
        rows.put("WD06-share", WorkedExampleRows::share);
        rows.put("WD06-share-printed", WorkedExampleRows::share);
        for (String hundredRf : List.of("10", "20", "25", "35", "50", "80")) {
            rows.put("WD07-" + hundredRf, WorkedExampleRows::fromRf);
        }
        return rows;
    }

    private static JsonNode platesFromBaseWidth(JsonNode in) {
        return object().put("N", Plates.fromBaseWidth(number(in, "retention"), number(in, "base_width")));
    }

    private static JsonNode platesFromHalfHeight(JsonNode in) {
        return object().put("N", Plates.fromHalfHeightWidth(number(in, "retention"), number(in, "half_height_width")));
    }

    private static Repeats manyPlates(JsonNode in) {
        List<Double> retention = numbers(in.get("retention"));
        List<Double> width = numbers(in.get("base_width"));
        return Repeats.of(IntStream.range(0, retention.size())
                .mapToObj(i -> Plates.fromBaseWidth(retention.get(i), width.get(i)))
                .toList());
    }

    private static JsonNode plateHeight(JsonNode in) {
        return object().put("H", Plates.plateHeight(number(in, "length"), number(in, "N")));
    }

    private static JsonNode retentionFactor(JsonNode in) {
        return object().put("k", RetentionTimes.retentionFactor(number(in, "retention"), number(in, "unretained")));
    }

    private static JsonNode distribution(JsonNode in) {
        double k = RetentionTimes.retentionFactor(number(in, "retention"), number(in, "unretained"));
        return object().put(
                        "K",
                        RetentionTimes.distributionConstant(k, number(in, "mobile_mL"), number(in, "stationary_mL")));
    }

    private static JsonNode selectivity(JsonNode in) {
        List<Double> k = numbers(in.get("retention")).stream()
                .map(retention -> RetentionTimes.retentionFactor(retention, number(in, "unretained")))
                .toList();
        return object().put("alpha", RetentionTimes.selectivity(k.get(0), k.get(1)));
    }

    private static double resolution(JsonNode in) {
        List<Double> retention = numbers(in.get("retention"));
        List<Double> width = numbers(in.get("base_width"));
        return Plates.resolution(retention.get(0), retention.get(1), width.get(0), width.get(1));
    }

    private static double longer(JsonNode in) {
        return Plates.lengthForResolution(number(in, "length"), resolution(in), number(in, "wanted"));
    }

    private static JsonNode adjustedFromChart(JsonNode in) {
        double speed = number(in, "chart_cm_per_min");
        return object().put(
                        "adjusted",
                        RetentionTimes.adjusted(
                                number(in, "retention_cm") / speed, number(in, "unretained_cm") / speed));
    }

    private static JsonNode retardation(JsonNode in) {
        return object().put(
                        "Rf",
                        RetardationFactor.measured(number(in, "travel_mm"), number(in, "front_mm"), new Ruler(1, 0))
                                .value());
    }

    private static JsonNode blend(JsonNode in) {
        return object().put("P", PolarityIndex.ofBlend(array(in.get("shares")), array(in.get("indices"))));
    }

    private static JsonNode ratioOnAReversedPhase(JsonNode in) {
        return object().put("ratio", PolarityIndex.retentionRatioReversedPhase(number(in, "from"), number(in, "to")));
    }

    private static JsonNode share(JsonNode in) {
        double share =
                PolarityIndex.shareForPolarityIndex(number(in, "wanted"), number(in, "weak"), number(in, "strong"));
        return object().put("percent", 100 * share);
    }

    private static JsonNode fromRf(JsonNode in) {
        RetardationFactor factor = new RetardationFactor(number(in, "Rf"), SOME_UNCERTAINTY);
        return object().put("k", factor.retentionFactor()).put("column_volumes", factor.columnVolumes());
    }

    private static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }

    private static double number(JsonNode in, String name) {
        return in.get(name).asDouble();
    }

    private static double[] array(JsonNode array) {
        return numbers(array).stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static List<Double> numbers(JsonNode array) {
        List<Double> numbers = new ArrayList<>();
        array.forEach(one -> numbers.add(one.asDouble()));
        return numbers;
    }
}
