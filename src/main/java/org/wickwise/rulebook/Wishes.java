package org.wickwise.rulebook;

import java.util.List;
import java.util.Map;
import org.wickwise.text.Place;

/**
 * What the preferences file says.
 *
 * @param chooseBy the criteria, the weightiest first
 * @param burdenOfRanking how much each greenness ranking of the table, and having none, counts against an eluent; 0 or more
 * @param cost what the last criterion, the cost, is made of
 * @param tailsToWaitFor after how many standard deviations of the last band a step may end, each above 0
 */
public record Wishes(List<Wish> chooseBy, Map<String, Double> burdenOfRanking, Cost cost, List<Double> tailsToWaitFor) {

    public Wishes {
        chooseBy = List.copyOf(chooseBy);
        burdenOfRanking = Map.copyOf(burdenOfRanking);
        tailsToWaitFor = List.copyOf(tailsToWaitFor);
    }

    /**
     * A criterion by its name, and where somebody wrote it.
     *
     * @param criterion in the words of the file
     */
    public record Wish(String criterion, Place place) {}

    /**
     * What each of these adds to the cost of a plan; all 0 or more.
     *
     * @param purityLost for each per cent of another dye in a dye's flask
     * @param recoveryLost for each per cent of a dye that is not in its flask
     * @param burden for each unit of burden of an eluent
     * @param columnVolume for each column volume poured
     * @param minute for each minute, where the flow is known
     * @param price for each unit of money, where every bottle has a price
     * @param step for each step
     */
    public record Cost(
            double purityLost,
            double recoveryLost,
            double burden,
            double columnVolume,
            double minute,
            double price,
            double step) {}
}
