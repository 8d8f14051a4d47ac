package org.wickwise.lesson;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.wickwise.lesson.ClassSummary.GroupRow;
import org.wickwise.lesson.ClassSummary.Part;
import org.wickwise.lesson.ClassSummary.Standing;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.plan.RefusalLines;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Limit;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Place;
import org.wickwise.text.Problem;
import org.wickwise.text.Words;

/** Collects what the groups of a class come to, one after the other, and sums it up. Confined to one thread. */
public final class ClassFindings {

    /** Reasons of so many groups without a plan are kept whole; a person reads no more of them in one go. */
    private static final int MOST_WITH_REASONS = 100;

    private final Lesson lesson;
    private final ClassGroups groups;
    private final Map<String, Limit> limits;
    private final List<GroupOutcome> outcomes = new ArrayList<>();
    private int withReasons;

    public ClassFindings(Lesson lesson, ClassGroups groups, Map<String, Limit> limits) {
        this.lesson = lesson;
        this.groups = groups;
        this.limits = Map.copyOf(limits);
    }

    public void add(GroupPlan planned) {
        GroupOutcome outcome = GroupOutcome.of(planned);
        boolean holdsReasons =
                !outcome.obstacles().isEmpty() || !outcome.wanted().isEmpty();
        withReasons += holdsReasons ? 1 : 0;
        outcomes.add(holdsReasons && withReasons > MOST_WITH_REASONS ? outcome.light() : outcome);
    }

    public ClassSummary summary() {
        ClassReadings readings = new ClassReadings(lesson, outcomes, limits);
        ReadingNotes notes = new ReadingNotes(lesson, groups, outcomes);
        List<Part> parts = new ArrayList<>();
        parts.add(Part.alsoInATable("In short", List.of(inShort())));
        parts.add(Part.alsoInATable("Who can go on", ways()));
        parts.add(Part.alsoInATable("Who must run strips again, and why", repeats()));
        parts.add(Part.inWordsOnly("Who can go on, and could still run a strip", couldRun()));
        parts.add(Part.inWordsOnly("Readings that lie far from those of the other groups", readings.farOut()));
        parts.add(Part.alsoInATable("Rf over the whole class", readings.lines()));
        parts.add(Part.inWordsOnly("What was left out", notes.leftOut()));
        parts.add(Part.inWordsOnly("How the readings were taken", notes.told()));
        return new ClassSummary(
                lesson.basis().title(),
                parts.stream().filter(part -> !part.lines().isEmpty()).toList(),
                outcomes.stream().map(this::row).toList(),
                readings.rows());
    }

    private Standing standing(GroupOutcome outcome) {
        return outcome.way().isPresent() ? Standing.GOES_ON : outcome.wasRead() ? Standing.REPEATS : Standing.UNREAD;
    }

    private List<GroupOutcome> all(Standing standing) {
        return outcomes.stream()
                .filter(outcome -> standing(outcome) == standing)
                .toList();
    }

    private PlanLine inShort() {
        Map<Standing, Integer> counts = new TreeMap<>();
        List<String> words = new ArrayList<>();
        for (Standing standing : Standing.values()) {
            counts.put(standing, all(standing).size());
            if (counts.get(standing) > 0) {
                words.add(counts.get(standing) + " " + standing.words());
            }
        }
        int rows = rows(groups.leftOut())
                + outcomes.stream().mapToInt(outcome -> rows(outcome.leftOut())).sum();
        String text = "Of " + outcomes.size() + (outcomes.size() == 1 ? " group " : " groups ") + Words.joined(words)
                + "."
                + (rows == 0 ? "" : " Left out: " + rows + (rows == 1 ? " row" : " rows") + ", told below.");
        List<Reason> grounds = outcomes.stream()
                .limit(MOST_WITH_REASONS)
                .<Reason>map(outcome -> new Reason.Stated(
                        "group " + outcome.group() + " " + standing(outcome).words(), placeOf(outcome)))
                .toList();
        return new PlanLine("class", Section.VERDICT, text, new Reason.Chosen(text, List.of(), grounds));
    }

    /** A row with several problems is one row. */
    private static int rows(List<Problem> leftOut) {
        return (int) leftOut.stream()
                .map(problem ->
                        new Place(problem.place().file(), problem.place().line()))
                .distinct()
                .count();
    }

