package org.wickwise.rulebook;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.wickwise.column.ColumnSizes;
import org.wickwise.strip.BlendWishes;
import org.wickwise.substance.SolventData;
import org.wickwise.text.Fields;
import org.wickwise.text.Node.Mapping;
import org.wickwise.text.Node.Scalar;
import org.wickwise.text.Problems;
import org.wickwise.text.ProblemsFound;
import org.wickwise.text.YamlFile;

/**
 * The rules, limits and preferences of a folder, read and checked, not yet compiled.
 *
 * @param rules in the order of the layers, then of their names
 * @param topics what cautions are about, in the order of printing
 * @param wishes how one plan is chosen among several
 * @param blends what a blend worth proposing looks like
 * @param columnSizes how large a column for how much mixture
 * @param sentences of the vocabulary
 * @param own what an instructor keeps beside the shipped book; it is in the rules and limits already
 */
public record Rulebook(
        List<Rule> rules,
        Map<String, Limit> limits,
        List<String> topics,
        Wishes wishes,
        BlendWishes blends,
        ColumnSizes columnSizes,
        List<Sentence> sentences,
        OwnRules own) {

    /** @throws ProblemsFound with every problem of the folder */
    public static Rulebook read(Path folder, SolventData data) {
        return read(folder, Optional.empty(), data);
    }

    /**
     * The rule book of a folder with an instructor's own rules beside it.
     *
     * @param ownFolder empty where there are none
     * @throws ProblemsFound with every problem of the two folders
     */
    public static Rulebook read(Path folder, Optional<Path> ownFolder, SolventData data) {
        Problems problems = new Problems();
        Map<String, Limit> limits = LimitReader.limits(read(folder, "limits.yaml"), problems);
        List<String> topics = new ArrayList<>();
        Fields topicsFile = Fields.of(read(folder, "topics.yaml"), "the topics", Set.of("topics"), problems);
        topicsFile.texts("topics").stream().map(Scalar::text).forEach(topics::add);
        Vocabulary vocabulary = Vocabulary.read(yamlIn(folder, "words"), Vocabulary.Kinds.from(data, topics), problems);
        RuleReader reader = RuleReader.ofShippedRules(vocabulary, limits, problems);
        List<Rule> rules = new ArrayList<>();
        for (Mapping file : yamlIn(folder, "layers")) {
            rules.addAll(reader.rules(file).stream()
                    .sorted(Comparator.comparing(Rule::id))
                    .toList());
        }
        Wishes wishes = new WishesReader(data, problems).wishes(read(folder, "preferences.yaml"));
        BlendWishes blends = new BlendWishesReader(problems).wishes(read(folder, "blends.yaml"));
        ColumnSizes columnSizes = new ColumnSizesReader(problems).sizes(read(folder, "column-sizes.yaml"));
        problems.throwIfAny();
        Rulebook shipped = new Rulebook(
                List.copyOf(rules),
                limits,
                List.copyOf(topics),
                wishes,
                blends,
                columnSizes,
                vocabulary.sentences(),
                OwnRules.none());
        return ownFolder.map(own -> shipped.beside(own, data)).orElse(shipped);
    }

    /**
     * As {@link #read(Path, Optional, SolventData)}, but also where own rules would never come to an end: a book to look for
     * mistakes in, and not to judge by.
     *
     * @throws ProblemsFound when a file is not as it has to be
     */
    public static Rulebook readToCheck(Path folder, Optional<Path> ownFolder, SolventData data) {
        Rulebook shipped = read(folder, data);
        return ownFolder.map(own -> shipped.besideToCheck(own, data)).orElse(shipped);
    }

    private Rulebook besideToCheck(Path folder, SolventData data) {
        Problems problems = new Problems();
        Rulebook together =
                with(new OwnRulesReader(OwnFolder.at(folder), this, problems).read(new Vocabulary(sentences), data));
        if (!problems.isEmpty()) {
            SelfDenial.in(together).forEach(problems::add);
        }
        problems.throwIfAny();
        return together;
    }

    /** @throws ProblemsFound with every problem of the folder, also of rules that would never come to an end */
    Rulebook beside(Path folder, SolventData data) {
        Problems problems = new Problems();
        return beside(new OwnRulesReader(OwnFolder.at(folder), this, problems), data, problems);
    }

    /**
     * As if a folder with these files stood beside this book.
     *
     * @param texts the content of files by their names
     * @throws ProblemsFound as for a folder
     */
    Rulebook besideTexts(Map<String, String> texts, SolventData data) {
        Problems problems = new Problems();
        return beside(new OwnRulesReader(OwnFolder.of(texts), this, problems), data, problems);
    }

    private Rulebook beside(OwnRulesReader reader, SolventData data, Problems problems) {
        OwnRules own = reader.read(new Vocabulary(sentences), data);
        problems.throwIfAny();
        Rulebook together = with(own);
        SelfDenial.in(together).forEach(problems::add);
        problems.throwIfAny();
        return together;
    }

    /** The book with an instructor's own rules in it. */
    private Rulebook with(OwnRules own) {
        List<Rule> together = rules.stream()
                .filter(rule -> !own.takesAway(rule.id()))
                .collect(Collectors.toCollection(ArrayList::new));
        together.addAll(own.rules());
        Map<String, Limit> all = new TreeMap<>(limits);
        own.limits().forEach(limit -> all.put(limit.name(), limit));
        return new Rulebook(
                List.copyOf(together), all, topics, own.wishes().orElse(wishes), blends, columnSizes, sentences, own);
    }

    /** Every rule as a reader of the book sees it, in the order of the book. */
    public List<RulePage> pages() {
        return rules.stream().map(rule -> RulePage.of(rule, own)).toList();
    }

    /** Every sentence of the vocabulary as a writer of rules sees it, in the order of the files. */
    public List<WordsPage> words() {
        return sentences.stream()
                .map(sentence -> WordsPage.of(sentence, this::limitsIn))
                .toList();
    }

    /** The limits that some rule names in the place of a number of this kind. */
    private Set<String> limitsIn(SlotKind kind) {
        return kind.isNumber()
                ? rules.stream()
                        .flatMap(rule -> Stream.concat(rule.when().stream(), rule.then().stream()))
                        .flatMap(said -> said.slot(kind.name()).stream())
                        .map(SlotKind.LIMIT::matcher)
                        .filter(Matcher::matches)
                        .map(limit -> limit.group(1))
                        .collect(Collectors.toCollection(TreeSet::new))
                : Set.of();
    }

    /** The names of the rules that may give a caution. */
    public List<String> cautionRules() {
        return rules.stream()
                .filter(rule -> rule.then().stream()
                        .anyMatch(then -> then.sentence().concludes().orElse("").contains("Caution(")))
                .map(Rule::id)
                .toList();
    }

    /** The same rules in another order; it changes nothing, and a test holds that. */
    Rulebook inOrder(List<Rule> ordered) {
        return new Rulebook(List.copyOf(ordered), limits, topics, wishes, blends, columnSizes, sentences, own);
    }

    /** The same book with other limits. */
    Rulebook with(Map<String, Limit> others) {
        return new Rulebook(rules, Map.copyOf(others), topics, wishes, blends, columnSizes, sentences, own);
    }

    private static Mapping read(Path folder, String name) {
        return YamlFile.read(folder.resolve(name), "rules/" + name);
    }

    private static List<Mapping> yamlIn(Path folder, String inner) {
        return YamlFile.namesIn(folder.resolve(inner)).stream()
                .map(name -> read(folder, inner + "/" + name))
                .toList();
    }
}
