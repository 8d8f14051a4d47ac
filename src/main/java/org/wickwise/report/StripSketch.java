package org.wickwise.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.wickwise.rulebook.Conclusion.Reading;
import org.wickwise.rulebook.Conclusion.SpotVerdict;
import org.wickwise.rulebook.Conclusion.StripVerdict;
import org.wickwise.rulebook.Judgement;
import org.wickwise.strip.Mishap;
import org.wickwise.strip.Spot;
import org.wickwise.strip.Strip;
import org.wickwise.substance.Dye;
import org.wickwise.text.Numbers;
import org.wickwise.text.Words;

/** One strip, drawn to scale round its origin line: x runs from its left edge, y from the origin, upwards negative. */
final class StripSketch {

    static final double FONT = 11;
    static final double LINE = 13;

    private static final double LANE = 14;
    private static final double LEAST_BODY = 46;
    private static final double BEYOND_FRONT = 12;
    private static final double BELOW_ORIGIN = 14;
    private static final double LEADER = 22;
    static final double MARK_ROOM = 15;
    private static final double SHORTEST_STREAK = 18;
    private static final double BETWEEN_SPOTS = 3;
    private static final String THIN = "stroke=\"#000000\" stroke-width=\"1\"";

    /** Words beside the strip, at the height of what they name. */
    private record Label(Optional<SpotPlace> spot, double wanted, List<String> lines) {
        double height() {
            return lines.size() * LINE + 3;
        }
    }

    private final Strip strip;
    private final Judgement judgement;
    private final double length;
    private final Reading reading;
    private final List<SpotPlace> places;
    private final List<Integer> lanes = new ArrayList<>();

    /**
     * @param unitsPerMillimetre the scale of the picture
     * @param nominalMillimetres the front of a strip that has none written down
     */
    StripSketch(Strip strip, Judgement judgement, double unitsPerMillimetre, double nominalMillimetres) {
        this.strip = strip;
        this.judgement = judgement;
        this.length = unitsPerMillimetre * strip.frontMillimetres().orElse(nominalMillimetres);
        this.reading = Stream.of(Reading.VOID, Reading.DOUBTFUL)
                .filter(word -> judgement.holds(new StripVerdict(strip, word)))
                .findFirst()
                .orElse(Reading.USABLE);
        this.places = SpotPlace.of(strip, judgement);
        layInLanes();
    }

    Strip strip() {
        return strip;
    }

    /** Spots that would cover one another lie side by side. */
    private void layInLanes() {
        List<Double> lowestInLane = new ArrayList<>();
        for (SpotPlace place : places) {
            double top = Math.max(place.high() * length, place.middle() * length + SpotMark.RADIUS + 1);
            double foot = Math.min(place.low() * length, place.middle() * length - SpotMark.RADIUS - 1);
            int lane = 0;
            while (lane < lowestInLane.size() && lowestInLane.get(lane) < top + BETWEEN_SPOTS) {
                lane++;
            }
            if (lane == lowestInLane.size()) {
                lowestInLane.add(foot);
            }
            lowestInLane.set(lane, isStreak(place) ? Math.min(foot, 0) : foot);
            lanes.add(lane);
        }
    }

    /** Whether some spot of it was judged by eye. */
    boolean isWatched() {
        return places.stream().anyMatch(SpotPlace::isWatched);
    }

    double bodyWidth() {
        int most = lanes.stream().mapToInt(lane -> lane + 1).max().orElse(1);
        return Math.max(LEAST_BODY, most * LANE + 20);
    }

    /** The room from the left edge to the end of the labels. */
    double width(double labelWidth) {
        return bodyWidth() + LEADER + labelWidth;
    }

    /** The room needed above the origin. */
    double above(double labelWidth) {
        List<Label> labels = labels(labelWidth);
        double[] middles = middles(labels);
        return Math.max(length + BEYOND_FRONT, labels.get(0).height() / 2 - middles[0]);
    }

    /** The room needed below the origin, captions left out. */
    double below(double labelWidth) {
        List<Label> labels = labels(labelWidth);
        int last = labels.size() - 1;
        return Math.max(BELOW_ORIGIN, middles(labels)[last] + labels.get(last).height() / 2);
    }

    /** What stands over the strip. */
    List<String> heading(double width) {
        String phase = strip.phase().name().equals(judgement.judged().column().phaseName())
                ? ""
                : ", on " + strip.phase().name();
        String replicate = strip.replicate() == 1 ? "" : ", strip " + strip.replicate();
        return Lettering.wrapped(strip.eluent().name() + phase + replicate, width, 12);
    }

