package org.wickwise.lesson;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.wickwise.bench.CaseReader;
import org.wickwise.notebook.ClassSheet;
import org.wickwise.substance.SolventData;
import org.wickwise.text.Folders;
import org.wickwise.text.Node.Entry;
import org.wickwise.text.Node.Mapping;
import org.wickwise.text.Place;
import org.wickwise.text.Problem;
import org.wickwise.text.ProblemsFound;
import org.wickwise.text.YamlFile;

/**
 * Groups with a case file each. What a file does not say (mixture, column, setting, shelf) is what the lesson says; the name of the
 * group is that of the file.
 *
 * @param files by the name of the group
 */
record GroupsOfFolder(Map<String, Path> files, Mapping ofLesson, SolventData data, List<String> told)
        implements ClassGroups {

    private static final String ENDING = ".yaml";
    private static final String WAY_OUT = "check `cases` of the lesson file";
    private static final Set<String> OF_AN_ENTRY = Set.of("group", "where", "who");
    private static final Set<String> NOT_SHARED = Set.of("strips", "title", "source", "note");

    static GroupsOfFolder of(Lesson lesson, Path folder, SolventData data) {
        Map<String, Path> files = new TreeMap<>(ClassSheet.ORDER);
        List<String> passedOver = new ArrayList<>();
        for (Path file : Folders.files(folder, "a folder with a case file of each group", WAY_OUT)) {
            String name = file.getFileName().toString();
            if (name.endsWith(ENDING) && !name.startsWith(".")) {
                files.put(name.substring(0, name.length() - ENDING.length()), file);
            } else {
                passedOver.add(name);
            }
        }
        if (files.isEmpty() || files.size() > Lesson.MOST_GROUPS) {
            throw refused(
                    folder,
                    "the folder holds " + files.size() + " case files",
                    "1 to " + Lesson.MOST_GROUPS + " files that end in " + ENDING);
        }
        List<String> told = new ArrayList<>(
                List.of("The folder " + folder + " holds " + files.size() + " case files, one for each group."));
        if (!passedOver.isEmpty()) {
            told.add("Passed over, since they do not end in " + ENDING + ": " + String.join(", ", passedOver) + ".");
        }
        Mapping shared =
                YamlFile.read(lesson.file()).where(key -> CaseReader.KEYS.contains(key) && !NOT_SHARED.contains(key));
        return new GroupsOfFolder(files, shared, data, told);
    }

    @Override
    public List<String> names() {
        return List.copyOf(files.keySet());
    }

    @Override
    public GroupReadings of(String name) {
        try {
            Mapping own = YamlFile.read(files.get(name)).where(key -> !OF_AN_ENTRY.contains(key));
            return new GroupReadings(
                    name, Optional.of(CaseReader.of(completed(own, name), data)), List.of(), List.of());
        } catch (ProblemsFound problems) {
            return new GroupReadings(name, Optional.empty(), problems.problems(), List.of());
        }
    }

    private Mapping completed(Mapping own, String name) {
        Set<String> said =
                own.entries().stream().map(entry -> entry.key().text()).collect(Collectors.toSet());
        List<Entry> entries = new ArrayList<>(own.entries());
        ofLesson.entries().stream()
                .filter(entry -> !said.contains(entry.key().text()))
                .forEach(entries::add);
        Mapping all = new Mapping(entries, own.place());
        return said.contains("title")
                ? all
                : all.with("title", new org.wickwise.text.Node.Scalar("Group " + name, own.place()));
    }

    @Override
    public List<Problem> leftOut() {
        return List.of();
    }

    private static ProblemsFound refused(Path folder, String found, String expected) {
        return new ProblemsFound(List.of(new Problem(Place.wholeFile(folder.toString()), found, expected, WAY_OUT)));
    }
}
