package org.wickwise.lesson;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.wickwise.bench.Case;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;

/**
 * One lesson of a class: what every group is to do, and how many groups there are.
 *
 * @param basis mixture, column, setting and shelf that all groups share; its strips are those of the class, mostly none
 * @param dyesAsWritten the dyes of the basis in the order of the file
 * @param groups 1 or more
 * @param stripsEach how many strips each group is to run, where that is settled
 * @param planned what each group is to run a strip in, in the order it was written; empty where that is not settled
 * @param sheet the table with the readings of all groups, where there is one
 * @param cases the folder with a case file of each group, where there is one
 * @param minutes how long the lesson is, where the writer says so
 */
public record Lesson(
        Case basis,
        List<Dye> dyesAsWritten,
        int groups,
        OptionalInt stripsEach,
        List<Eluent> planned,
        Optional<Path> sheet,
        Optional<Path> cases,
        Optional<Room> room,
        OptionalDouble minutes,
        Path file) {

    public Lesson {
        dyesAsWritten = List.copyOf(dyesAsWritten);
        planned = List.copyOf(planned);
    }

    public static final int MOST_GROUPS = 10_000;
}
