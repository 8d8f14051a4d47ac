package org.wickwise.checkvalues;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.StreamSupport;
import org.wickwise.Shipped;
import org.wickwise.strip.RetardationFactor;
import org.wickwise.strip.RetentionLaw;
import org.wickwise.substance.EluentStrength;
import org.wickwise.substance.PolarityIndex;

/** Strength of blends, and how retention follows it. */
final class StrengthRows {

    /** For rows that are not about uncertainty. */
    private static final double SOME_UNCERTAINTY = 0.01;

    private StrengthRows() {}

    static Map<String, UnaryOperator<JsonNode>> rows() {
        Map<String, UnaryOperator<JsonNode>> rows = new TreeMap<>();
        rows.put("CV-201", StrengthRows::displacement);
        rows.put("CV-202", in -> third(in, number(in, "RM1"), number(in, "RM2")));
        rows.put("CV-203", StrengthRows::binary);
        rows.put("CV-204", in -> object().put("eps_at_N0", strength(in, 0)).put("eps_at_N1", strength(in, 1)));
        rows.put("CV-205", StrengthRows::inverse);
        rows.put("CV-206", StrengthRows::soczewinski);
        rows.put("CV-207", in -> object().put(
                        "k", RetentionLaw.linearSolventStrength(number(in, "kw"), number(in, "S"), number(in, "phi"))));
        rows.put("CV-208", in -> object().put(
                        "k",
                        RetentionLaw.jandera(number(in, "a"), number(in, "b"), number(in, "m"), number(in, "phi"))));
        rows.put("CV-209", in -> object().put(
                        "P_mix", PolarityIndex.ofBlend(numbers(in.get("phi")), numbers(in.get("P")))));
        rows.put("CV-210", StrengthRows::polarityStep);
        rows.put("CV-211", StrengthRows::isoeluotropic);
        rows.put("CV-212", in -> third(in, rm(number(in, "Rf1")), rm(number(in, "Rf2"))));
        rows.put("CV-213", StrengthRows::polarityStep);
        return rows;
    }

    private static ObjectNode displacement(JsonNode in) {
        double before = Math.log10(number(in, "k1"));
        double after = RetentionLaw.displacement(
                before, number(in, "eps1"), number(in, "eps2"), number(in, "alpha") * number(in, "As"));
        return object().put("dRM", after - before)
                .put("k2", RetardationFactor.ofRm(after, SOME_UNCERTAINTY).retentionFactor());
    }

    private static ObjectNode third(JsonNode in, double first, double second) {
        double slope = RetentionLaw.activityTimesArea(first, number(in, "eps1"), second, number(in, "eps2"));
        double rm = RetentionLaw.displacement(first, number(in, "eps1"), number(in, "eps3"), slope);
        return object().put("alphaAs", slope)
                .put("RM3", rm)
                .put("Rf3", RetardationFactor.ofRm(rm, SOME_UNCERTAINTY).value());
    }

    private static ObjectNode binary(JsonNode in) {
        double fraction = EluentStrength.moleFraction(number(in, "phi_B"), moles(in, "A"), moles(in, "B"));
        return object().put("N_B", fraction).put("eps_AB", strength(in, fraction));
    }

    private static ObjectNode inverse(JsonNode in) {
        double fraction = EluentStrength.moleFractionFor(
                number(in, "eps_target"),
                number(in, "eps_A"),
                number(in, "eps_B"),
                number(in, "alpha"),
                number(in, "n_b"));
        return object().put("N_B", fraction)
                .put("phi_B", EluentStrength.volumeShare(fraction, moles(in, "A"), moles(in, "B")));
    }

    private static double strength(JsonNode in, double fraction) {
        return EluentStrength.ofBinary(
                number(in, "eps_A"), number(in, "eps_B"), number(in, "alpha"), number(in, "n_b"), fraction);
    }

    private static double moles(JsonNode in, String part) {
        return number(in, "rho_" + part) / number(in, "M_" + part);
    }

    private static ObjectNode soczewinski(JsonNode in) {
        double k = RetentionLaw.soczewinski(number(in, "k_at_10pct"), 0.1, number(in, "phi2"), number(in, "n"));
        return object().put("k2", k)
                .put(
                        "Rf2",
                        RetardationFactor.ofRm(Math.log10(k), SOME_UNCERTAINTY).value());
    }

    private static ObjectNode polarityStep(JsonNode in) {
        double[] indices = numbers(in.get("P"));
        double[] shares = numbers(in.get("phiB"));
        double from = PolarityIndex.ofBlend(new double[] {1 - shares[0], shares[0]}, indices);
        double to = PolarityIndex.ofBlend(new double[] {1 - shares[1], shares[1]}, indices);
        return object().put("P1", from)
                .put("P2", to)
                .put("k2_over_k1", PolarityIndex.retentionRatioNormalPhase(from, to));
    }

    private static ObjectNode isoeluotropic(JsonNode in) {
        return object().put(
                        "acetonitrile_pct",
                        PolarityIndex.isoeluotropicPercent(
                                number(in, "methanol_pct"), equivalent("methanol"), equivalent("acetonitrile")));
    }

    private static double equivalent(String solvent) {
        return Shipped.data()
                .solvent(solvent)
                .orElseThrow()
                .number("reversed-phase equivalent")
                .orElseThrow();
    }

    private static double rm(double rf) {
        return new RetardationFactor(rf, SOME_UNCERTAINTY).rm();
    }

    private static double number(JsonNode in, String name) {
        return in.get(name).asDouble();
    }

    private static double[] numbers(JsonNode several) {
        return StreamSupport.stream(several.spliterator(), false)
                .mapToDouble(JsonNode::asDouble)
                .toArray();
    }

    private static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }
}
