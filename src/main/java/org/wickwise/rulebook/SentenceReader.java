package org.wickwise.rulebook;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.wickwise.rulebook.SlotKind.Misfit;
import org.wickwise.text.Letters;
import org.wickwise.text.NearMiss;
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

    private final Vocabulary vocabulary;
    private final Map<String, Limit> limits;
    private final Problems problems;

    /** @param limits that sentences may name */
    SentenceReader(Vocabulary vocabulary, Map<String, Limit> limits, Problems problems) {
        this.vocabulary = vocabulary;
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
        for (Sentence sentence : vocabulary.sentences()) {
            if ((concluding ? sentence.concludes() : sentence.means()).isEmpty()) {
                continue;
            }
            Optional<List<String>> slots = sentence.slotsIn(text.text());
            if (slots.isPresent()) {
                Said said = new Said(text.text(), sentence, slots.get(), text.place());
                if (misfit(said).isEmpty()) {
                    return lettersAgree(said, letters) ? Optional.of(said) : Optional.empty();
                }
                nearly = nearly.or(() -> Optional.of(said));
            }
        }
        nearly.ifPresentOrElse(this::reportMisfit, () -> reportUnknown(text, concluding));
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
                "write the sentence again on the keyboard, without copying"));
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

    private void reportMisfit(Said said) {
        int slot = misfitSlot(said).orElseThrow();
        Misfit misfit = misfit(said, slot).orElseThrow();
        trouble(
                misfit.trouble(),
                said.place(),
                said.slots().get(slot),
                misfit.found() + " in the sentence `" + said.written() + "`",
                misfit.expected(),
                misfit.wayOut().get());
    }

    private void reportUnknown(Scalar text, boolean concluding) {
        List<String> known = vocabulary.sentences().stream()
                .filter(sentence -> (concluding ? sentence.concludes() : sentence.means()).isPresent())
                .map(Sentence::example)
                .toList();
        boolean isProgramText = PROGRAM_TEXT.matcher(text.text()).find();
        List<String> near = isProgramText ? List.of() : NearMiss.of(text.text(), known);
        trouble(
                isProgramText ? RuleTrouble.PROGRAM_TEXT : RuleTrouble.UNKNOWN_SENTENCE,
                text.place(),
                text.text(),
                isProgramText
                        ? "`" + text.text() + "` looks like a piece of a program"
                        : "the sentence `" + text.text() + "` is not known "
                                + (concluding ? "as a conclusion" : "as a condition"),
                "a sentence of the vocabulary",
                near.isEmpty() ? "look it up with `wickwise rules words`" : "did you mean: `" + near.get(0) + "`?");
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
