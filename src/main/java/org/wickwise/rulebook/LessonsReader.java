package org.wickwise.rulebook;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.wickwise.rulebook.Lessons.Idea;
import org.wickwise.substance.SolventData;
import org.wickwise.substance.StationaryPhase;
import org.wickwise.text.Fields;
import org.wickwise.text.NearMiss;
import org.wickwise.text.Node;
import org.wickwise.text.Node.Scalar;
import org.wickwise.text.Problems;
import org.wickwise.text.YamlFile;

/** Reads the ideas behind the rules. */
final class LessonsReader {

    private static final String FILE = "lessons.yaml";
    private static final Set<String> KEYS = Set.of("ideas", "otherwise");
    private static final Set<String> IDEA_KEYS = Set.of("idea", "rules", "layers", "lines", "phases", "text", "source");

    private final Rulebook rulebook;
    private final Set<String> kindsOfBed;
    private final Problems problems = new Problems();

    private LessonsReader(Rulebook rulebook, SolventData data) {
        this.rulebook = rulebook;
        this.kindsOfBed = data.stationaryPhases().stream()
                .map(StationaryPhase::kind)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** @throws org.wickwise.text.ProblemsFound with every problem of the file */
    static Lessons read(Path folder, Rulebook rulebook, SolventData data) {
        return new LessonsReader(rulebook, data).lessons(folder);
    }

    private Lessons lessons(Path folder) {
        Fields fields = Fields.of(YamlFile.read(folder.resolve(FILE), "rules/" + FILE), "the lessons", KEYS, problems);
        List<Idea> ideas = new ArrayList<>();
        Set<String> names = new HashSet<>();
        for (Node node : fields.list("ideas")) {
            Idea idea = idea(Fields.ofNode(node, "an idea", IDEA_KEYS, problems));
            if (!names.add(idea.name())) {
                problems.add(
                        node.place(),
                        "the idea `" + idea.name() + "` stands twice",
                        "each idea once",
                        "put the two together, or give one another name");
            }
            ideas.add(idea);
        }
        String otherwise = fields.requiredText("otherwise");
        Optional<Idea> last =
                ideas.stream().filter(idea -> idea.name().equals(otherwise)).findFirst();
        if (last.isEmpty() && !otherwise.isEmpty()) {
            problems.add(
                    fields.placeOf("otherwise"),
                    "there is no idea `" + otherwise + "`",
                    "the name of one of the ideas above",
                    NearMiss.suggestion(otherwise, names));
        }
        problems.throwIfAny();
        return new Lessons(ideas, last.orElseThrow());
    }

    private Idea idea(Fields fields) {
        Set<String> layers = known(fields, "layers", "layer of rules", layers());
        Set<String> ofLayers = rulebook.rules().stream()
                .filter(rule -> layers.contains(rule.layer()))
                .map(Rule::id)
                .collect(Collectors.toSet());
        Set<String> lines = fields.texts("lines").stream().map(Scalar::text).collect(Collectors.toSet());
        Set<String> rules = known(fields, "rules", "rule", ruleNames());
        if (rules.isEmpty() && layers.isEmpty() && lines.isEmpty() && fields.isReported()) {
            problems.add(
                    fields.place(),
                    "this idea belongs to nothing",
                    "`rules`, `layers` or `lines`",
                    "name the rules it explains, such as `rules: [stays-by-rf]`");
        }
        return new Idea(
                fields.requiredText("idea"),
                rules,
                ofLayers,
                lines,
                known(fields, "phases", "kind of stationary phase", kindsOfBed),
                fields.requiredText("text"),
                fields.requiredText("source"));
    }

    private Set<String> known(Fields fields, String key, String what, Set<String> known) {
        Set<String> found = new HashSet<>();
        for (Scalar written : fields.texts(key)) {
            if (!known.contains(written.text())) {
                problems.add(
                        written.place(),
                        "there is no " + what + " `" + written.text() + "`",
                        "the name of a " + what,
                        NearMiss.suggestion(written.text(), known));
            }
            found.add(written.text());
        }
        return found;
    }

    private Set<String> layers() {
        return rulebook.rules().stream().map(Rule::layer).collect(Collectors.toCollection(TreeSet::new));
    }

    private Set<String> ruleNames() {
        return rulebook.rules().stream().map(Rule::id).collect(Collectors.toCollection(TreeSet::new));
    }
}