    /** One line for each way that groups can go on. */
    private List<PlanLine> ways() {
        Map<String, List<GroupOutcome>> byWay = all(Standing.GOES_ON).stream()
                .collect(Collectors.groupingBy(
                        outcome -> outcome.way().orElseThrow(), LinkedHashMap::new, Collectors.toList()));
        List<Map.Entry<String, List<GroupOutcome>>> most = byWay.entrySet().stream()
                .sorted(Comparator.comparing(entry -> -entry.getValue().size()))
                .toList();
        List<PlanLine> lines = new ArrayList<>();
        for (Map.Entry<String, List<GroupOutcome>> way : most) {
            List<GroupOutcome> same = way.getValue();
            String text = (same.size() == 1 ? "Group " : "Groups ")
                    + LongLists.ofGroups(same.stream().map(GroupOutcome::group).toList()) + ": " + way.getKey() + ".";
            List<Reason> grounds = same.stream()
                    .limit(MOST_WITH_REASONS)
                    .<Reason>map(outcome -> new Reason.Stated(
                            "the plan of group " + outcome.group() + ", which the name of the group asks for: "
                                    + way.getKey(),
                            placeOf(outcome)))
                    .toList();
            lines.add(new PlanLine(
                    "way-" + (lines.size() + 1), Section.STEPS, text, new Reason.Chosen(text, List.of(), grounds)));
        }
        return lines;
    }

    private List<PlanLine> repeats() {
        List<String> expected = expectedEluents();
        List<PlanLine> lines = new ArrayList<>();
        for (GroupOutcome outcome : all(Standing.REPEATS)) {
            List<PlanLine> said = new ArrayList<>(outcome.obstacles().subList(0, 1));
            said.addAll(outcome.wanted());
            lines.add(line("repeat", outcome, said, toMend(outcome), lacks(outcome, expected)));
        }
        for (GroupOutcome outcome : all(Standing.UNREAD)) {
            String text = "Group " + outcome.group() + ": no strip could be taken; see what was left out.";
            List<Reason> grounds = outcome.leftOut().stream()
                    .<Reason>map(problem ->
                            new Reason.Stated(problem.found() + "; expected " + problem.expected(), problem.place()))
                    .toList();
            lines.add(new PlanLine(
                    "repeat-" + Words.slug(outcome.group()),
                    Section.NEXT,
                    text,
                    new Reason.Chosen(text, List.of(), grounds)));
        }
        return LongLists.cut(lines, "groups must run strips again");
    }

    private List<PlanLine> couldRun() {
        List<String> expected = expectedEluents();
        List<PlanLine> lines = new ArrayList<>();
        for (GroupOutcome outcome : all(Standing.GOES_ON)) {
            String lacks = lacks(outcome, expected);
            if (!outcome.wanted().isEmpty() || !lacks.isEmpty()) {
                lines.add(line("again", outcome, outcome.wanted(), toMend(outcome), lacks));
            }
        }
        return LongLists.cut(lines, "groups could run a strip");
    }

    /** What was written and not taken may be all that is missing, so it comes before any new strip. */
    private static String toMend(GroupOutcome outcome) {
        return outcome.leftOut().stream()
                .map(problem -> problem.place() + ": " + problem.found())
                .reduce((one, other) -> one + "; " + other)
                .map(rows -> "Mend first what was left out (" + rows + ").")
                .orElse("");
    }

    private static String lacks(GroupOutcome outcome, List<String> expected) {
        List<String> missing = expected.stream()
                .filter(eluent -> !outcome.eluents().contains(eluent))
                .toList();
        return missing.isEmpty()
                ? ""
                : "It has no strip that can be read in " + Words.joined(missing) + ", as others have.";
    }

    private PlanLine line(String kind, GroupOutcome outcome, List<PlanLine> said, String before, String after) {
        String text = "Group " + outcome.group() + ": "
                + Stream.concat(
                                Stream.of(before),
                                Stream.concat(
                                        said.stream().map(line -> RefusalLines.alone(line.text())), Stream.of(after)))
                        .filter(sentence -> !sentence.isEmpty())
                        .collect(Collectors.joining(" "));
        return new PlanLine(
                kind + "-" + Words.slug(outcome.group()),
                Section.NEXT,
                text,
                new Reason.Chosen(
                        text, List.of(), said.stream().map(PlanLine::reason).toList()));
    }

    /** Eluents in which the lesson plans a strip, or else most groups have one. */
    private List<String> expectedEluents() {
        Map<String, Long> counts = outcomes.stream()
                .flatMap(outcome -> outcome.eluents().stream())
                .collect(Collectors.groupingBy(eluent -> eluent, TreeMap::new, Collectors.counting()));
        return lesson.planned().isEmpty()
                ? counts.entrySet().stream()
                        .filter(entry -> 2 * entry.getValue() > outcomes.size())
                        .map(Map.Entry::getKey)
                        .toList()
                : lesson.planned().stream().map(Eluent::name).toList();
    }

    private GroupRow row(GroupOutcome outcome) {
        List<String> toRun = new ArrayList<>();
        outcome.obstacles().stream().limit(1).forEach(line -> toRun.add(RefusalLines.alone(line.text())));
        outcome.wanted().forEach(line -> toRun.add(line.text()));
        return new GroupRow(
                outcome.group(),
                standing(outcome),
                outcome.way().orElse(""),
                String.join(" ", toRun),
                rows(outcome.leftOut()));
    }

    private Place placeOf(GroupOutcome outcome) {
        return outcome.place().orElse(Place.wholeFile(lesson.file().toString()));
    }
}
