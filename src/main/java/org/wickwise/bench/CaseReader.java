package org.wickwise.bench;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.wickwise.column.Column;
import org.wickwise.strip.Strip;
import org.wickwise.substance.Dye;
import org.wickwise.substance.DyeClass;
import org.wickwise.substance.NamesOfTheTable;
import org.wickwise.substance.Shelf;
import org.wickwise.substance.SolventData;
import org.wickwise.substance.StationaryPhase;
import org.wickwise.text.DateField;
import org.wickwise.text.Fields;
import org.wickwise.text.NearMiss;
import org.wickwise.text.Node;
import org.wickwise.text.Node.Mapping;
import org.wickwise.text.Node.Scalar;
import org.wickwise.text.Place;
import org.wickwise.text.Problems;
import org.wickwise.text.ProblemsFound;
import org.wickwise.text.YamlFile;

/** Reads a case file; every problem of the file is told at once, each with its line and the way out. */
public final class CaseReader {

    /** What may stand at the top of a case. */
    public static final Set<String> KEYS =
            Set.of("title", "source", "note", "mixture", "column", "setting", "date", "shelf", "strips on", "strips");

    private static final Set<String> KEYS_OF_LESSONS_AND_ENTRIES =
            Set.of("class", "room", "lesson minutes", "group", "where", "who", "run");

    private static final Set<String> MIXTURE_KEYS =
            Set.of("name", "note", "dyes", "fades in light", "load mg", "load mL");
    private static final Set<String> DYE_KEYS = Set.of("name", "class", "note");

    private static final double MOST_MILLIGRAMS = 100_000;
    private static final double MOST_MILLILITRES = 10_000;

    private SolventData data;
    private boolean stripsExpected = true;
    private final Problems problems = new Problems();

    private CaseReader(SolventData data) {
        this.data = data;
    }

    /**
     * A case, or what a lesson or an entry of a notebook holds of one: keys that only those have are left aside.
     *
     * @throws ProblemsFound with every problem of the file
     */
    public static Case read(Path file, SolventData data) {
        return of(YamlFile.read(file).where(key -> !KEYS_OF_LESSONS_AND_ENTRIES.contains(key)), data);
    }

    /** @throws ProblemsFound with every problem of the text; `file` is only a name for messages */
    public static Case parse(String file, String content, SolventData data) {
        return of(YamlFile.parse(file, content), data);
    }

    /** @throws ProblemsFound with every problem of the group of keys */
    public static Case of(Mapping root, SolventData data) {
        return new CaseReader(data).caseIn(root);
    }

    /**
     * A case before anybody ran a strip: as a case, but `strips` may be missing.
     *
     * @throws ProblemsFound with every problem of the group of keys
     */
    public static Case beforeStrips(Mapping root, SolventData data) {
        return new CaseReader(data).beforeStrips().caseIn(root);
    }

    /**
     * The dyes of a case in the order of its file, as a table for its readings heads its columns. Their problems are told where the
     * case is read.
     */
    public static List<Dye> dyesAsWritten(Mapping root, SolventData data) {
        CaseReader reader = new CaseReader(data);
        Fields fields = Fields.of(root, "a case", KEYS, reader.problems);
        return List.copyOf(reader.written(reader.inner(fields, "mixture", "a mixture", MIXTURE_KEYS)));
    }

    private CaseReader beforeStrips() {
        stripsExpected = false;
        return this;
    }

    private Case caseIn(Mapping root) {
        Fields fields = Fields.of(root, "a case", KEYS, problems);
        Shelf shelf = new CaseShelf(data, problems).shelf(fields);
        data = data.with(shelf.ownValues());
        Fields mixture = inner(fields, "mixture", "a mixture", MIXTURE_KEYS);
        List<Dye> dyes = dyes(mixture);
        Optional<Column> column = column(inner(fields, "column", "a column", ColumnReader.KEYS));
        Optional<Setting> setting = setting(fields);
        Optional<LocalDate> date = DateField.in(fields, "date", problems);
        Optional<StationaryPhase> stripPhase =
                fields.has("strips on") ? phase(fields, "strips on") : column.map(Column::phase);
        List<Strip> strips = strips(fields, shelf, dyes, stripPhase);
        Optional<Place> fadesInLight = fadesInLight(mixture);
        Load load = load(mixture);
        String title = fields.requiredText("title");
        String name = mixture.text("name").orElse("the mixture");
        problems.throwIfAny();
        return new Case(
                title,
                name,
                dyes,
                fadesInLight,
                load,
                column.orElseThrow(),
                setting.orElseThrow(),
                fields.placeOf("setting"),
                CaseShelf.restocked(shelf, data),
                date,
                strips);
    }

    /**
     * The strips of a mixture, whatever they were run for: as a case, but `title`, `column` and `setting` may be missing,
     * and `strips on` is asked for where there is no column.
     *
     * @throws ProblemsFound with every problem of the group of keys
     */
    public static StripSet stripSet(Mapping root, SolventData data) {
        return new CaseReader(data).beforeStrips().stripSetIn(root);
    }

    private StripSet stripSetIn(Mapping root) {
        Fields fields = Fields.of(root, "a set of strips", KEYS, problems);
        Shelf shelf = new CaseShelf(data, problems).shelf(fields);
        data = data.with(shelf.ownValues());
        Fields mixture = inner(fields, "mixture", "a mixture", MIXTURE_KEYS);
        List<Dye> dyes = dyes(mixture);
        Optional<StationaryPhase> phase = fields.has("strips on") || !fields.has("column")
                ? phase(fields, "strips on")
                : column(inner(fields, "column", "a column", ColumnReader.KEYS)).map(Column::phase);
        List<Strip> strips = strips(fields, shelf, dyes, phase);
        problems.throwIfAny();
        return new StripSet(mixture.text("name").orElse("the mixture"), dyes, phase.orElseThrow(), strips);
    }

