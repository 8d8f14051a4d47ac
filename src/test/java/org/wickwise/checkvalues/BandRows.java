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
import org.wickwise.column.Band;
import org.wickwise.column.BandOnBed;
import org.wickwise.column.CellSteps;
import org.wickwise.column.Craig;
import org.wickwise.column.EluentFront;
import org.wickwise.column.LinearStrengthGradient;
import org.wickwise.column.LoadPlug;
import org.wickwise.column.MixingCells;
import org.wickwise.column.Outflow;
import org.wickwise.column.Plates;
import org.wickwise.column.Pour;
import org.wickwise.column.PowerLawGradient;
import org.wickwise.column.Resolution;
import org.wickwise.strip.RetardationFactor;

/** Bands in the column: plates, resolution, steps of eluent, gradients, loads and mixing cells. */
final class BandRows {

    private static final double SOME_UNCERTAINTY = 0.01;
    private static final double SOME_PLATES = 100;
    /** The last pour goes on as long as it takes. */
    private static final double ON = 1;

    private BandRows() {}

    static Map<String, UnaryOperator<JsonNode>> rows() {
        Map<String, UnaryOperator<JsonNode>> rows = new TreeMap<>();
        rows.put("CV-308", BandRows::retentionOfTwoRf);
        rows.put("CV-310", BandRows::resolutionOfTwoRf);
        rows.put("CV-314", BandRows::fractionsInBand);
        rows.put("CV-317", BandRows::resolutionOfTwoRf);
        rows.put("CV-401", BandRows::plates);
        rows.put("CV-402", in -> object().put(
                        "Rs",
                        Plates.resolution(number(in, "t1"), number(in, "t2"), number(in, "w1"), number(in, "w2"))));
        rows.put("CV-403", in -> purnell(in, 1.5, "N_for_Rs_1_5"));
        rows.put("CV-404", in -> object().put(
                        "n_c", Resolution.peakCapacity(number(in, "N"), number(in, "V_min"), number(in, "V_max"))));
        rows.put("CV-405", BandRows::craigFractions);
        rows.put("CV-406", BandRows::craigTube);
        rows.put("CV-407", BandRows::craigElution);
        rows.put("CV-408", BandRows::oneStep);
        rows.put("CV-409", BandRows::twoSteps);
        rows.put("CV-410", BandRows::front);
        rows.put("CV-411", BandRows::creep);
        rows.put("CV-412", BandRows::load);
        rows.put("CV-413", in -> object().put(
                        "Da_cm2_min",
                        Plates.apparentDispersion(number(in, "u_cm_min"), number(in, "L_cm"), number(in, "N"))));
        rows.put("CV-414", BandRows::cells);
        rows.put("CV-415", BandRows::linearStrength);
        rows.put("CV-416", BandRows::powerLaw);
        rows.put("CV-417", BandRows::mass);
        rows.put("CV-418", BandRows::wholeCells);
        rows.put("CV-419", in -> purnell(in, 1.0, "N_for_Rs_1_0"));
        rows.put("CV-420", in -> object().put(
                        "n_c", Resolution.isocraticPeakCapacity(number(in, "N"), number(in, "k_max"))));
        return rows;
    }

    private static ObjectNode retentionOfTwoRf(JsonNode in) {
        double v0 = number(in, "V0_mL");
        double first = isocratic(number(in, "Rf1"), v0).middleMillilitres();
        double second = isocratic(number(in, "Rf2"), v0).middleMillilitres();
        return object().put("VR1_mL", first)
                .put("VR2_mL", second)
                .put("CV1", first / v0)
                .put("CV2", second / v0)
                .put("dCV", (second - first) / v0);
    }

    private static Band isocratic(double rf, double columnVolume) {
        double k = new RetardationFactor(rf, SOME_UNCERTAINTY).retentionFactor();
        return Band.of(List.of(new Pour(ON, k)), columnVolume, SOME_PLATES).orElseThrow();
    }

