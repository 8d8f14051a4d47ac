package org.wickwise.rulebook;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.wickwise.bench.Case;
import org.wickwise.bench.CaseReader;
import org.wickwise.notebook.RunReader;
import org.wickwise.rulebook.RuleExample.Situation;
import org.wickwise.substance.SolventData;
import org.wickwise.text.Fields;
import org.wickwise.text.Node;
import org.wickwise.text.Node.Entry;
import org.wickwise.text.Node.Mapping;
import org.wickwise.text.Place;
import org.wickwise.text.Problems;
import org.wickwise.text.YamlFile;

/** Reads the examples beside rules. What an example does not say it takes from {@code usual} at the top of its file. */
public final class RuleExamplesReader {

    /** What tells of a finished column, beside the keys of a case. */
    private static final String RUN = "run";

    private final SolventData data;
    private final Problems problems = new Problems();

    private RuleExamplesReader(SolventData data) {
        this.data = data;
    }

    /**
     * The examples of every file of a folder.
     *
     * @param shownAs how messages call the folder
     * @throws org.wickwise.text.ProblemsFound with every problem of the folder
     */
    public static List<RuleExample> read(Path folder, String shownAs, SolventData data) {
        RuleExamplesReader reader = new RuleExamplesReader(data);
        List<RuleExample> examples = new ArrayList<>();
        for (String name :
                YamlFile.namesIn(folder, "a folder with examples of rules", "check the spelling and who may read it")) {
            if (Files.isSymbolicLink(folder) || Files.isSymbolicLink(folder.resolve(name))) {
                reader.problems.add(
                        Place.wholeFile(shownAs + "/" + name),
                        "this is a link to a file somewhere else",
                        "a file of this folder",
                        "copy the file itself into the folder");
                continue;
            }
            examples.addAll(reader.examples(YamlFile.read(folder.resolve(name), shownAs + "/" + name)));
        }
        reader.problems.throwIfAny();
        return List.copyOf(examples);
    }

    private List<RuleExample> examples(Mapping file) {
        Fields root = Fields.of(file, "examples", Set.of("about", "usual", "examples"), problems);
        Optional<Mapping> usual =
                root.node("usual").filter(Mapping.class::isInstance).map(Mapping.class::cast);
        if (usual.isEmpty()) {
            root.missing("usual");
            return List.of();
        }
        List<RuleExample> examples = new ArrayList<>();
        for (Node node : root.list("examples")) {
            Fields fields = Fields.ofNode(node, "an example", Set.of("rule", "fires", "concludes", "silent"), problems);
            String rule = fields.requiredText("rule");
            String concludes = fields.requiredText("concludes");
            Optional<Situation> fires = written(usual.get(), fields, "fires");
            Optional<Situation> silent =
                    holdsAlways(fields) ? Optional.empty() : written(usual.get(), fields, "silent");
            fires.ifPresent(found -> examples.add(new RuleExample(rule, found, concludes, silent, node.place())));
        }
        return examples;
    }

    /** A rule that holds in every case says `silent: never`. */
    private static boolean holdsAlways(Fields fields) {
        return fields.node("silent").filter(Mapping.class::isInstance).isEmpty()
                && fields.text("silent").filter("never"::equals).isPresent();
    }

    private Optional<Situation> written(Mapping usual, Fields fields, String key) {
        Optional<Node> node = fields.node(key);
        if (node.filter(Mapping.class::isInstance).isEmpty()) {
            problems.add(
                    fields.placeOf(key),
                    "`" + key + "` is " + node.map(Node::kind).orElse("not there"),
                    "the keys of a case that are other than usual, or {}",
                    key.equals("silent")
                            ? "write them, or `silent: never` for a rule that always holds"
                            : "write them");
            return Optional.empty();
        }
        Mapping changes = (Mapping) node.get();
        List<Entry> entries = new ArrayList<>(changes.entries());
        usual.entries().stream()
                .filter(entry -> changes.entries().stream()
                        .noneMatch(
                                change -> change.key().text().equals(entry.key().text())))
                .forEach(entries::add);
        Mapping whole = new Mapping(entries, changes.place());
        Case written = CaseReader.of(whole.where(name -> !name.equals(RUN)), data);
        Optional<Node> run = whole.value(RUN);
        return Optional.of(new Situation(written, run.flatMap(ran -> new RunReader(written, data, problems).run(ran))));
    }
}
