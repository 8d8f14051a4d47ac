package org.wickwise.lesson;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.wickwise.lesson.ClassSummary.GroupRow;
import org.wickwise.lesson.ClassSummary.Part;
import org.wickwise.lesson.ClassSummary.PooledRow;
import org.wickwise.lesson.ClassSummary.Standing;
import org.wickwise.lesson.GroupOutcome.PooledReading;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.PlanLine.Section;
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

    private static final int MOST_LISTED = 200;

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
        List<PooledRetardation> pooled = pooled();
        List<Part> parts = new ArrayList<>();
        parts.add(new Part("In short", List.of(inShort())));
        parts.add(new Part("Who can go on", ways()));
        parts.add(new Part("Who must run strips again, and why", repeats()));
        parts.add(new Part("Who can go on, and could still run a strip", couldRun()));
        parts.add(new Part("Readings that lie far from those of the other groups", farOut(pooled)));
        parts.add(new Part(
                "Rf over the whole class", pooled.stream().map(this::pooledLine).toList()));
        parts.add(new Part("What was left out", leftOut()));
        parts.add(new Part("How the readings were taken", told()));
        return new ClassSummary(
                lesson.basis().title(),
                parts.stream().filter(part -> !part.lines().isEmpty()).toList(),
                outcomes.stream().map(this::row).toList(),
                pooled.stream().map(ClassFindings::row).toList());
    }

    private PlanLine pooledLine(PooledRetardation pooled) {
        String usual = lesson.basis().column().phaseName();
        boolean elsewhere = !pooled.phase().equals(usual);
        return new PlanLine(
                pooled.label() + (elsewhere ? "-on-" + Words.slug(pooled.phase()) : ""),
                Section.STRIPS,
                Words.capital(pooled.dye()) + " in " + pooled.eluent() + (elsewhere ? " on " + pooled.phase() : "")
                        + ": " + pooled.inWords(),
                pooled.reason());
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
                    + shown(same.stream().map(GroupOutcome::group).toList()) + ": " + way.getKey() + ".";
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
        List<PlanLine> lines = new ArrayList<>();
        for (GroupOutcome outcome : all(Standing.REPEATS)) {
            List<PlanLine> said = new ArrayList<>(outcome.obstacles().subList(0, 1));
            said.addAll(outcome.wanted());
            lines.add(line("repeat", outcome, said));
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
        return cut(lines, "groups must run strips again");
    }

    private List<PlanLine> couldRun() {
        List<String> expected = expectedEluents();
        List<PlanLine> lines = new ArrayList<>();
        for (GroupOutcome outcome : all(Standing.GOES_ON)) {
            List<String> missing = expected.stream()
                    .filter(eluent -> !outcome.eluents().contains(eluent))
                    .toList();
            if (outcome.wanted().isEmpty() && missing.isEmpty()) {
                continue;
            }
            PlanLine line = line("again", outcome, outcome.wanted());
            String lacks = missing.isEmpty()
                    ? ""
                    : " It has no strip that can be read in " + Words.joined(missing) + ", as others have.";
            lines.add(new PlanLine(line.label(), line.section(), line.text() + lacks, line.reason()));
        }
        return cut(lines, "groups could run a strip");
    }

    private PlanLine line(String kind, GroupOutcome outcome, List<PlanLine> said) {
        String text = "Group " + outcome.group() + ": "
                + said.stream().map(line -> untilAdvice(line.text())).collect(Collectors.joining(" "));
        return new PlanLine(
                kind + "-" + Words.slug(outcome.group()),
                Section.NEXT,
                text.strip(),
                new Reason.Chosen(
                        text.strip(),
                        List.of(),
                        said.stream().map(PlanLine::reason).toList()));
    }

    private static String untilAdvice(String text) {
        return text.replace(" What to try next stands below.", "");
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

    private static List<PlanLine> farOut(List<PooledRetardation> pooled) {
        List<PlanLine> lines = new ArrayList<>();
        for (PooledRetardation one : pooled) {
            one.farOut()
                    .forEach(out -> lines.add(new PlanLine(
                            "far-" + Words.slug(out.group()) + "-" + Words.slug(one.eluent()) + "-"
                                    + Words.slug(one.dye()),
                            Section.DOUBTS,
                            "Group " + out.group() + ", " + one.dye() + " in " + one.eluent() + ": " + out.words()
                                    + ". Look at the strip again: is it the same spot, the same jar, the same origin? Its"
                                    + " reading still counts everywhere.",
                            out.reason())));
        }
        return cut(lines, "readings lie far out");
    }

    private List<PooledRetardation> pooled() {
        Map<List<String>, List<PooledRetardation.Of>> byPair = new LinkedHashMap<>();
        for (GroupOutcome outcome : outcomes) {
            for (PooledReading reading : outcome.readings()) {
                byPair.computeIfAbsent(
                                List.of(reading.eluent(), reading.phase(), reading.dye()), any -> new ArrayList<>())
                        .add(new PooledRetardation.Of(outcome.group(), reading));
            }
        }
        List<String> order = lesson.planned().stream().map(Eluent::name).toList();
        Comparator<PooledRetardation> asPlanned = Comparator.comparingInt(
                one -> order.contains(one.eluent()) ? order.indexOf(one.eluent()) : order.size());
        return byPair.values().stream()
                .map(several -> PooledRetardation.of(several, limits))
                .sorted(asPlanned
                        .thenComparing(PooledRetardation::eluent)
                        .thenComparing(PooledRetardation::phase)
                        .thenComparing(PooledRetardation::dye))
                .toList();
    }

    private List<PlanLine> leftOut() {
        List<PlanLine> lines = new ArrayList<>();
        groups.leftOut().forEach(problem -> lines.add(leftOut("", problem, lines.size())));
        outcomes.forEach(outcome -> outcome.leftOut()
                .forEach(problem -> lines.add(leftOut("Group " + outcome.group() + ": ", problem, lines.size()))));
        return cut(lines, "rows or files were left out");
    }

    private static PlanLine leftOut(String group, Problem problem, int before) {
        String text = group + problem.place() + ": " + problem.found() + "; expected " + problem.expected() + ". "
                + Words.capital(problem.wayOut()) + (problem.wayOut().endsWith("?") ? "" : ".");
        return new PlanLine(
                "left-out-" + (before + 1), Section.DOUBTS, text, new Reason.Stated(problem.found(), problem.place()));
    }

    private List<PlanLine> told() {
        List<String> all = new ArrayList<>(groups.told());
        outcomes.forEach(outcome -> all.addAll(outcome.told()));
        countOfGroups().ifPresent(all::add);
        Place place = Place.wholeFile(
                lesson.sheet().or(lesson::cases).orElse(lesson.file()).toString());
        List<PlanLine> lines = IntStream.range(0, all.size())
                .mapToObj(i -> new PlanLine(
                        "told-" + (i + 1), Section.BASIS, all.get(i), new Reason.Stated(all.get(i), place)))
                .toList();
        return cut(lines, "things are to be told");
    }

    /** The lesson counts its groups too; a wrong name of a group shows here. */
    private Optional<String> countOfGroups() {
        if (outcomes.size() == lesson.groups() || lesson.groups() == 1) {
            return Optional.empty();
        }
        List<String> names = outcomes.stream().map(GroupOutcome::group).toList();
        List<String> missing = IntStream.rangeClosed(1, lesson.groups())
                .mapToObj(String::valueOf)
                .filter(number -> !names.contains(number))
                .limit(20)
                .toList();
        boolean numbered = names.stream().anyMatch(name -> name.matches("\\d+"));
        return Optional.of("The lesson has " + lesson.groups() + " groups, the readings come from " + outcomes.size()
                + (numbered && !missing.isEmpty() ? "; none from " + Words.joined(missing) : "") + ".");
    }

    private static List<PlanLine> cut(List<PlanLine> lines, String what) {
        if (lines.size() <= MOST_LISTED) {
            return lines;
        }
        List<PlanLine> shown = new ArrayList<>(lines.subList(0, MOST_LISTED));
        String text = (lines.size() - MOST_LISTED) + " more " + what + "; the tables that --csv writes list all.";
        PlanLine last = lines.get(MOST_LISTED);
        shown.add(new PlanLine(
                "more-" + last.label(), last.section(), text, new Reason.Chosen(text, List.of(), List.of())));
        return shown;
    }

    private GroupRow row(GroupOutcome outcome) {
        List<String> toRun = new ArrayList<>();
        outcome.obstacles().stream().limit(1).forEach(line -> toRun.add(untilAdvice(line.text())));
        outcome.wanted().forEach(line -> toRun.add(line.text()));
        return new GroupRow(
                outcome.group(),
                standing(outcome),
                outcome.way().orElse(""),
                String.join(" ", toRun),
                rows(outcome.leftOut()));
    }

    private static PooledRow row(PooledRetardation one) {
        return new PooledRow(
                one.eluent(),
                one.phase(),
                one.dye(),
                one.byGroup().size(),
                one.overall().mean(),
                one.overall().uncertainty(),
                one.median(),
                one.overall().between(),
                one.ownUncertainty(),
                one.farOut().stream().map(PooledRetardation.FarOut::group).toList());
    }

    private Place placeOf(GroupOutcome outcome) {
        return outcome.place().orElse(Place.wholeFile(lesson.file().toString()));
    }

    /** "1 to 6, 8 and 10". */
    static String shown(Collection<String> names) {
        List<String> runs = new ArrayList<>();
        List<String> all = List.copyOf(names);
        for (int i = 0; i < all.size(); ) {
            int last = i;
            while (last + 1 < all.size() && follows(all.get(last), all.get(last + 1))) {
                last++;
            }
            runs.add(last > i + 1 ? all.get(i) + " to " + all.get(last) : all.get(i));
            i = last > i + 1 ? last + 1 : i + 1;
        }
        return runs.size() <= MOST_LISTED
                ? Words.joined(runs)
                : String.join(", ", runs.subList(0, MOST_LISTED)) + " and others, " + all.size() + " in all";
    }

    private static boolean follows(String one, String next) {
        return one.matches("\\d{1,9}")
                && next.matches("\\d{1,9}")
                && Integer.parseInt(next) == Integer.parseInt(one) + 1;
    }
}
