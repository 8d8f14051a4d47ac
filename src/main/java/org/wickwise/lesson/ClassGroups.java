package org.wickwise.lesson;

import java.nio.file.Path;
import java.util.List;
import org.wickwise.substance.SolventData;
import org.wickwise.text.Place;
import org.wickwise.text.Problem;
import org.wickwise.text.ProblemsFound;

/** The groups of a class, whose readings are fetched one group after the other. May be asked from several threads. */
public sealed interface ClassGroups permits GroupsOfSheet, GroupsOfFolder {

    /** By number and then by name. */
    List<String> names();

    /** @param name one of the names */
    GroupReadings of(String name);

    /** How the readings were found, for the person who asked. */
    List<String> told();

    /** What belongs to no group and was left out. */
    List<Problem> leftOut();

    /**
     * The groups of a lesson, from its table or its folder of case files.
     *
     * @throws ProblemsFound where the lesson names neither or both, or they cannot be read at all
     */
    static ClassGroups of(Lesson lesson, SolventData data) {
        if (lesson.sheet().isPresent() == lesson.cases().isPresent()) {
            throw new ProblemsFound(List.of(new Problem(
                    Place.wholeFile(lesson.file().toString()),
                    lesson.sheet().isPresent()
                            ? "the class has a `sheet` and a folder `cases`"
                            : "the class has no readings",
                    "one of the two: `sheet: FILE.csv` with the readings of all groups, or `cases: FOLDER` with a case"
                            + " file of each",
                    "write it under `class:`; `sheet LESSONFILE` prints a table to fill in")));
        }
        return lesson.sheet().isPresent()
                ? GroupsOfSheet.of(lesson, lesson.sheet().get(), data)
                : GroupsOfFolder.of(lesson, lesson.cases().orElseThrow(), data);
    }

    /** The readings of the group that somebody names, whatever the letters' case. */
    default GroupReadings named(String asked, Path lessonFile) {
        String name = names().stream()
                .filter(known -> known.equalsIgnoreCase(asked.strip()))
                .findFirst()
                .orElseThrow(() -> new ProblemsFound(List.of(new Problem(
                        Place.wholeFile(lessonFile.toString()),
                        "the class has no group `" + asked + "`",
                        "one of its " + names().size() + " groups, or the label of a line of the summary",
                        org.wickwise.text.NearMiss.suggestion(
                                asked, names(), names().stream().limit(30).toList())))));
        return of(name);
    }
}
