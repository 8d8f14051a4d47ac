package org.wickwise.rulebook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.wickwise.rulebook.OwnRules.SwitchedOff;
import org.wickwise.substance.SolventData;
import org.wickwise.text.Fields;
import org.wickwise.text.NearMiss;
import org.wickwise.text.Node;
import org.wickwise.text.Node.Entry;
import org.wickwise.text.Node.Mapping;
import org.wickwise.text.Numbers;
import org.wickwise.text.Place;
import org.wickwise.text.Problem;
import org.wickwise.text.Problems;
import org.wickwise.text.ProblemsFound;
import org.wickwise.text.YamlFile;

/**
 * Reads an instructor's folder: rule files, {@code limits.yaml}, {@code preferences.yaml} and {@code switched-off.yaml}.
 * Nothing outside of the folder is read, and nothing in it but YAML files.
 */
final class OwnRulesReader {

    static final String LIMITS = "limits.yaml";
    static final String PREFERENCES = "preferences.yaml";
    static final String SWITCHED_OFF = "switched-off.yaml";
    private static final Set<String> NO_RULE_FILES = Set.of(LIMITS, PREFERENCES, SWITCHED_OFF);
    private static final int MOST_FILES = 200;

    private final Path folder;
    private final String shownAs;
    private final Rulebook shipped;
    private final Problems problems;

    /** @param shipped the book that the folder adds to */
    OwnRulesReader(Path folder, Rulebook shipped, Problems problems) {
        this.folder = folder;
        this.shownAs = folder.toString().replace('\\', '/');
        this.shipped = shipped;
        this.problems = problems;
    }

    /**
     * @param vocabulary that the rules use
     * @throws ProblemsFound when the folder or a file of it cannot be read at all
     */
    OwnRules read(Vocabulary vocabulary, SolventData data) {
        List<String> names = names();
        List<Limit> limits = names.contains(LIMITS) ? limits(file(LIMITS)) : List.of();
        Map<String, Limit> all = new TreeMap<>(shipped.limits());
        limits.forEach(limit -> all.put(limit.name(), limit));
        List<SwitchedOff> off = names.contains(SWITCHED_OFF) ? switchedOff(file(SWITCHED_OFF)) : List.of();
        Set<String> taken = shipped.rules().stream().map(Rule::id).collect(Collectors.toSet());
        RuleReader reader = RuleReader.ofOwnRules(vocabulary, all, taken, problems);
        List<Rule> rules = new ArrayList<>();
        for (String name : names) {
            if (!NO_RULE_FILES.contains(name)) {
                rules.addAll(reader.rules(file(name)));
            }
        }
        Optional<Wishes> wishes = names.contains(PREFERENCES)
                ? Optional.of(new WishesReader(data, problems).wishes(file(PREFERENCES)))
                : Optional.empty();
        Set<String> newLimits = limits.stream()
                .map(Limit::name)
                .filter(name -> !shipped.limits().containsKey(name))
                .collect(Collectors.toSet());
        return new OwnRules(shownAs, rules, reader.instead(), off, limits, newLimits, wishes);
    }

    private Mapping file(String name) {
        return YamlFile.read(folder.resolve(name), shownAs + "/" + name);
    }

    /** The YAML files of the folder, none of them a link to somewhere else. */
    private List<String> names() {
        if (!Files.isDirectory(folder)) {
            throw problem(
                    Place.wholeFile(shownAs),
                    "there is no such folder",
                    "a folder with rules of your own",
                    "check the spelling, or make it and put a rule file into it");
        }
        List<String> names = YamlFile.namesIn(folder);
        if (names.size() > MOST_FILES) {
            throw problem(
                    Place.wholeFile(shownAs),
                    names.size() + " files",
                    "at most " + MOST_FILES,
                    "keep the rules of one room in one folder");
        }
        for (String name : names) {
            if (leadsOutOfTheFolder(folder.resolve(name))) {
                throw problem(
                        Place.wholeFile(shownAs + "/" + name),
                        "this is a link to a file somewhere else",
                        "a file of this folder",
                        "copy the file itself into the folder");
            }
        }
        return names;
    }