    /** Under the strip, where it is not to be trusted: void or doubtful, and what went wrong. */
    List<String> verdict(double width) {
        if (reading == Reading.USABLE) {
            return List.of();
        }
        String mishaps = strip.mishaps().stream().map(Mishap::word).collect(Collectors.joining(", "));
        return Lettering.wrapped(reading.word() + (mishaps.isEmpty() ? "" : ": " + mishaps), width, FONT);
    }

    /** Under the verdict: what of the strip is no measurement. */
    List<String> captions(double width) {
        List<String> captions = new ArrayList<>();
        if (places.isEmpty()) {
            captions.add("no spot was read");
        }
        if (isWatched()) {
            captions.add("judged by eye: a sketch, not to scale");
        }
        if (strip.frontMillimetres().isEmpty() && !places.stream().allMatch(SpotPlace::isWatched)) {
            captions.add("reported as Rf only: drawn on a nominal length");
        }
        strip.gaps()
                .forEach(gap -> captions.add(
                        gap.ahead() + " and " + gap.behind() + ": " + gap.look().word()));
        if (!strip.notSeen().isEmpty()) {
            captions.add("not seen: "
                    + Words.joined(strip.notSeen().stream().map(Dye::name).toList()));
        }
        return captions.stream()
                .flatMap(caption -> Lettering.wrapped(caption, width, FONT).stream())
                .toList();
    }

    /** The strip in a sentence, for readers who cannot see the picture. */
    String inWords() {
        String front = strip.frontMillimetres().isPresent()
                ? "front at " + Numbers.plain(strip.frontMillimetres().getAsDouble(), 2) + " mm"
                : "front not written down";
        String spots = places.stream().map(this::inWords).collect(Collectors.joining("; "));
        String trust = reading == Reading.USABLE ? "" : " (" + reading.word() + ")";
        return Words.capital(strip.toString()) + trust + ", " + front + (spots.isEmpty() ? ", no spot" : ": " + spots)
                + ".";
    }

    private String inWords(SpotPlace place) {
        String value = place.retardation()
                .filter(read -> reading != Reading.VOID)
                .map(read -> ", Rf " + read.shown())
                .orElse("");
        return place.names() + " " + place.spot().position().words() + value + remarks(place);
    }

    void draw(Drawing drawing, double labelWidth) {
        drawing.meaning(inWords());
        body(drawing);
        List<Label> labels = labels(labelWidth);
        double[] middles = middles(labels);
        for (int i = 0; i < labels.size(); i++) {
            label(drawing, labels.get(i), middles[i]);
        }
        for (int i = 0; i < places.size(); i++) {
            spot(drawing, places.get(i), laneMiddle(lanes.get(i)));
        }
        if (reading == Reading.VOID) {
            drawing.line(0, -length - BEYOND_FRONT, bodyWidth(), BELOW_ORIGIN, THIN);
            drawing.line(0, BELOW_ORIGIN, bodyWidth(), -length - BEYOND_FRONT, THIN);
        }
    }

    private void body(Drawing drawing) {
        String outline = reading == Reading.DOUBTFUL ? " stroke-dasharray=\"7 4\"" : "";
        drawing.rectangle(
                0,
                -length - BEYOND_FRONT,
                bodyWidth(),
                length + BEYOND_FRONT + BELOW_ORIGIN,
                "fill=\"#f4f4f4\" " + THIN + outline);
        drawing.line(0, -length, bodyWidth(), -length, "class=\"front\" " + THIN + " stroke-dasharray=\"2 2\"");
        drawing.line(0, 0, bodyWidth(), 0, "class=\"origin\" " + THIN);
    }

    private double laneMiddle(int lane) {
        int most = lanes.stream().mapToInt(one -> one + 1).max().orElse(1);
        return bodyWidth() / 2 + (lane - (most - 1) / 2.0) * LANE;
    }

