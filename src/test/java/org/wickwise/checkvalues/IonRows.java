package org.wickwise.checkvalues;

import static org.wickwise.checkvalues.Cells.number;
import static org.wickwise.checkvalues.Cells.object;
import static org.wickwise.checkvalues.Cells.words;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.wickwise.Shipped;
import org.wickwise.column.RetentionTimes;
import org.wickwise.plan.Plan;
import org.wickwise.plan.Step;
import org.wickwise.rulebook.Conclusion;
import org.wickwise.strip.Behaviour;
import org.wickwise.strip.IonicRetention;
import org.wickwise.strip.IonisableDye;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.Solvent;

/** Salt, acidity and dyes that carry a charge. */
final class IonRows {

    private IonRows() {}

    static Map<String, UnaryOperator<JsonNode>> rows() {
        Map<String, UnaryOperator<JsonNode>> rows = new TreeMap<>();
        rows.put("CV-801", IonRows::salt);
        rows.put("CV-802", IonRows::ionExchange);
        rows.put("CV-803", IonRows::ionisable);
        rows.put("CV-804", in -> object().put(
                        "k", RetentionTimes.retentionFactor(number(in, "tR_s"), number(in, "t0_s"))));
        rows.put("CV-805", IonRows::orderOnReversedPhase);
        rows.put("CV-806", IonRows::ionExchange);
        return rows;
    }

    private static JsonNode salt(JsonNode in) {
        double molarMass = solvent("sodium chloride brine").number("molar mass").orElseThrow();
        double molality = IonicRetention.molality(number(in, "wt_pct_NaCl"), molarMass);
        return object().put("molality", molality).put("debye_nm", IonicRetention.debyeNanometres(molality));
    }

    private static JsonNode ionExchange(JsonNode in) {
        return object().put(
                        "k_factor",
                        IonicRetention.retentionChange(
                                in.get("z_dye").asInt(), in.get("z_counter").asInt(), number(in, "salt_factor")));
    }

    private static JsonNode ionisable(JsonNode in) {
        IonisableDye dye = new IonisableDye(number(in, "k_HA"), number(in, "k_A"), number(in, "pKa"));
        return object().put("fraction_ionised", dye.ionisedShare(number(in, "pH")))
                .put("k", dye.retentionFactor(number(in, "pH")));
    }

    /** What the plan for the published readings holds, and which dyes it lets go in which of its eluents. */
    private static JsonNode orderOnReversedPhase(JsonNode in) {
        Plan plan = Shipped.planOf(Shipped.PUBLISHED.resolve("d03-grape-drink-c18.yaml"));
        ObjectNode found = object();
        in.get("steps_pct_methanol").forEach(percent -> {
            List<String> held = heldAt(plan, percent.asDouble());
            List<String> out = outAt(plan, percent.asDouble());
            found.set("held_at_" + percent.asInt(), words(held));
            found.set("out_at_" + percent.asInt(), words(out));
        });
        return found;
    }

    /** In the order in which they leave later. */
    private static List<String> heldAt(Plan plan, double percentMethanol) {
        return plan.route().orElseThrow().steps().stream()
                .map(Step::leaving)
                .flatMap(List::stream)
                .filter(dye -> plan.judgement().all(Conclusion.Behaves.class).stream()
                        .filter(behaves -> isMethanolInWater(behaves.eluent(), percentMethanol))
                        .anyMatch(behaves -> behaves.dye().equals(dye) && behaves.behaviour() == Behaviour.STAYS))
                .map(Dye::name)
                .toList();
    }

    private static List<String> outAt(Plan plan, double percentMethanol) {
        return plan.route().orElseThrow().steps().stream()
                .filter(step -> isMethanolInWater(step.eluent(), percentMethanol))
                .map(Step::leaving)
                .flatMap(List::stream)
                .map(Dye::name)
                .toList();
    }

    private static boolean isMethanolInWater(Eluent eluent, double percent) {
        return eluent.percentOf(solvent("methanol")) == percent && eluent.percentOf(solvent("water")) == 100 - percent;
    }

    private static Solvent solvent(String name) {
        return Shipped.data().solvent(name).orElseThrow();
    }
}
