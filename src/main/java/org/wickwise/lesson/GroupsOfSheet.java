package org.wickwise.lesson;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.wickwise.bench.Case;
import org.wickwise.bench.CaseReader;
import org.wickwise.notebook.ClassSheet;
import org.wickwise.notebook.SheetStrips;
import org.wickwise.substance.SolventData;
import org.wickwise.substance.StationaryPhase;
import org.wickwise.text.Problem;
import org.wickwise.text.YamlFile;

/** Groups whose strips stand in one table. */
record GroupsOfSheet(ClassSheet sheet, SheetStrips strips, Case basis) implements ClassGroups {

    static GroupsOfSheet of(Lesson lesson, Path file, SolventData data) {
        ClassSheet sheet = ClassSheet.read(file, lesson.basis().dyes());
        StationaryPhase usual = CaseReader.stripSet(YamlFile.read(lesson.file()).where(CaseReader.KEYS::contains), data)
                .phase();
        return new GroupsOfSheet(sheet, new SheetStrips(sheet, lesson.basis(), usual, data), lesson.basis());
    }

    @Override
    public List<String> names() {
        return sheet.groups();
    }

    @Override
    public GroupReadings of(String name) {
        SheetStrips.OfGroup read = strips.of(name);
        Optional<Case> written = read.strips().isEmpty()
                ? Optional.empty()
                : Optional.of(basis.with(read.strips()).titled(basis.title() + ", group " + name));
        return new GroupReadings(name, written, read.leftOut(), read.told());
    }

    @Override
    public List<String> told() {
        return sheet.told();
    }

    @Override
    public List<Problem> leftOut() {
        return sheet.leftOut();
    }
}
