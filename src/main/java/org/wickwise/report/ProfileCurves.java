package org.wickwise.report;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Map.Entry;
import org.wickwise.column.Band;
import org.wickwise.report.VolumeAxis.Tick;
import org.wickwise.substance.Dye;

/** The bell curves of a profile over their axis; each holds the same amount of dye and is named over its peak. */
final class ProfileCurves {

    private static final double FONT = 12;
    private static final double LINE = 15;
    private static final double WIDEST_NAME = 110;
    private static final double BETWEEN_NAMES = 10;
    private static final double FARTHEST_NAME = 90;
    private static final double NAMES_TO_PLOT = 14;
    private static final double SIGMAS_DRAWN = 4;
    private static final int POINTS_EACH_SIGMA = 8;
    private static final String BLACK = "stroke=\"#000000\"";

    /** One for each of the dyes a mixture can have. */
    private static final List<String> DASHES =
            List.of("none", "9 4", "2 3", "10 3 2 3", "18 4", "5 3", "10 3 2 3 2 3", "1 5");

    private final List<Entry<Dye, Band>> bands;
    private final VolumeAxis volumes;
    private final boolean namesFit;

    /** @param bands at least one */
    ProfileCurves(Map<Dye, Band> bands, VolumeAxis volumes) {
        this.bands = bands.entrySet().stream()
                .sorted(Comparator.comparingDouble(
                        (Entry<Dye, Band> band) -> band.getValue().middleMillilitres()))
                .toList();
        this.volumes = volumes;
        this.namesFit = namesFit();
    }

    /** Where the last of the curves has come down, in the unit of the bands; there has to be one. */
    static double end(Collection<Band> bands) {
        return bands.stream()
                .mapToDouble(band -> band.middleMillilitres() + SIGMAS_DRAWN * band.sigmaMillilitres())
                .max()
                .orElseThrow();
    }

    /** Whether every name has room near its own peak. */
    private boolean namesFit() {
        List<List<String>> names =
                bands.stream().map(band -> wrapped(band.getKey())).toList();
        double[] middles = places(names);
        for (int i = 0; i < middles.length; i++) {
            if (Math.abs(middles[i] - volumes.x(bands.get(i).getValue().middleMillilitres())) > FARTHEST_NAME) {
                return false;
            }
        }
        return names.stream().mapToDouble(ProfileCurves::room).sum() <= volumes.right() - volumes.left();
    }

    /** The line of a dye's curve. */
    String style(Dye dye) {
        return "fill=\"none\" " + BLACK + " stroke-width=\"2\" stroke-dasharray=\""
                + DASHES.get(Math.max(0, numberOf(dye) - 1) % DASHES.size()) + "\"";
    }

    /** The number that stands at the peak where the names have no room; empty where they have. */
    String tag(Dye dye) {
        return namesFit || numberOf(dye) == 0 ? "" : numberOf(dye) + "  ";
    }

    private int numberOf(Dye dye) {
        return bands.stream().map(Entry::getKey).toList().indexOf(dye) + 1;
    }

    /** The room that the names over the plot take. */
    double namesHeight() {
        int lines = bands.stream()
                .mapToInt(band -> words(band.getKey()).size())
                .max()
                .orElse(1);
        return lines * LINE + NAMES_TO_PLOT;
    }

    /** @param top where the highest peak ends */
    void draw(Drawing drawing, double top, double axis) {
        axes(drawing, top, axis);
        double[] middles =
                places(bands.stream().map(band -> words(band.getKey())).toList());
        for (int i = 0; i < bands.size(); i++) {
            drawing.open("class=\"curve\"");
            drawing.meaning(bands.get(i).getKey().name());
            drawing.path(
                    path(bands.get(i).getValue(), top, axis), style(bands.get(i).getKey()));
            drawing.close();
            name(drawing, bands.get(i), middles[i], top, axis);
        }
    }

    /** The middles of the names, side by side over the plot. */
    private double[] places(List<List<String>> names) {
        return Spread.apart(
                bands.stream()
                        .mapToDouble(band -> volumes.x(band.getValue().middleMillilitres()))
                        .toArray(),
                names.stream().mapToDouble(ProfileCurves::room).toArray(),
                volumes.left(),
                volumes.right());
    }

    private void name(Drawing drawing, Entry<Dye, Band> band, double middle, double top, double axis) {
        List<String> words = words(band.getKey());
        double foot = top - NAMES_TO_PLOT;
        double peak = y(band.getValue(), 0, top, axis);
        drawing.line(
                middle,
                foot + 3,
                volumes.x(band.getValue().middleMillilitres()),
                peak - 2,
                "stroke=\"#777777\" stroke-dasharray=\"1 2\"");
        drawing.texts(middle, foot - (words.size() - 1) * LINE, LINE, "text-anchor=\"middle\" " + Drawing.HALO, words);
    }

    private String path(Band band, double top, double axis) {
        int each = (int) (SIGMAS_DRAWN * POINTS_EACH_SIGMA);
        List<String> points = new ArrayList<>();
        for (int i = -each; i <= each; i++) {
            double sigmas = (double) i / POINTS_EACH_SIGMA;
            double volume = band.middleMillilitres() + sigmas * band.sigmaMillilitres();
            if (volume >= 0 && volume <= volumes.last()) {
                points.add(Drawing.number(volumes.x(volume)) + " " + Drawing.number(y(band, sigmas, top, axis)));
            }
        }
        return "M" + String.join(" L", points);
    }

    /** The same area under each curve: the peak is as high as the band is narrow. */
    private double y(Band band, double sigmas, double top, double axis) {
        double narrowest = bands.stream()
                .mapToDouble(other -> other.getValue().sigmaMillilitres())
                .min()
                .orElseThrow();
        return axis - (axis - top) * Math.exp(-sigmas * sigmas / 2) * narrowest / band.sigmaMillilitres();
    }

    private void axes(Drawing drawing, double top, double axis) {
        drawing.line(volumes.left(), top, volumes.left(), axis, BLACK);
        drawing.line(volumes.left(), axis, volumes.right(), axis, BLACK);
        double middle = (top + axis) / 2;
        String turned = "text-anchor=\"middle\" transform=\"rotate(-90 " + Drawing.number(volumes.left() - 12) + " "
                + Drawing.number(middle) + ")\"";
        drawing.text(volumes.left() - 12, middle, turned, "amount leaving");
        drawing.open("class=\"ticks\"");
        for (Tick tick : volumes.ticks()) {
            drawing.line(tick.x(), axis, tick.x(), axis + 5, BLACK);
            drawing.text(tick.x(), axis + 18, "text-anchor=\"middle\"", tick.label());
        }
        drawing.close();
        drawing.text((volumes.left() + volumes.right()) / 2, axis + 36, "text-anchor=\"middle\"", volumes.title());
    }

    private List<String> words(Dye dye) {
        return namesFit ? wrapped(dye) : List.of(Integer.toString(numberOf(dye)));
    }

    private static List<String> wrapped(Dye dye) {
        return Lettering.wrapped(dye.name(), WIDEST_NAME, FONT);
    }

    private static double room(List<String> words) {
        return BETWEEN_NAMES
                + words.stream()
                        .mapToDouble(line -> Lettering.width(line, FONT))
                        .max()
                        .orElse(0);
    }
}