    private static ObjectNode resolutionOfTwoRf(JsonNode in) {
        return object().put(
                        "Rs",
                        Resolution.ofRetardationFactors(number(in, "N"), number(in, "Rf_fast"), number(in, "Rf_slow")));
    }

    /** Any V0 and k that give the row's elution volume. */
    private static ObjectNode fractionsInBand(JsonNode in) {
        double v0 = 1;
        Band band = Band.of(List.of(new Pour(ON, number(in, "VR_mL") / v0 - 1)), v0, number(in, "N"))
                .orElseThrow();
        return object().put("sigma_mL", band.sigmaMillilitres())
                .put("width_4sigma_mL", band.baseWidthMillilitres())
                .put("fractions_in_band", band.fractionsOf(number(in, "fraction_mL")));
    }

    private static ObjectNode plates(JsonNode in) {
        double plates = Plates.fromBaseWidth(number(in, "tR_min"), number(in, "w_base_min"));
        return object().put("N", plates).put("H_mm", Plates.plateHeight(number(in, "column_mm"), plates));
    }

    private static ObjectNode purnell(JsonNode in, double wanted, String key) {
        double alpha = number(in, "alpha");
        double k2 = number(in, "k2");
        return object().put("Rs", Resolution.purnell(number(in, "N"), alpha, k2))
                .put(key, Resolution.platesNeeded(wanted, alpha, k2));
    }

    private static Craig craig(JsonNode in) {
        return Craig.of(number(in, "D"), number(in, "V_up_over_low"));
    }

    private static ObjectNode craigFractions(JsonNode in) {
        ArrayNode fractions = JsonNodeFactory.instance.arrayNode();
        for (double share : craig(in).after(in.get("n").asInt())) {
            fractions.add(share);
        }
        return object().set("fractions", fractions);
    }

    private static ObjectNode craigTube(JsonNode in) {
        int transfers = in.get("n").asInt();
        double[] share = craig(in).after(transfers);
        return object().put("p", craig(in).moved())
                .put("f_tube8", share[8])
                .put("f_tube10", share[10])
                .put("mean_tube", craig(in).meanTube(transfers))
                .put("sigma_tube", craig(in).sigmaTubes(transfers));
    }

    private static ObjectNode craigElution(JsonNode in) {
        int tubes = in.get("N_tubes").asInt();
        Craig craig = Craig.ofRetentionFactor(number(in, "k"));
        return object().put("mean_transfers", craig.meanTransfersToLeave(tubes))
                .put("sigma_transfers", craig.sigmaTransfersToLeave(tubes))
                .put("N_apparent", craig.apparentPlates(tubes));
    }

    private static ObjectNode oneStep(JsonNode in) {
        double v0 = number(in, "V0");
        double plates = number(in, "N");
        double k2 = number(in, "k2");
        Pour first = new Pour(number(in, "V_switch"), number(in, "k1"));
        BandOnBed caught = BandOnBed.loaded().after(first, v0, plates);
        Band band = Band.of(List.of(first, new Pour(ON, k2)), v0, plates).orElseThrow();
        return object().put("x_caught", caught.position())
                .put("V_caught", caught.overtakenAtMillilitres(v0))
                .put("VR", band.middleMillilitres())
                .put("G", BandOnBed.compression(first.retentionFactor(), k2))
                .put("sigma_V", band.sigmaMillilitres());
    }

