package org.wickwise.checkvalues;

import static org.wickwise.checkvalues.Cells.each;
import static org.wickwise.checkvalues.Cells.limit;
import static org.wickwise.checkvalues.Cells.number;
import static org.wickwise.checkvalues.Cells.object;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.wickwise.Shipped;
import org.wickwise.column.DissolvedBed;
import org.wickwise.substance.Solvent;

/** What a bed stands. */
final class BedRows {

    private BedRows() {}

    static Map<String, UnaryOperator<JsonNode>> rows() {
        Map<String, UnaryOperator<JsonNode>> rows = new TreeMap<>();
        rows.put("CV-701", BedRows::solubility);
        rows.put("CV-702", BedRows::loss);
        rows.put("CV-703", in -> object().set("direct", each(in.get("cases"), BedRows::mayFollow)));
        rows.put("CV-705", BedRows::firstEluent);
        return rows;
    }

    private static JsonNode solubility(JsonNode in) {
        return object().put("mg_per_kg", DissolvedBed.milligramsPerKilogram(number(in, "molal"), number(in, "M")));
    }

    private static JsonNode loss(JsonNode in) {
        DissolvedBed lost = DissolvedBed.by(number(in, "water_L"), number(in, "solubility_mg_L"), number(in, "bed_g"));
        return object().put("loss_g", lost.grams()).put("loss_pct", lost.percentOfBed());
    }

    private static JsonNode mayFollow(JsonNode pair) {
        return BooleanNode.valueOf(Shipped.data()
                .miscibility()
                .parting(solvent(pair.get(0)), solvent(pair.get(1)))
                .isEmpty());
    }

    private static Solvent solvent(JsonNode name) {
        return Shipped.data().solvent(name.asText()).orElseThrow();
    }

    /** From nothing of the stronger solvent one begins with the gentle start; the rule heat-on-first-contact uses it. */
    private static JsonNode firstEluent(JsonNode in) {
        return object().put("lag_CV", limit("stripping of the first eluent"))
                .put("advised_start_pct", Math.max(number(in, "start_pct_ethyl_acetate"), limit("gentle start limit")));
    }
}
