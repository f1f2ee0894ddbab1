// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.statistics.inference.AlternativeHypothesis;
import org.apache.commons.statistics.inference.BinomialTest;
import org.junit.jupiter.api.Test;

class SignTestTest {

    @Test
    void agreesWithPublishedCases() {
        // Hollander & Wolfe 1973 depression data, 7 of 9: 23/128 (seen, DescTools SignTest)
        double[] first = Published.group("hw-depression", "first");
        double[] second = Published.group("hw-depression", "second");
        SignTest depression = SignTest.of(
                IntStream.range(0, 9).mapToDouble(i -> first[i] - second[i]).toArray());
        assertEquals(new SignTest(7, 2), depression);
        assertEquals(Fractions.of("23/128"), depression.exact());
        assertEquals(Fractions.of("23/256"), depression.exactTail());
        // DescTools SignTest example, mu 4: 0.1796875 (seen)
        SignTest light = SignTest.of(Arrays.stream(Published.group("light-diff", "d"))
                .map(d -> d - 4)
                .toArray());
        assertEquals(0.1796875, light.exact().value());
    }

    @Test
    void leavesOutWhatDoesNotDiffer() {
        assertEquals(new SignTest(1, 1), SignTest.of(3, 0, -0.0, Double.NEGATIVE_INFINITY));
        assertEquals(new SignTest(1, 0), SignTest.within(0.1, 3, 0.05, -0.05));
    }

    @Test
    void nothingShowsNothing() {
        SignTest none = SignTest.of();
        assertEquals(ExactProbability.of(1, 1), none.exact());
        assertEquals(Conclusion.INSUFFICIENT_DATA, none.conclusion());
        assertThrows(IllegalArgumentException.class, () -> new SignTest(-1, 2));
    }

    @Property(tries = 2000)
    void agreesWithTheBinomialTest(
            @ForAll @IntRange(min = 0, max = 200) int rises, @ForAll @IntRange(min = 0, max = 200) int falls) {
        SignTest test = new SignTest(rises, falls);
        double tail = BinomialTest.withDefaults()
                .with(AlternativeHypothesis.LESS_THAN)
                .test(test.n(), Math.min(rises, falls), 0.5)
                .getPValue();
        assertEquals(tail, test.exactTail().value(), 1e-13);
        assertEquals(Math.min(1, 2 * tail), test.exact().value(), 1e-13);
    }
}
