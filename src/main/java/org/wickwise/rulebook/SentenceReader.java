package org.wickwise.rulebook;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.wickwise.rulebook.SlotKind.Misfit;
import org.wickwise.text.Letters;
import org.wickwise.text.Node.Scalar;
import org.wickwise.text.Place;
import org.wickwise.text.Problem;
import org.wickwise.text.Problems;

/**
 * Checks every sentence of a rule against the vocabulary before anything reaches the engine: an unknown sentence, a word
 * outside its closed list, a letter used for two kinds of things are told with line and way out.
 */
final class SentenceReader {

    static final int LONGEST_SENTENCE = 300;
    private static final int FIRST_PRINTABLE = ' ';
    private static final int LAST_PRINTABLE = '~';
    private static final Pattern PROGRAM_TEXT =
            Pattern.compile("^\\s*>|[;$=<>{}\\\\|&]|\\(.*\\)|\\b(?:import|function|global|package|eval|new|class)\\b");

    private static final Pattern AND_OR = Pattern.compile(" (?:and|or) ");
    private static final String WITHOUT_CURLS = "leave it out, or write a plain \" before and behind the sentence";
    /** What word processors and copied texts bring along, and what to do about it. */
    private static final Map<Integer, String> IN_PLACE_OF = Map.of(
            0x2018, "write the plain sign ' in its place",
            0x2019, "write the plain sign ' in its place",
            0x201C, WITHOUT_CURLS,
            0x201D, WITHOUT_CURLS,
            0x201E, WITHOUT_CURLS,
            0x2013, "write the plain sign - in its place",
            0x00A0, "write a plain blank in its place",
            0x00B0, "write `deg` in its place, as in `40 degC`",
            0x00B5, "write `u` in its place, as in `um`");

    private final List<Sentence> conditions;
    private final List<Sentence> conclusions;
    private final Map<String, Limit> limits;
    private final Problems problems;

    /** @param limits that sentences may name */
    SentenceReader(Vocabulary vocabulary, Map<String, Limit> limits, Problems problems) {
        this.conditions = vocabulary.sentences().stream()
                .filter(sentence -> sentence.means().isPresent())
                .toList();
        this.conclusions = vocabulary.sentences().stream()
                .filter(sentence -> sentence.concludes().isPresent())
                .toList();
        this.limits = limits;
        this.problems = problems;
    }

    /**
     * The sentence as it stands in a rule; empty, with the reason told, when it is none.
     *
     * @param concluding whether it stands under `then`
     * @param letters what each letter of the rule stands for so far; takes the new ones
     */
    Optional<Said> said(Scalar text, boolean concluding, Map<String, SlotKind> letters) {
        if (!isPlain(text)) {
            return Optional.empty();
        }
        Optional<Said> nearly = Optional.empty();
        for (Sentence sentence : sentences(concluding)) {
            Optional<List<String>> slots = sentence.slotsIn(text.text());
            if (slots.isPresent()) {
                Said said = new Said(text.text(), sentence, slots.get(), text.place());
                if (misfit(said).isEmpty()) {
                    return lettersAgree(said, letters) ? Optional.of(said) : Optional.empty();
                }
                nearly = nearly.filter(other ->
                                other.sentence().ownLetters() >= said.sentence().ownLetters())
                        .or(() -> Optional.of(said));
            }
        }
        nearly.ifPresentOrElse(said -> reportMisfit(said, concluding), () -> reportUnknown(text, concluding));
        return Optional.empty();
    }

    /** Short, and in letters that look like what they are. */
    private boolean isPlain(Scalar text) {
        if (text.text().length() > LONGEST_SENTENCE) {
            trouble(
                    RuleTrouble.TOO_LONG,
                    text.place(),
                    "",
                    "a sentence of " + text.text().length() + " characters",
                    "at most " + LONGEST_SENTENCE,
                    "shorten it");
            return false;
        }
        Optional<Integer> foreign = text.text()
                .codePoints()
                .filter(letter -> letter < FIRST_PRINTABLE || letter > LAST_PRINTABLE)
                .boxed()
                .findFirst();
        foreign.ifPresent(letter -> trouble(
                RuleTrouble.FOREIGN_LETTER,
                text.place(),
                Character.toString(letter),
                "a letter of another alphabet or an invisible one stands in the sentence: " + Letters.nameOf(letter),
                "plain letters, digits and punctuation",
                IN_PLACE_OF.getOrDefault(letter, "write the sentence again on the keyboard, without copying")));
        return foreign.isEmpty();
    }

