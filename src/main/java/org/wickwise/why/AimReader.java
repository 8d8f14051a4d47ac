package org.wickwise.why;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.wickwise.rulebook.Conclusion;
import org.wickwise.rulebook.Judgement;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.SolventData;
import org.wickwise.text.NearMiss;
import org.wickwise.text.Place;
import org.wickwise.text.Problem;
import org.wickwise.text.ProblemsFound;

/** Reads what somebody wishes were so, from a short sentence. */
public final class AimReader {

    /** What can be wished for; words in capitals stand for names. */
    public static final List<String> EXAMPLES = List.of(
            "SOLVENT holds the load",
            "SOLVENT releases DYE",
            "SOLVENT sweeps",
            "SOLVENT may enter the column",
            "the plan pours SOLVENT",
            "DYE leaves alone",
            "there is a plan");

    private static final Pattern HOLDS = Pattern.compile("(.+) holds(?: the load| every dye)?");
    private static final Pattern RELEASES = Pattern.compile("(.+) releases (.+)");
    private static final Pattern SWEEPS = Pattern.compile("(.+) sweeps(?: every dye out)?");
    private static final Pattern ENTERS = Pattern.compile("(.+) may enter(?: the column)?");
    private static final Pattern POURS = Pattern.compile("the plan pours (.+)");
    private static final Pattern ALONE = Pattern.compile("(.+) leaves alone");
    private static final Pattern PLAN = Pattern.compile("(?:there is )?a plan");
    private static final Place ASKED = Place.wholeFile("needed");

    private final Judgement judgement;
    private final Subjects subjects;

    private AimReader(Judgement judgement, SolventData data) {
        this.judgement = judgement;
        this.subjects = new Subjects(judgement, data);
    }

    /** @throws ProblemsFound with what can be wished for, when these words say nothing of the kind */
    public static Aim read(String words, Judgement judgement, SolventData data) {
        return new AimReader(judgement, data).aim(Subjects.plain(words));
    }

    private Aim aim(String words) {
        Matcher releases = RELEASES.matcher(words);
        if (PLAN.matcher(words).matches()) {
            return new Aim.SomePlan();
        } else if (releases.matches()) {
            return releases(eluent(releases.group(1)), dye(releases.group(2)));
        }
        return named(POURS, words, name -> new Aim.PlanPours(eluent(name)))
                .or(() -> named(ALONE, words, name -> new Aim.LeavesAlone(dye(name))))
                .or(() -> named(ENTERS, words, name -> new Aim.MayEnter(eluent(name))))
                .or(() -> named(HOLDS, words, name -> holds(eluent(name))))
                .or(() -> named(SWEEPS, words, name -> sweeps(eluent(name))))
                .orElseThrow(() -> problem(
                        "`" + words + "` is nothing that can be wished for",
                        "one of: " + String.join("; ", EXAMPLES),
                        "write it in these words"));
    }

    private static Optional<Aim> named(Pattern sentence, String words, Function<String, Aim> aim) {
        Matcher matcher = sentence.matcher(words);
        return matcher.matches() ? Optional.of(aim.apply(matcher.group(1))) : Optional.empty();
    }

    private static Aim releases(Eluent eluent, Dye dye) {
        return new Aim.Concluded(eluent, new Conclusion.Releases(eluent, dye), eluent + " releases " + dye);
    }

    private static Aim holds(Eluent eluent) {
        return new Aim.Concluded(eluent, new Conclusion.Holds(eluent), eluent + " holds the load");
    }

    private static Aim sweeps(Eluent eluent) {
        return new Aim.Concluded(eluent, new Conclusion.Sweeps(eluent), eluent + " sweeps every dye out");
    }

    private Eluent eluent(String name) {
        List<String> known = judgement.eluents().stream().map(Eluent::name).toList();
        return subjects.eluent(name)
                .orElseThrow(() -> problem(
                        "no solvent or blend here is called `" + name + "`",
                        "a solvent of the table, or the eluent of a strip",
                        NearMiss.suggestion(name, known)));
    }

    private Dye dye(String name) {
        List<String> known = judgement.judged().dyes().stream().map(Dye::name).toList();
        return judgement.judged().dyes().stream()
                .filter(dye -> dye.name().equalsIgnoreCase(name))
                .findFirst()
                .orElseThrow(() -> problem(
                        "the mixture has no dye `" + name + "`",
                        "one of " + String.join(", ", known),
                        NearMiss.suggestion(name, known)));
    }

    private static ProblemsFound problem(String found, String expected, String wayOut) {
        return new ProblemsFound(List.of(new Problem(ASKED, found, expected, wayOut)));
    }
}
