package org.wickwise.why;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.wickwise.reason.Reason;
import org.wickwise.reason.Reason.Concluded;
import org.wickwise.rulebook.Conclusion;
import org.wickwise.rulebook.Judgement;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;

/** The cautions and next strips that speak of what was asked about; a cause often stands there and nowhere else. */
final class Advised {

    private Advised() {}

    static List<Concluded> about(Judgement judgement, Eluent eluent) {
        return Stream.<Conclusion>concat(
                        judgement.all(Conclusion.EluentCaution.class).stream()
                                .filter(caution -> caution.eluent().equals(eluent)),
                        Stream.concat(
                                judgement.all(Conclusion.DyeCaution.class).stream()
                                        .filter(caution -> caution.eluent().equals(eluent)),
                                judgement.all(Conclusion.RunNextEluent.class).stream()
                                        .filter(next -> next.eluent().equals(eluent))))
                .map(judgement::reason)
                .toList();
    }

    static List<Concluded> about(Judgement judgement, Dye dye) {
        return Stream.<Conclusion>concat(
                        judgement.all(Conclusion.DyeCaution.class).stream()
                                .filter(caution -> caution.dye().equals(dye)),
                        judgement.all(Conclusion.RunNextDye.class).stream()
                                .filter(next -> next.dye().equals(dye)))
                .map(judgement::reason)
                .toList();
    }

    /** What names both dyes in one breath. */
    static List<Concluded> about(Judgement judgement, Dye one, Dye other) {
        List<Dye> dyes = judgement.judged().dyes();
        return Stream.<Conclusion>concat(
                        judgement.all(Conclusion.Caution.class).stream(),
                        judgement.all(Conclusion.RunNextDye.class).stream())
                .map(judgement::reason)
                .map(reason -> new Concluded(
                        reason.statement(),
                        reason.arguments().stream()
                                .filter(argument -> names(argument, one, dyes) && names(argument, other, dyes))
                                .toList()))
                .filter(reason -> !reason.arguments().isEmpty())
                .toList();
    }

    private static boolean names(Reason.Argument argument, Dye dye, List<Dye> dyes) {
        return argument.grounds().stream().anyMatch(ground -> names(ground.statement(), dye, dyes))
                && names(argument.because(), dye, dyes);
    }

    /** Whether a text names a dye as a whole word, and not only within the longer name of another dye. */
    static boolean names(String text, Dye dye, List<Dye> dyes) {
        String others = text;
        for (Dye other : dyes) {
            if (!other.equals(dye) && other.name().contains(dye.name())) {
                others = others.replace(other.name(), "");
            }
        }
        return Pattern.compile("(?<![\\p{L}\\p{N}])" + Pattern.quote(dye.name()) + "(?![\\p{L}\\p{N}])")
                .matcher(others)
                .find();
    }
}
