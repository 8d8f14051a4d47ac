package org.wickwise.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.wickwise.rulebook.Limit;
import org.wickwise.text.Figures;
import org.wickwise.text.Numbers;
import org.wickwise.text.Words;

/** What all vapours in one space come to, for fire and for people, in words. */
final class VapoursInWords {

    private final Limit burningAlarm;
    private final List<String> exposureLimits;

    VapoursInWords(Limit burningAlarm, List<String> exposureLimits) {
        this.burningAlarm = burningAlarm;
        this.exposureLimits = exposureLimits;
    }

    static String terms(RoomVapours vapours) {
        return vapours.vapours().stream()
                .map(vapour ->
                        vapour.solvent() + " " + Figures.three(vapour.share().partsPerMillion()) + " ppm")
                .collect(Collectors.joining(", "));
    }

    boolean isBurningAlarm(RoomVapours vapours) {
        return Numbers.steady(vapours.percentOfLowerExplosiveLimit()) > burningAlarm.value();
    }

    String fire(RoomVapours vapours) {
        if (vapours.against(RoomVapours.LOWER_EXPLOSIVE_LIMIT).isEmpty()) {
            return "the table has no explosive limit for any of them.";
        }
        double percent = vapours.percentOfLowerExplosiveLimit();
        String limit = Figures.three(vapours.against(RoomVapours.LOWER_EXPLOSIVE_LIMIT)
                        .orElseThrow()
                        .limit()
                        .volumePercent())
                + " vol%";
        String shown = Figures.three(percent) + " % of the lower explosive limit of the mixture (" + limit + ")";
        String alarm = "the burning alarm of " + burningAlarm.shown();
        return percent >= 100
                ? shown + ": this air can explode, here or where fresh air thins it out."
                : isBurningAlarm(vapours)
                        ? shown + ", above " + alarm + ": a danger of fire."
                        : shown + ", not above " + alarm + ".";
    }

    String people(RoomVapours vapours) {
        List<String> sums = new ArrayList<>();
        for (String list : exposureLimits) {
            vapours.against(list).ifPresent(mixture -> sums.add(Figures.three(mixture.sumOfShares()) + " by " + list));
        }
        if (sums.isEmpty()) {
            return "The table has no exposure limit for any of them.";
        }
        return "For people the sum of shares is " + Words.joined(sums)
                + (vapours.worstExposure() > 1
                        ? "; above 1 is more than the limits for a working day allow."
                        : "; above 1 would be more than the limits for a working day allow.");
    }
}