    private Fields inner(Fields fields, String key, String what, Set<String> keys) {
        Optional<Node> node = fields.node(key);
        if (node.isEmpty()) {
            fields.missing(key);
            return Fields.none(fields.place(), what);
        }
        return Fields.ofNode(node.get(), what, keys, problems);
    }

    private Optional<Place> fadesInLight(Fields mixture) {
        return mixture.yesOrNo("fades in light", "write yes if in doubt")
                .filter(fades -> fades)
                .map(fades -> mixture.placeOf("fades in light"));
    }

    private List<Dye> dyes(Fields mixture) {
        return written(mixture).stream().sorted().toList();
    }

    private List<Dye> written(Fields mixture) {
        int problemsBefore = problems.size();
        List<Dye> dyes = new ArrayList<>();
        for (Node item : mixture.list("dyes")) {
            dye(item).ifPresent(dye -> {
                if (dyes.stream().anyMatch(known -> known.name().equalsIgnoreCase(dye.name()))) {
                    problems.add(
                            dye.place(),
                            "the dye `" + dye.name() + "` stands here twice",
                            "each dye once",
                            "remove one of the two");
                } else {
                    dyes.add(dye);
                }
            });
        }
        boolean readable = problems.size() == problemsBefore && mixture.isReported();
        if (readable && (dyes.size() < Case.FEWEST_DYES || dyes.size() > Case.MOST_DYES)) {
            problems.add(
                    mixture.placeOf("dyes"),
                    "the mixture has " + dyes.size() + (dyes.size() == 1 ? " dye" : " dyes"),
                    Case.FEWEST_DYES + " to " + Case.MOST_DYES + " dyes",
                    dyes.size() < Case.FEWEST_DYES
                            ? "list every dye under `dyes:`; with one dye there is nothing to part"
                            : "a column by hand parts about eight bands at best: leave out what you do not need");
        }
        return dyes;
    }

    private Optional<Dye> dye(Node item) {
        if (item instanceof Scalar name) {
            return named(name.text(), DyeClass.UNSTATED, "", name.place());
        }
        Fields fields = Fields.ofNode(item, "a dye", DYE_KEYS, problems);
        DyeClass dyeClass = DyeClass.UNSTATED;
        if (fields.has("class")) {
            String word = fields.requiredText("class");
            dyeClass = DyeClass.named(word).orElseGet(() -> {
                unknown(fields.placeOf("class"), "class", word, DyeClass.words());
                return DyeClass.UNSTATED;
            });
        }
        String name = fields.requiredText("name");
        return name.isEmpty()
                ? Optional.empty()
                : named(name, dyeClass, fields.text("note").orElse(""), fields.place());
    }

    private Optional<Dye> named(String name, DyeClass dyeClass, String note, Place place) {
        if (name.isBlank() || name.contains("+") || name.contains(":")) {
            problems.add(
                    place,
                    "`" + name + "` cannot name a dye",
                    "a name without `+` and `:`",
                    "call it by its colour or its name");
            return Optional.empty();
        }
        return Optional.of(new Dye(name.strip(), dyeClass, note, place));
    }

    private Optional<Column> column(Fields fields) {
        return new ColumnReader(fields, problems).column(phase(fields, "stationary phase"));
    }

    private Load load(Fields mixture) {
        return new Load(
                ColumnReader.measured(mixture, "load mg", MOST_MILLIGRAMS, "a mass above zero in milligrams"),
                ColumnReader.measured(mixture, "load mL", MOST_MILLILITRES, "a volume above zero in millilitres"),
                mixture.placeOf("load mg"));
    }

    private Optional<StationaryPhase> phase(Fields fields, String key) {
        String name = fields.requiredText(key);
        return name.isEmpty()
                ? Optional.empty()
                : new NamesOfTheTable(data, problems).stationaryPhase(name, fields.placeOf(key));
    }

    private Optional<Setting> setting(Fields fields) {
        String word = fields.requiredText("setting");
        Optional<Setting> setting = Setting.named(word);
        if (setting.isEmpty() && !word.isEmpty()) {
            unknown(fields.placeOf("setting"), "setting", word, Setting.words());
        }
        return setting;
    }

    private List<Strip> strips(Fields fields, Shelf shelf, List<Dye> dyes, Optional<StationaryPhase> phase) {
        List<Node> items = fields.list("strips");
        if (stripsExpected
                && items.isEmpty()
                && !(fields.has("strips") && !(fields.node("strips").get() instanceof Node.Listing))) {
            problems.add(
                    fields.placeOf("strips"),
                    "there is no strip",
                    "at least one strip under `strips:`",
                    "run the mixture up a strip in two or three solvents and write down front and travel; before that, `forecast` plans from a notebook");
        }
        StripReader reader = new StripReader(data, shelf.ownNames(), dyes, phase, problems);
        return items.stream().map(reader::strip).flatMap(Optional::stream).toList();
    }

    private void unknown(Place place, String what, String word, List<String> known) {
        problems.add(
                place,
                "`" + word + "` is not a known " + what,
                "one of " + String.join(", ", known),
                NearMiss.suggestion(word, known, List.of()));
    }
}
