package org.wickwise.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wickwise.Shipped;
import org.wickwise.plan.Plan;
import org.wickwise.plan.PlanLine;

/** Plans of many groups, made in one way or another. Readings are invented. */
class ClassPlansTest {

    private static final Path SHIPPED = Path.of("docs/examples/harbour-class.yaml");

    private final Lesson lesson = LessonReader.read(SHIPPED, Shipped.data());
    private final ClassGroups groups = ClassGroups.of(lesson, Shipped.data());

    @Test
    void plans_with_one_case_laid_out_come_to_what_plans_made_anew_come_to() {
        ClassFindings anew = findings();
        ClassFindings brief = findings();
        ClassPlans.sideBySide(groups, Shipped.bench()::plan, anew::add, done -> {});
        try (BriefPlans plans = new BriefPlans(Shipped.bench().judge(), Shipped.planner())) {
            ClassPlans.inTurn(groups, plans::of, brief::add, done -> {});
        }
        assertThat(brief.summary().groups()).isEqualTo(anew.summary().groups());
        assertThat(brief.summary().pooled()).isEqualTo(anew.summary().pooled());
        assertThat(brief.summary().lines())
                .extracting(PlanLine::text)
                .isEqualTo(anew.summary().lines().stream().map(PlanLine::text).toList());
    }

    @Test
    void plans_made_side_by_side_come_in_the_order_of_the_groups() {
        List<String> order = new ArrayList<>();
        ClassPlans.sideBySide(groups, Shipped.bench()::plan, planned -> order.add(planned.group()), done -> {});
        assertThat(order).isEqualTo(groups.names());
    }

    @Test
    void a_group_that_cannot_be_planned_stops_no_other() {
        List<GroupPlan> plans = new ArrayList<>();
        ClassPlans.inTurn(
                groups,
                written -> {
                    if (written.title().endsWith("group 3")) {
                        throw new IllegalArgumentException("a reading nobody can plan with");
                    }
                    return Shipped.bench().plan(written);
                },
                plans::add,
                done -> {});
        assertThat(plans).hasSize(12);
        assertThat(plans.get(2).plan()).isEmpty();
        assertThat(plans.get(2).leftOut()).last().satisfies(problem -> assertThat(problem.found())
                .contains("no plan could be made for group 3", "a reading nobody can plan with"));
    }

    @Test
    void a_folder_of_case_files_takes_from_the_lesson_what_they_do_not_say(@TempDir Path folder) throws IOException {
        Path cases = Files.createDirectory(folder.resolve("cases"));
        String demo = Files.readString(Shipped.DEMO);
        Files.writeString(cases.resolve("2.yaml"), demo.substring(demo.indexOf("strips:")));
        Files.writeString(cases.resolve("10.yaml"), demo);
        Files.writeString(cases.resolve("notes.txt"), "no case");
        Path file = folder.resolve("lesson.yaml");
        Files.writeString(file, Files.readString(SHIPPED).replace("sheet: harbour-class-2026.csv", "cases: cases"));
        ClassGroups ofFolder = ClassGroups.of(LessonReader.read(file, Shipped.data()), Shipped.data());
        assertThat(ofFolder.names()).containsExactly("2", "10");
        assertThat(ofFolder.told()).anyMatch(told -> told.contains("notes.txt"));
        Plan ofStripsAlone = Shipped.bench().plan(ofFolder.of("2").written().orElseThrow());
        Plan whole = Shipped.bench().plan(ofFolder.of("10").written().orElseThrow());
        assertThat(ofStripsAlone.lines())
                .extracting(PlanLine::text)
                .isEqualTo(whole.lines().stream().map(PlanLine::text).toList());
    }

    private ClassFindings findings() {
        return new ClassFindings(lesson, groups, Shipped.rulebook().limits());
    }
}
