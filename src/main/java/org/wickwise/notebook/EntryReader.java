package org.wickwise.notebook;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.wickwise.bench.Case;
import org.wickwise.bench.CaseReader;
import org.wickwise.bench.StripSet;
import org.wickwise.substance.SolventData;
import org.wickwise.text.DateField;
import org.wickwise.text.Fields;
import org.wickwise.text.Node.Mapping;
import org.wickwise.text.Node.Scalar;
import org.wickwise.text.Problems;
import org.wickwise.text.ProblemsFound;
import org.wickwise.text.YamlFile;

/**
 * Reads an entry of a notebook: a case file with a date, of which `column`, `setting` and `title` may be missing, and which
 * may say more: who ran it, and what came of the column.
 */
public final class EntryReader {

    private static final Set<String> OWN_KEYS = Set.of("group", "where", "who", "run");

    private final SolventData data;
    private final Problems problems = new Problems();

    private EntryReader(SolventData data) {
        this.data = data;
    }

    /** @throws ProblemsFound with the problems of the file */
    public static Entry read(Path file, SolventData data) {
        return new EntryReader(data).entry(YamlFile.read(file));
    }

    /** @throws ProblemsFound with the problems of the text; `file` is only a name for messages */
    public static Entry parse(String file, String content, SolventData data) {
        return new EntryReader(data).entry(YamlFile.parse(file, content));
    }

    /** @throws ProblemsFound with the problems of the group of keys */
    public static Entry of(Mapping root, SolventData data) {
        return new EntryReader(data).entry(root);
    }

    private Entry entry(Mapping root) {
        Set<String> keys = new TreeSet<>(CaseReader.KEYS);
        keys.addAll(OWN_KEYS);
        Fields fields = Fields.of(root, "an entry of a notebook", keys, problems);
        Optional<LocalDate> date = DateField.in(fields, "date", problems);
        fields.require("date");
        Optional<String> group = fields.text("group");
        Optional<String> where = fields.text("where");
        Optional<String> who = fields.text("who");
        problems.throwIfAny();
        Mapping ofTheCase = root.where(CaseReader.KEYS::contains);
        StripSet strips = CaseReader.stripSet(ofTheCase, data);
        Optional<Case> column = fields.has("column") && fields.has("setting")
                ? Optional.of(CaseReader.beforeStrips(titled(ofTheCase, strips.mixture()), data))
                : Optional.empty();
        Optional<ColumnRun> run = run(fields, column);
        problems.throwIfAny();
        return new Entry(
                date.orElseThrow(),
                group,
                where,
                who,
                fields.text("title").orElse(strips.mixture()),
                strips,
                column,
                run,
                root.place());
    }

    /** The same with the name of the mixture as its title where it has none. */
    private static Mapping titled(Mapping ofTheCase, String mixture) {
        return ofTheCase.value("title").isPresent()
                ? ofTheCase
                : ofTheCase.with("title", new Scalar(mixture, ofTheCase.place()));
    }

    private Optional<ColumnRun> run(Fields fields, Optional<Case> column) {
        if (fields.has("run") && column.isEmpty()) {
            problems.add(
                    fields.placeOf("run"),
                    "there is a run, and no column it was run on",
                    "`column` and `setting` beside `run`",
                    "write them as in a case file");
            return Optional.empty();
        }
        return column.flatMap(
                written -> fields.node("run").flatMap(node -> new RunReader(written, data, problems).run(node)));
    }
}