    private void spot(Drawing drawing, SpotPlace place, double x) {
        double y = -place.middle() * length;
        drawing.open("class=\"spot\"");
        drawing.meaning(inWords(place));
        if (isStreak(place)) {
            double foot = Math.max(0, y + SHORTEST_STREAK);
            String wedge = "M" + Drawing.number(x - 1) + " " + Drawing.number(foot) + " L"
                    + Drawing.number(x - SpotMark.RADIUS) + " " + Drawing.number(y) + " H"
                    + Drawing.number(x + SpotMark.RADIUS) + " L" + Drawing.number(x + 1) + " " + Drawing.number(foot)
                    + " Z";
            drawing.path(wedge, "class=\"streak\" fill=\"#999999\" " + THIN);
        }
        if (reading != Reading.VOID) {
            interval(drawing, place, x);
        }
        SpotMark.of(place.spot().dyes(), judgement.judged().dyes()).draw(drawing, x, y);
        drawing.close();
    }

    private void interval(Drawing drawing, SpotPlace place, double x) {
        double low = -place.low() * length;
        double high = -place.high() * length;
        String style = THIN + (place.isWatched() ? " stroke-dasharray=\"1 2\"" : "");
        drawing.line(x, low, x, high, "class=\"interval\" " + style);
        drawing.line(x - 4, low, x + 4, low, style);
        drawing.line(x - 4, high, x + 4, high, style);
    }

    /** The front, the spots and the origin, from the top down. */
    private List<Label> labels(double labelWidth) {
        List<Label> labels = new ArrayList<>();
        String front = strip.frontMillimetres().isPresent()
                ? "front " + Numbers.plain(strip.frontMillimetres().getAsDouble(), 2) + " mm"
                : "front, not measured";
        labels.add(new Label(Optional.empty(), -length, List.of(front)));
        for (SpotPlace place : places) {
            List<String> lines = Lettering.wrapped(words(place), labelWidth - MARK_ROOM, FONT);
            labels.add(new Label(Optional.of(place), -place.middle() * length, lines));
        }
        labels.add(new Label(Optional.empty(), 0, List.of("origin")));
        return labels;
    }

    private static double[] middles(List<Label> labels) {
        return Spread.apart(
                labels.stream().mapToDouble(Label::wanted).toArray(),
                labels.stream().mapToDouble(Label::height).toArray(),
                Double.NEGATIVE_INFINITY,
                Double.POSITIVE_INFINITY);
    }

    private void label(Drawing drawing, Label label, double middle) {
        double x = bodyWidth() + LEADER;
        double from = label.spot()
                .map(place -> laneMiddle(lanes.get(places.indexOf(place))))
                .orElse(bodyWidth());
        drawing.path(
                "M" + Drawing.number(from) + " " + Drawing.number(label.wanted()) + " H"
                        + Drawing.number(bodyWidth() + 3) + " L" + Drawing.number(x - 3) + " "
                        + Drawing.number(middle),
                "fill=\"none\" stroke=\"#777777\" stroke-width=\"0.8\"");
        label.spot().ifPresent(place -> SpotMark.of(
                        place.spot().dyes(), judgement.judged().dyes())
                .draw(drawing, x + SpotMark.RADIUS, middle));
        double indent = label.spot().isPresent() ? MARK_ROOM : 0;
        double first = middle - (label.lines().size() - 1) * LINE / 2 + 4;
        drawing.texts(x + indent, first, LINE, "font-size=\"11\"", label.lines());
    }

    /** A void strip is told without Rf: nothing follows from it. */
    private String words(SpotPlace place) {
        Spot.Position position = place.spot().position();
        String what;
        if (position instanceof Spot.Seen seen) {
            what = seen.behaviour().word();
        } else if (reading == Reading.VOID) {
            what = position instanceof Spot.Travelled travelled
                    ? "at " + Numbers.plain(travelled.millimetres(), 2) + " mm"
                    : "reported";
        } else {
            what = "Rf " + place.retardation().orElseThrow().shown();
        }
        return place.names() + " " + what.replace(' ', '\u00a0') + remarks(place);
    }

    private String remarks(SpotPlace place) {
        List<Dye> dyes = place.spot().dyes();
        String remarks = "";
        if (dyes.size() > 1) {
            remarks += ", one spot";
        }
        if (isStreak(place)) {
            remarks += ", streaked";
        }
        if (dyes.stream().anyMatch(strip.atTheEdge()::contains)) {
            remarks += ", at\u00a0the\u00a0edge";
        }
        for (Reading word : List.of(Reading.VOID, Reading.DOUBTFUL)) {
            if (dyes.stream().anyMatch(dye -> judgement.holds(new SpotVerdict(strip, dye, word)))) {
                return remarks + ", " + word.word();
            }
        }
        return remarks;
    }

    private boolean isStreak(SpotPlace place) {
        return place.spot().dyes().stream().anyMatch(strip.streaked()::contains);
    }
}