    private boolean leadsOutOfTheFolder(Path file) {
        try {
            return Files.isSymbolicLink(file) || !file.toRealPath().getParent().equals(folder.toRealPath());
        } catch (IOException gone) {
            return true;
        }
    }

    private static ProblemsFound problem(Place place, String found, String expected, String wayOut) {
        return new ProblemsFound(List.of(new Problem(place, found, expected, wayOut, RuleTrouble.FORM.code(), "")));
    }

    private List<Limit> limits(Mapping file) {
        List<Limit> limits = new ArrayList<>();
        Fields root = Fields.of(file, "limits of your own", Set.of("limits"), problems);
        for (Entry entry : root.entries("limits")) {
            limit(entry).ifPresent(limits::add);
        }
        return limits;
    }

    /** A shipped limit takes a value and a source; a new one all that a shipped one has. */
    private Optional<Limit> limit(Entry entry) {
        Limit known = shipped.limits().get(entry.key().text());
        if (known == null) {
            return LimitReader.limit(entry.key().text(), entry.value(), problems);
        }
        Fields fields = Fields.ofNode(entry.value(), "a limit of your own", Set.of("value", "source"), problems);
        OptionalDouble value = fields.number("value");
        if (value.isEmpty()) {
            if (!fields.has("value")) {
                fields.missing("value");
            }
            return Optional.empty();
        }
        if (value.getAsDouble() < known.lowest() || value.getAsDouble() > known.highest()) {
            problems.add(new Problem(
                    fields.placeOf("value"),
                    "the " + known.name() + " is " + Numbers.plain(value.getAsDouble(), 4),
                    "a value from " + Numbers.plain(known.lowest(), 4) + " to " + Numbers.plain(known.highest(), 4)
                            + " (" + known.unit() + ")",
                    "choose a value in that range; outside it the rules lose their meaning",
                    RuleTrouble.OUT_OF_RANGE.code(),
                    Numbers.plain(value.getAsDouble(), 6)));
        }
        return Optional.of(new Limit(
                known.name(),
                value.getAsDouble(),
                known.unit(),
                known.lowest(),
                known.highest(),
                known.meaning(),
                fields.requiredText("source"),
                entry.key().place()));
    }

    private List<SwitchedOff> switchedOff(Mapping file) {
        List<SwitchedOff> off = new ArrayList<>();
        Fields root = Fields.of(file, "the rules switched off", Set.of("switched off"), problems);
        for (Node node : root.list("switched off")) {
            Fields fields = Fields.ofNode(
                    node, "a rule switched off", Set.of("rule", "because", "its caution may vanish"), problems);
            String rule = fields.requiredText("rule");
            boolean mayVanish = fields.yesOrNo("its caution may vanish", "write yes, or leave the line out")
                    .orElse(false);
            SwitchedOff one = new SwitchedOff(rule, fields.requiredText("because"), mayVanish, fields.placeOf("rule"));
            if (isShipped(one) && isAccepted(one)) {
                off.add(one);
            }
        }
        return off;
    }

    private boolean isShipped(SwitchedOff off) {
        List<String> known = shipped.rules().stream().map(Rule::id).toList();
        if (known.contains(off.rule())) {
            return true;
        }
        if (!off.rule().isEmpty()) {
            problems.add(new Problem(
                    off.place(),
                    "no shipped rule is called `" + off.rule() + "`",
                    "the name of a shipped rule",
                    NearMiss.suggestion(off.rule(), known, List.of()),
                    RuleTrouble.UNKNOWN_RULE.code(),
                    off.rule()));
        }
        return false;
    }

    /** A rule that gives a caution goes only with a word that says so. */
    private boolean isAccepted(SwitchedOff off) {
        if (off.cautionMayVanish() || !shipped.cautionRules().contains(off.rule())) {
            return true;
        }
        problems.add(new Problem(
                off.place(),
                "the rule `" + off.rule() + "` gives a caution, which vanishes with it",
                "a line that says you mean it",
                "write `its caution may vanish: yes` under it, if the plan shall not give this caution",
                RuleTrouble.VANISHING_CAUTION.code(),
                off.rule()));
        return false;
    }
}
