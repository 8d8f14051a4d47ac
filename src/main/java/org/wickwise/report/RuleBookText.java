package org.wickwise.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.wickwise.rulebook.Limit;
import org.wickwise.rulebook.OwnRules.SwitchedOff;
import org.wickwise.rulebook.RuleExample;
import org.wickwise.rulebook.RulePage;
import org.wickwise.rulebook.Rulebook;
import org.wickwise.rulebook.Wishes.Wish;
import org.wickwise.text.Numbers;
import org.wickwise.text.Words;

/** The rule book as Markdown to read, made from what the program judges by. */
public final class RuleBookText {

    private final Rulebook book;
    private final List<RuleExample> examples;
    private final StringBuilder text = new StringBuilder();

    private RuleBookText(Rulebook book, List<RuleExample> examples) {
        this.book = book;
        this.examples = examples;
    }

    /** @param examples of the rules, shipped and own */
    public static String of(Rulebook book, List<RuleExample> examples) {
        RuleBookText made = new RuleBookText(book, examples);
        Map<String, List<RulePage>> subjects = book.pages().stream()
                .collect(Collectors.groupingBy(RulePage::layer, LinkedHashMap::new, Collectors.toList()));
        made.contents(subjects);
        subjects.forEach(made::subject);
        made.limits();
        made.preferences();
        made.switchedOff();
        return made.text.toString();
    }

    private void contents(Map<String, List<RulePage>> subjects) {
        line("# The rule book");
        line(book.pages().size()
                + " rules, each with its conditions, its reason, its source and its examples. Made from the"
                + " files that the program judges by.");
        List<String> entries = new ArrayList<>();
        subjects.forEach((layer, rules) -> entries.add(link(Words.capital(layer)) + ": " + rules.size()
                + (rules.size() == 1 ? " rule. " : " rules. ") + rules.get(0).about()));
        entries.add(link("Limits") + ": " + book.limits().size() + " numbers that rules and program compare with.");
        entries.add(link("Preferences") + ": how one plan is chosen among several.");
        list(entries);
    }

    private static String link(String heading) {
        return "[" + heading + "](#" + Words.slug(heading) + ")";
    }

    private void subject(String layer, List<RulePage> rules) {
        line("## " + Words.capital(layer));
        line(plain(rules.get(0).about()));
        rules.forEach(this::rule);
    }

    private void rule(RulePage rule) {
        line("### " + rule.rule());
        if (rule.isOwn()) {
            line("*A rule of your own"
                    + rule.inPlaceOf()
                            .map(shipped -> ", in the place of " + shipped)
                            .orElse("") + ".*");
        }
        line("> " + plain(rule.because()));
        line("When");
        list(rule.when().stream().map(RuleBookText::plain).toList());
        line("then");
        list(rule.then().stream().map(RuleBookText::plain).toList());
        List<String> below = new ArrayList<>();
        if (!rule.limits().isEmpty()) {
            below.add("Limits: "
                    + rule.limits().stream()
                            .map(name -> name + " " + book.limits().get(name).shown())
                            .collect(Collectors.joining("; ")));
        }
        below.add("Source: " + plain(rule.source()));
        examples.stream()
                .filter(example -> example.rule().equals(rule.rule()))
                .forEach(example -> below.add("Example (" + example.place() + "): " + plain(example.concludes())));
        below.add("Stands in " + rule.place());
        line(String.join("  \n", below));
    }

    private void limits() {
        line("## Limits");
        for (Limit limit : book.limits().values()) {
            line("### " + limit.name());
            line(plain(Words.capital(limit.meaning())) + ".");
            List<String> users = book.pages().stream()
                    .filter(rule -> rule.limits().contains(limit.name()))
                    .map(RulePage::rule)
                    .toList();
            list(List.of(
                    "Value: " + limit.shown() + ", to be set from " + Numbers.plain(limit.lowest(), 4) + " to "
                            + Numbers.plain(limit.highest(), 4),
                    "Source: " + plain(limit.source()),
                    users.isEmpty()
                            ? "Used by the program where it reckons"
                            : "Used by "
                                    + Words.joined(users.stream()
                                            .map(RuleBookText::link)
                                            .toList()),
                    "Stands in " + limit.place()));
        }
    }

    private void preferences() {
        line("## Preferences");
        line("The first of these that tells two plans apart decides.");
        list(book.wishes().chooseBy().stream().map(Wish::criterion).toList());
    }

    private void switchedOff() {
        if (!book.own().switchedOff().isEmpty()) {
            line("## Switched off");
            list(book.own().switchedOff().stream().map(RuleBookText::off).toList());
        }
    }

    private static String off(SwitchedOff off) {
        return off.rule() + ": " + plain(off.because()) + " (" + off.place() + ")";
    }

    /** Nothing that a person wrote is taken for markup. */
    private static String plain(String words) {
        return words.replaceAll("([\\\\<>*_\\[\\]#`])", "\\\\$1");
    }

    private void line(String line) {
        text.append(line).append("\n\n");
    }

    private void list(List<String> items) {
        items.forEach(item -> text.append("- ").append(item).append("\n"));
        text.append("\n");
    }
}
