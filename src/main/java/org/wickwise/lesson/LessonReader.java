package org.wickwise.lesson;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import org.wickwise.bench.Case;
import org.wickwise.bench.CaseReader;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.EluentReader;
import org.wickwise.substance.SolventData;
import org.wickwise.text.Bounds;
import org.wickwise.text.Fields;
import org.wickwise.text.FileBeside;
import org.wickwise.text.Node;
import org.wickwise.text.Node.Mapping;
import org.wickwise.text.Numbers;
import org.wickwise.text.Problems;
import org.wickwise.text.ProblemsFound;
import org.wickwise.text.YamlFile;

/** Reads a lesson: a case file whose `strips` may be missing, with what is said of the class, the room and the time. */
public final class LessonReader {

    private static final Set<String> OWN_KEYS = Set.of("class", "room", "lesson minutes");
    private static final Set<String> CLASS_KEYS = Set.of("groups", "strips each", "solvents", "sheet", "cases");
    private static final Set<String> ROOM_KEYS =
            Set.of("cubic metres", "air changes per hour", "smallest space cubic metres", "temperature C");
    private static final double MOST_CUBIC_METRES = 100_000;
    private static final double MOST_AIR_CHANGES = 100;
    private static final double COLDEST_CELSIUS = 0;
    private static final double WARMEST_CELSIUS = 45;
    private static final double MOST_MINUTES = 10_000;
    private static final int MOST_STRIPS_EACH = 40;

    private final SolventData data;
    private final Problems problems = new Problems();

    private LessonReader(SolventData data) {
        this.data = data;
    }

    /**
     * A case file without `class` is a lesson of one group.
     *
     * @throws ProblemsFound with the problems of the file
     */
    public static Lesson read(Path file, SolventData data) {
        return new LessonReader(data).lesson(YamlFile.read(file), file);
    }

    private Lesson lesson(Mapping root, Path file) {
        Set<String> keys = new TreeSet<>(CaseReader.KEYS);
        keys.addAll(OWN_KEYS);
        Fields fields = Fields.of(root, "a lesson", keys, problems);
        Fields ofClass = inner(fields, "class", "a class", CLASS_KEYS);
        int groups = whole(ofClass, "groups", Lesson.MOST_GROUPS).orElse(1);
        OptionalInt stripsEach = whole(ofClass, "strips each", MOST_STRIPS_EACH);
        Optional<Path> sheet = beside(file, ofClass, "sheet");
        Optional<Path> cases = beside(file, ofClass, "cases");
        Optional<Room> room = fields.has("room") ? room(inner(fields, "room", "a room", ROOM_KEYS)) : Optional.empty();
        OptionalDouble minutes = number(fields, "lesson minutes", 1, MOST_MINUTES, "minutes");
        problems.throwIfAny();
        Mapping ofTheCase = root.where(CaseReader.KEYS::contains);
        Case basis = CaseReader.beforeStrips(ofTheCase, data);
        EluentReader eluents = new EluentReader(
                data.with(basis.shelf().ownValues()), basis.shelf().ownNames(), problems);
        List<Eluent> planned = ofClass.texts("solvents").stream()
                .map(eluents::read)
                .flatMap(Optional::stream)
                .toList();
        problems.throwIfAny();
        return new Lesson(
                basis,
                CaseReader.dyesAsWritten(ofTheCase, data),
                groups,
                stripsEach,
                planned,
                sheet,
                cases,
                room,
                minutes,
                file);
    }

    private Optional<Path> beside(Path file, Fields fields, String key) {
        return fields.scalar(key).flatMap(name -> FileBeside.of(file, name, problems));
    }

    private Fields inner(Fields fields, String key, String what, Set<String> keys) {
        Optional<Node> node = fields.node(key);
        return node.isEmpty() ? Fields.none(fields.place(), what) : Fields.ofNode(node.get(), what, keys, problems);
    }

    private Optional<Room> room(Fields fields) {
        OptionalDouble cubicMetres = number(fields, "cubic metres", 1, MOST_CUBIC_METRES, "m3");
        fields.require("cubic metres");
        OptionalDouble airChanges = number(fields, "air changes per hour", 0, MOST_AIR_CHANGES, "air changes an hour");
        OptionalDouble smallest = number(fields, "smallest space cubic metres", 0.001, MOST_CUBIC_METRES, "m3");
        OptionalDouble temperature = number(fields, "temperature C", COLDEST_CELSIUS, WARMEST_CELSIUS, "degC");
        return cubicMetres.isEmpty()
                ? Optional.empty()
                : Optional.of(new Room(cubicMetres.getAsDouble(), airChanges, smallest, temperature));
    }

    private OptionalInt whole(Fields fields, String key, int most) {
        OptionalDouble number = number(fields, key, 1, most, "");
        if (number.isPresent() && number.getAsDouble() % 1 != 0) {
            problems.add(
                    fields.placeOf(key),
                    "`" + key + "` is " + Numbers.plain(number.getAsDouble(), 3),
                    "a whole number",
                    "write it without a point");
            return OptionalInt.empty();
        }
        return number.isPresent() ? OptionalInt.of((int) number.getAsDouble()) : OptionalInt.empty();
    }

    private static OptionalDouble number(Fields fields, String key, double least, double most, String unit) {
        return fields.numberWithin(key, Bounds.within(least, most, unit), "is there a point missing, or one too many?");
    }
}
