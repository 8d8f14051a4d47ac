package org.wickwise.rulebook;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.wickwise.bench.Setting;
import org.wickwise.notebook.RunMishap;
import org.wickwise.rulebook.SlotKind.Letter;
import org.wickwise.rulebook.SlotKind.OneOf;
import org.wickwise.rulebook.SlotKind.Quantity;
import org.wickwise.strip.Behaviour;
import org.wickwise.strip.GapLook;
import org.wickwise.strip.Mishap;
import org.wickwise.substance.Additive;
import org.wickwise.substance.DyeClass;
import org.wickwise.substance.Solvent;
import org.wickwise.substance.SolventData;
import org.wickwise.substance.StationaryPhase;
import org.wickwise.text.Fields;
import org.wickwise.text.NearMiss;
import org.wickwise.text.Node;
import org.wickwise.text.Node.Mapping;
import org.wickwise.text.Problems;

/** The sentences that rules are made of. It belongs to the program: a user's rules use it and cannot add to it. */
record Vocabulary(List<Sentence> sentences) {

    /** The kinds of slots, with the words of the closed lists. */
    record Kinds(Map<String, SlotKind> byName) {

        /** Properties whose values are words or codes that a rule may ask for. */
        private static final List<String> WORD_PROPERTIES =
                List.of("hazard codes", "signal word", "peroxide former", "halogenated", "greenness ranking");

        private static final double LONGEST_STRIP_MILLIMETRES = 2000;
        private static final double MOST_MONTHS = 1200;
        private static final double MOST_TIMES = 1000;
        private static final double MOST_COLUMN_VOLUMES = 1000;
        private static final double MOST_RESOLUTION = 100;

        static Kinds from(SolventData data, Collection<String> topics) {
            return new Kinds(Map.ofEntries(
                    variable("strip"),
                    variable("dye"),
                    variable("eluent"),
                    quantity(Quantity.of("Rf", "of Rf", false, "none", 1)),
                    quantity(Quantity.of("percent", "%", true, "%", 100)),
                    quantity(Quantity.of("millimetres", "mm", true, "mm", LONGEST_STRIP_MILLIMETRES)),
                    quantity(Quantity.of("months", "months", true, "months", MOST_MONTHS)),
                    quantity(Quantity.of("times", "times", false, "times", MOST_TIMES)),
                    quantity(Quantity.ofProperty(data.unitOfProperty())),
                    quantity(Quantity.of(
                            "column volumes", "column volumes", true, "column volumes", MOST_COLUMN_VOLUMES)),
                    quantity(Quantity.of("resolution", "of resolution", false, "none", MOST_RESOLUTION)),
                    words("mishap", Mishap.words()),
                    words("run mishap", RunMishap.words()),
                    words("behaviour", Behaviour.words()),
                    words("look", GapLook.words()),
                    words("separation", Conclusion.Separation.words()),
                    words("class", DyeClass.words()),
                    words("setting", Setting.words()),
                    words("phase", data.stationaryPhaseNames()),
                    words(
                            "phase kind",
                            data.stationaryPhases().stream()
                                    .map(StationaryPhase::kind)
                                    .distinct()
                                    .toList()),
                    words("solvent", data.solvents().stream().map(Solvent::name).toList()),
                    words("family", data.families()),
                    words("property", data.properties()),
                    words(
                            "additive kind",
                            data.additives().stream()
                                    .map(Additive::kind)
                                    .distinct()
                                    .toList()),
                    words("word", wordsOfTheTable(data)),
                    words("topic", topics)));
        }

        Optional<SlotKind> named(String name) {
            return Optional.ofNullable(byName.get(name));
        }

        private static Map.Entry<String, SlotKind> variable(String name) {
            return Map.entry(name, new Letter(name));
        }

        private static Map.Entry<String, SlotKind> quantity(Quantity quantity) {
            return Map.entry(quantity.name(), quantity);
        }

        private static Map.Entry<String, SlotKind> words(String name, Collection<String> words) {
            return Map.entry(name, new OneOf(name, words));
        }

        private static List<String> wordsOfTheTable(SolventData data) {
            return data.solvents().stream()
                    .flatMap(solvent -> WORD_PROPERTIES.stream().flatMap(property -> solvent.value(property).stream()))
                    .flatMap(value -> value.texts().stream())
                    .distinct()
                    .sorted()
                    .toList();
        }
    }

    static Vocabulary read(List<Mapping> files, Kinds kinds, Problems problems) {
        List<Sentence> sentences = new ArrayList<>();
        for (Mapping file : files) {
            Fields root = Fields.of(file, "a vocabulary file", Set.of("about", "sentences"), problems);
            for (Node node : root.list("sentences")) {
                Fields fields = Fields.ofNode(
                        node, "a sentence", Set.of("say", "means", "concludes", "for own rules", "example"), problems);
                String words = fields.requiredText("say");
                Sentence.unknownKinds(words, kinds)
                        .forEach(kind -> problems.add(
                                fields.placeOf("say"),
                                "`" + kind + "` is no kind of slot",
                                "one of "
                                        + String.join(
                                                ", ",
                                                kinds.byName().keySet().stream()
                                                        .sorted()
                                                        .toList()),
                                NearMiss.suggestion(kind, kinds.byName().keySet(), List.of())));
                sentences.add(Sentence.of(
                        words,
                        kinds,
                        fields.text("means"),
                        fields.text("concludes"),
                        fields.requiredText("example"),
                        fields.yesOrNo("for own rules", "write yes, or leave the line out")
                                .orElse(false),
                        fields.place()));
            }
        }
        return new Vocabulary(List.copyOf(sentences));
    }
}