    private static ObjectNode twoSteps(JsonNode in) {
        double v0 = number(in, "V0");
        double plates = number(in, "N");
        JsonNode k = in.get("k");
        ArrayNode position = JsonNodeFactory.instance.arrayNode();
        List<Pour> pours = new ArrayList<>();
        BandOnBed band = BandOnBed.loaded();
        double poured = 0;
        for (int i = 0; i < in.get("V_switch").size(); i++) {
            double end = in.get("V_switch").get(i).asDouble();
            Pour pour = new Pour(end - poured, k.get(i).asDouble());
            pours.add(pour);
            poured = end;
            band = band.after(pour, v0, plates);
            position.add(band.position());
        }
        pours.add(new Pour(ON, k.get(k.size() - 1).asDouble()));
        Band out = Band.of(pours, v0, plates).orElseThrow();
        return object().put("VR", out.middleMillilitres())
                .put("sigma_V", out.sigmaMillilitres())
                .set("x_after", position);
    }

    private static ObjectNode front(JsonNode in) {
        double poured = number(in, "V_switch");
        double v0 = number(in, "V0");
        return object().put("V_front_unretained", EluentFront.atOutletMillilitres(poured, v0, 0))
                .put("V_front_retained", EluentFront.atOutletMillilitres(poured, v0, number(in, "k_modifier")));
    }

    private static ObjectNode creep(JsonNode in) {
        double k = new RetardationFactor(number(in, "Rf"), SOME_UNCERTAINTY).retentionFactor();
        BandOnBed held = BandOnBed.loaded().after(new Pour(number(in, "wash_CV"), k), 1, SOME_PLATES);
        return object().put("k", k).put("x_fraction_of_bed", held.position());
    }

    private static ObjectNode load(JsonNode in) {
        LoadPlug loaded = LoadPlug.of(number(in, "V_inj"), number(in, "V0"), number(in, "k_load"));
        LoadPlug stepped = loaded.overtakenBy(number(in, "k_elute"));
        return object().put("plug_fraction_of_bed", loaded.shareOfBed())
                .put("plug_after_step", stepped.shareOfBed())
                .put("plug_volume_out", stepped.millilitresAtOutlet(number(in, "V0")));
    }

    private static ObjectNode cells(JsonNode in) {
        double plates = number(in, "N_target");
        double share = number(in, "lam");
        return object().put("cells_explicit", CellSteps.EXPLICIT.cellsFor(plates, share))
                .put("cells_implicit", CellSteps.IMPLICIT.cellsFor(plates, share))
                .put("cells_tanks", CellSteps.EXACT.cellsFor(plates, share));
    }

    private static ObjectNode linearStrength(JsonNode in) {
        LinearStrengthGradient gradient = new LinearStrengthGradient(
                number(in, "k0"),
                number(in, "S"),
                number(in, "dphi"),
                number(in, "t0"),
                number(in, "tG"),
                number(in, "tD"));
        return object().put("b", gradient.steepness())
                .put("tR", gradient.retention())
                .put("k_e", gradient.retentionFactorAtOutlet());
    }

    private static ObjectNode powerLaw(JsonNode in) {
        PowerLawGradient gradient =
                new PowerLawGradient(number(in, "k0"), number(in, "m"), number(in, "A"), number(in, "B_per_mL"));
        return object().put("VR", gradient.elutionMillilitres(number(in, "V0")));
    }

    private static ObjectNode mass(JsonNode in) {
        Outflow outflow = new MixingCells(10, 100).pour(List.of(new Pour(30, 20), new Pour(9, 1)));
        double out = 0;
        for (int i = 0; i < outflow.portions(); i++) {
            out += outflow.share(i);
        }
        return object().put("sum_out_plus_in_bed", number(in, "injected") * (out + outflow.leftOnBed()));
    }

    private static ObjectNode wholeCells(JsonNode in) {
        List<Pour> pours = List.of(new Pour(number(in, "V_switch"), number(in, "k1")), new Pour(ON, number(in, "k2")));
        Band band = Craig.throughTubes(pours, number(in, "V0"), in.get("cells").asInt())
                .band()
                .orElseThrow();
        return object().put("VR", band.middleMillilitres()).put("sigma_V", band.sigmaMillilitres());
    }

    private static double number(JsonNode in, String key) {
        return in.get(key).asDouble();
    }

    private static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }
}
