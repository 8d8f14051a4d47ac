package org.wickwise.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Collection;
import java.util.List;
import org.wickwise.plan.Plan;
import org.wickwise.plan.PlanLine;
import org.wickwise.reason.Reason;
import org.wickwise.reason.Reason.Argument;
import org.wickwise.reason.Reason.Calculated;
import org.wickwise.reason.Reason.Chosen;
import org.wickwise.reason.Reason.Concluded;
import org.wickwise.reason.Reason.Limited;
import org.wickwise.reason.Reason.Observed;
import org.wickwise.reason.Reason.Stated;
import org.wickwise.reason.Reason.Tabled;

/** A plan or a reason as JSON: every line with its label and its whole reason. */
public final class JsonReport {

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private JsonReport() {}

    public static String of(Plan plan) {
        ObjectNode root = NODES.objectNode();
        root.put("title", plan.judged().title());
        root.put("mixture", plan.judged().mixture());
        root.put("stationaryPhase", plan.judged().column().phaseName());
        root.put("setting", plan.judged().setting().word());
        root.put("verdict", plan.isRefusal() ? "refused" : "planned");
        plan.packing().ifPresent(packing -> root.put("packing", packing.name()));
        ArrayNode steps = root.putArray("steps");
        plan.route().ifPresent(route -> route.steps().forEach(step -> {
            ObjectNode node = steps.addObject();
            node.put("eluent", step.eluent().name());
            ArrayNode fractions = node.putArray("fractions");
            step.fractions()
                    .forEach(fraction -> fractions.add(
                            texts(fraction.stream().map(dye -> dye.name()).toList())));
            node.set(
                    "staying",
                    texts(step.staying().stream().map(dye -> dye.name()).toList()));
        }));
        ArrayNode lines = root.putArray("lines");
        plan.lines().forEach(line -> lines.add(node(line)));
        return printed(root);
    }

    /** A few lines under a title, each with its whole reason. */
    public static String of(String title, List<PlanLine> lines) {
        ObjectNode root = NODES.objectNode();
        root.put("title", title);
        ArrayNode all = root.putArray("lines");
        lines.forEach(line -> all.add(node(line)));
        return printed(root);
    }

    public static String of(PlanLine line) {
        return printed(node(line));
    }

    private static ObjectNode node(PlanLine line) {
        ObjectNode node = NODES.objectNode();
        node.put("label", line.label());
        node.put("section", line.section().title());
        node.put("text", line.text());
        node.set("reason", node(line.reason()));
        return node;
    }

    private static ObjectNode node(Reason reason) {
        ObjectNode node = NODES.objectNode();
        node.put("statement", reason.statement());
        if (reason instanceof Observed observed) {
            node.put("kind", "observed").put("place", observed.place().toString());
        } else if (reason instanceof Stated stated) {
            node.put("kind", "stated").put("place", stated.place().toString());
        } else if (reason instanceof Limited limited) {
            node.put("kind", "limit").put("place", limited.place().toString()).put("source", limited.source());
        } else if (reason instanceof Tabled tabled) {
            node.put("kind", "table value").put("confidence", tabled.confidence());
            node.set("sources", texts(tabled.sources()));
        } else if (reason instanceof Calculated calculated) {
            node.put("kind", "calculation")
                    .put("formula", calculated.formula())
                    .put("reference", calculated.reference());
            node.set("grounds", nodes(calculated.grounds()));
        } else if (reason instanceof Concluded concluded) {
            node.put("kind", "conclusion");
            ArrayNode arguments = node.putArray("arguments");
            concluded.arguments().forEach(argument -> arguments.add(node(argument)));
        } else if (reason instanceof Chosen chosen) {
            node.put("kind", "choice");
            node.set("comparisons", texts(chosen.comparisons()));
            node.set("grounds", nodes(chosen.grounds()));
        } else {
            throw new IllegalStateException(
                    "no words for a reason of the kind " + reason.getClass().getSimpleName());
        }
        return node;
    }

    private static ObjectNode node(Argument argument) {
        ObjectNode node = NODES.objectNode();
        node.put("rule", argument.ruleId());
        node.put("place", argument.place().toString());
        node.put("because", argument.because());
        node.set("sentences", texts(argument.sentences()));
        node.put("source", argument.source());
        node.set("grounds", nodes(argument.grounds()));
        return node;
    }

    private static ArrayNode nodes(List<Reason> reasons) {
        ArrayNode array = NODES.arrayNode();
        reasons.forEach(reason -> array.add(node(reason)));
        return array;
    }

    private static ArrayNode texts(Collection<String> texts) {
        ArrayNode array = NODES.arrayNode();
        texts.forEach(array::add);
        return array;
    }

    private static String printed(ObjectNode node) {
        DefaultIndenter newline = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer =
                new DefaultPrettyPrinter().withObjectIndenter(newline).withArrayIndenter(newline);
        try {
            return new ObjectMapper().writer(printer).writeValueAsString(node) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a tree of texts can always be written", e);
        }
    }
}
