package org.wickwise.substance;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.wickwise.substance.TableCheck.Disagreement;
import org.wickwise.text.Fields;
import org.wickwise.text.Node;
import org.wickwise.text.Problems;
import org.wickwise.text.ProblemsFound;
import org.wickwise.text.YamlFile;

/**
 * The disagreements of the table that somebody has looked into and explained.
 *
 * @param tolerances what counts as one
 */
public record KnownDisagreements(TableTolerances tolerances, List<Explained> explained) {

    /** @param because the explanation, in words */
    public record Explained(String check, String solvent, String because) {}

    /** @throws ProblemsFound with every problem of the file */
    public static KnownDisagreements read(Path folder) {
        Problems problems = new Problems();
        String name = "known-disagreements.yaml";
        Fields root = Fields.of(
                YamlFile.read(folder.resolve(name), "solvent-data/" + name),
                "the known disagreements",
                Set.of("tolerances", "disagreements"),
                problems);
        if (!root.has("tolerances")) {
            root.missing("tolerances");
        }
        Optional<TableTolerances> tolerances = root.node("tolerances").map(node -> TableTolerances.of(node, problems));
        List<Explained> explained = new ArrayList<>();
        for (Node node : root.list("disagreements")) {
            Fields fields = Fields.ofNode(node, "a disagreement", Set.of("check", "solvent", "because"), problems);
            explained.add(new Explained(
                    fields.requiredText("check"), fields.requiredText("solvent"), fields.requiredText("because")));
        }
        problems.throwIfAny();
        return new KnownDisagreements(tolerances.orElseThrow(), List.copyOf(explained));
    }

    /** Why a disagreement is there; empty when nobody has explained it yet. */
    public Optional<String> explanationOf(Disagreement found) {
        return explained.stream()
                .filter(known ->
                        known.check().equals(found.check()) && known.solvent().equals(found.solvent()))
                .map(Explained::because)
                .findFirst();
    }
}