    /** The number of the first slot whose text does not belong there; empty when all fit. */
    private Optional<Integer> misfitSlot(Said said) {
        return IntStream.range(0, said.slots().size())
                .boxed()
                .filter(i -> misfit(said, i).isPresent())
                .findFirst();
    }

    private Optional<Misfit> misfit(Said said) {
        return misfitSlot(said).flatMap(i -> misfit(said, i));
    }

    private Optional<Misfit> misfit(Said said, int slot) {
        return said.sentence().slots().get(slot).kind().misfit(said.slots().get(slot), limits, said.slot("property"));
    }

    private void reportMisfit(Said said, boolean concluding) {
        int slot = misfitSlot(said).orElseThrow();
        Misfit misfit = misfit(said, slot).orElseThrow();
        trouble(
                misfit.trouble(),
                said.place(),
                said.slots().get(slot),
                misfit.found() + " in the sentence `" + said.written() + "`",
                misfit.expected(),
                slip(said.written(), concluding)
                        .or(() -> wordOfAnotherList(said, slot, concluding))
                        .orElseGet(misfit.wayOut()));
    }

    private void reportUnknown(Scalar text, boolean concluding) {
        boolean isProgramText = PROGRAM_TEXT.matcher(text.text()).find();
        List<String> meant = isProgramText ? List.of() : meaning(concluding).nearest(text.text());
        trouble(
                isProgramText ? RuleTrouble.PROGRAM_TEXT : RuleTrouble.UNKNOWN_SENTENCE,
                text.place(),
                text.text(),
                isProgramText
                        ? "`" + text.text() + "` looks like a piece of a program"
                        : "the sentence `" + text.text() + "` is not known "
                                + (concluding ? "as a conclusion" : "as a condition"),
                "a sentence of the vocabulary",
                slip(text.text(), concluding)
                        .orElse(
                                meant.isEmpty()
                                        ? "look it up with `wickwise rules words`"
                                        : "did you mean: `" + String.join("` or `", meant) + "`?"));
    }

    /** Two sentences in one, or a full stop behind one. */
    private Optional<String> slip(String written, boolean concluding) {
        if (written.endsWith(".") && isSentence(written.substring(0, written.length() - 1), concluding)) {
            return Optional.of("leave the full stop out");
        }
        Matcher between = AND_OR.matcher(written);
        while (between.find()) {
            if (isSentence(written.substring(0, between.start()), concluding)
                    || isSentence(written.substring(between.end()), concluding)) {
                return Optional.of(
                        between.group().equals(" or ")
                                ? "there is no `or`: write a second rule"
                                : "put a comma between two sentences");
            }
        }
        return Optional.empty();
    }

    private boolean isSentence(String written, boolean concluding) {
        return sentences(concluding).stream().anyMatch(sentence -> sentence.slotsIn(written)
                .map(slots -> new Said(written, sentence, slots, sentence.place()))
                .filter(said -> misfit(said).isEmpty())
                .isPresent());
    }

    /** A word that stands in the wrong sentence: "E is SOLVENT" asks for a class of dyes. */
    private Optional<String> wordOfAnotherList(Said said, int slot, boolean concluding) {
        return meaning(concluding)
                .nearestWith(said.slots().get(slot), said.written())
                .map(near -> "did you mean: `" + near + "`?");
    }

    private MeantSentence meaning(boolean concluding) {
        return new MeantSentence(sentences(concluding), limits);
    }

    private List<Sentence> sentences(boolean concluding) {
        return concluding ? conclusions : conditions;
    }

    private boolean lettersAgree(Said said, Map<String, SlotKind> letters) {
        for (int i = 0; i < said.slots().size(); i++) {
            SlotKind kind = said.sentence().slots().get(i).kind();
            if (!kind.isVariable()) {
                continue;
            }
            SlotKind earlier = letters.putIfAbsent(said.slots().get(i), kind);
            if (earlier != null && !earlier.name().equals(kind.name())) {
                trouble(
                        RuleTrouble.TWO_KINDS,
                        said.place(),
                        said.written(),
                        "`" + said.slots().get(i) + "` stands for a " + earlier.name() + " above and for a "
                                + kind.name() + " here",
                        "one letter for one thing",
                        "use another letter");
                return false;
            }
        }
        return true;
    }

    private void trouble(RuleTrouble trouble, Place place, String words, String found, String expected, String way) {
        problems.add(new Problem(place, found, expected, way, trouble.code(), words));
    }
}
