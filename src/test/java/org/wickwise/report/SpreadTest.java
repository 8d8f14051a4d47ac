package org.wickwise.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class SpreadTest {

    private static final double NONE = Double.NEGATIVE_INFINITY;
    private static final double NO_END = Double.POSITIVE_INFINITY;

    @Test
    void labelsWithRoomStayWhereTheyAre() {
        assertThat(Spread.apart(new double[] {0, 20, 50}, new double[] {10, 10, 10}, NONE, NO_END))
                .containsExactly(0, 20, 50);
    }

    @Test
    void labelsAtOnePlaceSpreadEvenlyRoundIt() {
        assertThat(Spread.apart(new double[] {5, 5, 5}, new double[] {10, 10, 10}, NONE, NO_END))
                .containsExactly(new double[] {-5, 5, 15}, within(1e-9));
    }

    @Test
    void noLabelLeavesTheRoom() {
        assertThat(Spread.apart(new double[] {1, 99}, new double[] {20, 20}, 0, 100))
                .containsExactly(new double[] {10, 90}, within(1e-9));
    }

    @Property
    void labelsNeverOverlapAndKeepTheirOrder(
            @ForAll @Size(min = 1, max = 10) List<@DoubleRange(min = 0, max = 100) Double> anywhere,
            @ForAll @DoubleRange(min = 1, max = 30) double size) {
        double[] wanted =
                anywhere.stream().mapToDouble(Double::doubleValue).sorted().toArray();
        double[] sizes = new double[wanted.length];
        Arrays.fill(sizes, size);
        double[] middles = Spread.apart(wanted, sizes, NONE, NO_END);
        for (int i = 1; i < middles.length; i++) {
            assertThat(middles[i] - middles[i - 1]).isGreaterThanOrEqualTo(size - 1e-9);
        }
        assertThat(Arrays.stream(middles).average().orElseThrow())
                .isCloseTo(Arrays.stream(wanted).average().orElseThrow(), within(1e-6));
    }
}
