package org.wickwise.substance;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.wickwise.substance.StationaryPhase.AdsorbentActivity;
import org.wickwise.substance.StationaryPhase.Climb;
import org.wickwise.substance.StationaryPhase.LadderScale;
import org.wickwise.text.Bounds;
import org.wickwise.text.Fields;
import org.wickwise.text.NearMiss;
import org.wickwise.text.Node;
import org.wickwise.text.Node.Entry;
import org.wickwise.text.Node.Mapping;
import org.wickwise.text.Node.Scalar;
import org.wickwise.text.Problems;

/** Reads the files of the stationary phases. Names in them are looked up when all files are read. */
final class StationaryPhaseFiles {

    private static final String LOWEST = "lowest value";
    private static final String HIGHEST = "highest value";

    /** No stationary phase in use is denser than its mineral. */
    private static final Bounds PACKED_DENSITY = Bounds.aboveZeroTo(5, "g/mL");

    private static final Bounds POROSITY =
            new Bounds(share -> share > 0 && share < 1, "a number above 0 and below 1", "");

    private final Map<String, String> unitOfProperty;
    private final Problems problems;

    /** Names of phases in the files of other phases. */
    private final List<Scalar> phasesSpeakingForOthers = new ArrayList<>();

    private final List<Scalar> climbingLiquids = new ArrayList<>();

    StationaryPhaseFiles(Map<String, String> unitOfProperty, Problems problems) {
        this.unitOfProperty = unitOfProperty;
        this.problems = problems;
    }

    /** Reports the names that the table does not know. */
    void lookUpNames(SolventData data) {
        NamesOfTheTable names = new NamesOfTheTable(data, problems);
        phasesSpeakingForOthers.forEach(name -> names.stationaryPhase(name.text(), name.place()));
        climbingLiquids.forEach(name -> names.solvent(name.text(), name.place()));
    }

    StationaryPhase stationaryPhase(Mapping file) {
        Fields phase = Fields.of(
                file,
                "a stationary phase",
                Set.of(
                        "stationary phase",
                        "also called",
                        "kind",
                        "ladder",
                        "adsorbent activity",
                        "activity from",
                        "packed density g per mL",
                        "total porosity",
                        "figures from",
                        "conditioning",
                        "holds",
                        "keep away",
                        "climb",
                        "mineral percent of the dust",
                        "strips that speak for it"),
                problems);
        List<Scalar> speaking = phase.texts("strips that speak for it");
        phasesSpeakingForOthers.addAll(speaking);
        return new StationaryPhase(
                phase.requiredText("stationary phase"),
                phase.texts("also called").stream().map(Scalar::text).toList(),
                phase.requiredText("kind"),
                phase.node("ladder").map(this::ladder),
                activity(phase),
                figure(
                        phase,
                        "packed density g per mL",
                        PACKED_DENSITY,
                        "weigh what a millilitre of packed bed holds, dry"),
                figure(phase, "total porosity", POROSITY, "write the share as a number without unit, such as 0.8"),
                phase.requiredText("figures from"),
                phase.requiredText("conditioning"),
                holds(phase),
                phase.texts("keep away").stream().map(Scalar::text).toList(),
                phase.node("climb").flatMap(this::climb),
                phase.numberWithin(
                        "mineral percent of the dust",
                        Bounds.aboveZeroTo(100, ""),
                        "leave the line out for a dust without the mineral"),
                speaking.stream().map(Scalar::text).toList());
    }

    /** A figure of the bed; any number, with a problem reported, where the file has none that can be. */
    private static double figure(Fields phase, String key, Bounds bounds, String wayOut) {
        return phase.requiredNumberWithin(key, bounds, wayOut).orElse(1);
    }

    private Optional<Climb> climb(Node node) {
        Fields climb = Fields.ofNode(node, "a climb", Set.of("liquid", "mm", "minutes", "from"), problems);
        String liquid = climb.requiredText("liquid");
        OptionalDouble millimetres = climb.requiredNumberWithin("mm", Bounds.aboveZero(), "correct it");
        OptionalDouble minutes = climb.requiredNumberWithin("minutes", Bounds.aboveZero(), "correct it");
        String from = climb.requiredText("from");
        if (liquid.isEmpty() || millimetres.isEmpty() || minutes.isEmpty()) {
            return Optional.empty();
        }
        climbingLiquids.add(new Scalar(liquid, climb.placeOf("liquid")));
        return Optional.of(new Climb(liquid, millimetres.getAsDouble(), minutes.getAsDouble(), from));
    }

    private Optional<AdsorbentActivity> activity(Fields phase) {
        OptionalDouble value = phase.numberWithin(
                "adsorbent activity",
                "the adsorbent activity",
                Bounds.aboveZeroTo(1, "").told("a number above 0, at most 1 for a dry adsorbent"),
                "leave the line out if nobody knows it; blends are then not reckoned from solvent strengths");
        if (value.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new AdsorbentActivity(value.getAsDouble(), phase.requiredText("activity from")));
    }

    private Map<String, String> holds(Fields phase) {
        Map<String, String> holds = new LinkedHashMap<>();
        for (Entry entry : phase.entries("holds")) {
            String dyeClass = entry.key().text();
            if (DyeClass.named(dyeClass).isEmpty()) {
                problems.add(
                        entry.key().place(),
                        "`" + dyeClass + "` is no class of dyes",
                        "one of " + String.join(", ", DyeClass.words()),
                        NearMiss.suggestion(dyeClass, DyeClass.words(), List.of()));
            } else if (entry.value() instanceof Scalar words) {
                holds.put(dyeClass, words.text());
            }
        }
        return holds;
    }

    private LadderScale ladder(Node node) {
        Fields ladder =
                Fields.ofNode(node, "a ladder", Set.of("property", "weakest has the", "margin", "because"), problems);
        String property = ladder.requiredText("property");
        problems.expectOneOf(ladder.placeOf("property"), property, "not a known property", unitOfProperty.keySet());
        String weakest = ladder.requiredText("weakest has the");
        problems.expectOneOf(ladder.placeOf("weakest has the"), weakest, "no end of a ladder", Set.of(LOWEST, HIGHEST));
        double margin = ladder.requiredNumberWithin(
                        "margin", Bounds.zeroOrMore(), "write 0 where nearer values are to be ranked as well")
                .orElse(0);
        return new LadderScale(property, weakest.equals(LOWEST), margin, ladder.requiredText("because"));
    }
}
