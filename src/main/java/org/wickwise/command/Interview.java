package org.wickwise.command;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import org.wickwise.notebook.EntryReader;
import org.wickwise.substance.SolventData;
import org.wickwise.text.Node;
import org.wickwise.text.Node.Entry;
import org.wickwise.text.Node.Listing;
import org.wickwise.text.Node.Mapping;
import org.wickwise.text.Node.Scalar;
import org.wickwise.text.Place;
import org.wickwise.text.Problem;
import org.wickwise.text.ProblemsFound;

/**
 * Asks for an entry of a notebook, one question after the other. Each answer is read at once by the reader of files, and
 * asked for again with the message a file would get. `stop` or the end of input ends it anywhere.
 */
final class Interview {

    private static final String FILE = "answer";
    private static final String STOP = "stop";
    private static final String NOT_SEEN = "-";
    private static final String TOGETHER = "with ";

    private final BufferedReader answers;
    private final PrintWriter out;
    private final SolventData data;
    private int asked;
    private Mapping entry;

    /** What was entered. */
    record Told(Mapping entry, boolean isWhole) {}

    private static final class Stopped extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }

    Interview(BufferedReader answers, PrintWriter out, SolventData data) {
        this.answers = answers;
        this.out = out;
        this.data = data;
    }

    /** @param known what was said before, which is not asked for */
    Told ask(Mapping known) {
        entry = known;
        try {
            out.println("Enter `stop` to end anywhere; what you have entered is kept.");
            text("date", "Day the strips were run (year-month-day)", false);
            text("group", "Group (empty for none)", true);
            mixture();
            text("strips on", "Stationary phase of the strips", false);
            strips();
            return new Told(entry, true);
        } catch (Stopped stopped) {
            return new Told(entry, false);
        }
    }

    private void text(String key, String question, boolean mayBeEmpty) {
        if (entry.value(key).isEmpty()) {
            Scalar answer = answer(question, mayBeEmpty, said -> entry.with(key, said));
            entry = answer.text().isEmpty() ? entry : entry.with(key, answer);
        }
    }

    private void mixture() {
        Scalar name = answer("Name of the mixture", false, said -> entry.with("mixture", group("name", said)));
        entry = entry.with("mixture", group("name", name));
        Scalar dyes = answer("Dyes, with commas between them", false, said -> withDyes(name, said));
        entry = withDyes(name, dyes);
    }

    private Mapping withDyes(Scalar name, Scalar dyes) {
        List<Node> each = Arrays.stream(dyes.text().split(","))
                .map(dye -> (Node) new Scalar(dye.strip(), dyes.place()))
                .toList();
        return entry.with("mixture", group("name", name).with("dyes", new Listing(each, dyes.place())));
    }

    private List<String> dyes() {
        return entry.value("mixture").stream()
                .flatMap(mixture -> ((Mapping) mixture).value("dyes").stream())
                .flatMap(dyes -> ((Listing) dyes).items().stream())
                .map(dye -> ((Scalar) dye).text())
                .toList();
    }

    private void strips() {
        Map<String, Integer> replicates = new HashMap<>();
        List<Node> done = new ArrayList<>();
        entry = withStrips(done);
        while (true) {
            List<Node> before = List.copyOf(done);
            String question =
                    "Solvent of strip " + (done.size() + 1) + (done.isEmpty() ? "" : " (empty when all are in)");
            Scalar solvent = answer(question, !done.isEmpty(), said -> withStrip(before, group("solvent", said)));
            if (solvent.text().isEmpty()) {
                return;
            }
            int replicate = replicates.merge(solvent.text().toLowerCase(Locale.ROOT), 1, Integer::sum);
            done.add(strip(before, solvent, replicate));
            entry = withStrips(done);
        }
    }

    /** The draft holds the strip as far as it was told, so that nothing is lost when the answers stop inside it. */
    private Mapping strip(List<Node> before, Scalar solvent, int replicate) {
        Mapping strip = group("solvent", solvent);
        strip = replicate == 1
                ? strip
                : strip.with("replicate", new Scalar(String.valueOf(replicate), solvent.place()));
        entry = withStrip(before, strip);
        Mapping withoutFront = strip;
        strip = strip.with(
                "front mm",
                answer(
                        "  Front in mm from the origin",
                        false,
                        said -> withStrip(before, withoutFront.with("front mm", said))));
        entry = withStrip(before, strip);
        for (String dye : dyes()) {
            Mapping soFar = strip;
            String question = "  Travel of " + dye + " in mm (" + NOT_SEEN + " for not seen, `" + TOGETHER
                    + "NAME` for one spot with another dye)";
            Scalar travel = answer(question, false, said -> withStrip(before, withSpot(soFar, dye, said)));
            strip = withSpot(soFar, dye, travel);
            entry = withStrip(before, strip);
        }
        return strip;
    }

    private static Mapping withSpot(Mapping strip, String dye, Scalar said) {
        Scalar name = new Scalar(dye, said.place());
        if (said.text().equals(NOT_SEEN)) {
            List<Node> notSeen = new ArrayList<>(strip.value("not seen")
                    .map(listed -> ((Listing) listed).items())
                    .orElse(List.of()));
            notSeen.add(name);
            return strip.with("not seen", new Listing(notSeen, said.place()));
        }
        List<Entry> travels = new ArrayList<>(strip.value("travel mm")
                .map(spots -> ((Mapping) spots).entries())
                .orElse(List.of()));
        if (said.text().toLowerCase(Locale.ROOT).startsWith(TOGETHER)) {
            String other = said.text().substring(TOGETHER.length()).strip();
            for (int i = 0; i < travels.size(); i++) {
                String spot = travels.get(i).key().text();
                if (Arrays.stream(spot.split(" \\+ ")).anyMatch(other::equalsIgnoreCase)) {
                    travels.set(
                            i,
                            new Entry(
                                    new Scalar(spot + " + " + dye, said.place()),
                                    travels.get(i).value()));
                    return strip.with("travel mm", new Mapping(travels, said.place()));
                }
            }
        }
        travels.add(new Entry(name, said));
        return strip.with("travel mm", new Mapping(travels, said.place()));
    }

    private Mapping withStrip(List<Node> before, Mapping strip) {
        List<Node> all = new ArrayList<>(before);
        all.add(strip);
        return withStrips(all);
    }

    private Mapping withStrips(List<Node> strips) {
        return strips.isEmpty()
                ? entry
                : entry.with(
                        "strips", new Listing(List.copyOf(strips), strips.get(0).place()));
    }

    private static Mapping group(String key, Scalar value) {
        return new Mapping(List.of(new Entry(new Scalar(key, nowhere()), value)), nowhere());
    }

    /** Of what is not told yet no reader has to complain. */
    private static Place nowhere() {
        return Place.wholeFile(FILE);
    }

    /** @param holding the entry as it would be with an answer */
    private Scalar answer(String question, boolean mayBeEmpty, Function<Scalar, Mapping> holding) {
        while (true) {
            Scalar said = new Scalar(line(question), new Place(FILE, ++asked));
            if (said.text().isEmpty()) {
                if (mayBeEmpty) {
                    return said;
                }
                out.println("    An answer is needed here.");
                continue;
            }
            List<Problem> problems = problemsOf(holding.apply(said)).stream()
                    .filter(problem -> problem.place().equals(said.place()))
                    .toList();
            if (problems.isEmpty()) {
                return said;
            }
            problems.forEach(problem -> out.println(
                    "    " + problem.found() + "; expected " + problem.expected() + "\n    " + problem.wayOut()));
        }
    }

    private List<Problem> problemsOf(Mapping told) {
        try {
            EntryReader.of(told, data);
            return List.of();
        } catch (ProblemsFound found) {
            return found.problems();
        }
    }

    private String line(String question) {
        try {
            out.print(question + ": ");
            out.flush();
            String line = answers.readLine();
            if (line == null || line.strip().equalsIgnoreCase(STOP)) {
                throw new Stopped();
            }
            return line.strip();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
