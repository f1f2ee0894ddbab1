// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.summary;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.statistics.Interval;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.hipparchus.stat.interval.BinomialProportion;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

public class PassingShareTest {

    @ParameterizedTest(name = "{0} of {1}: {4}")
    @CsvSource(delimiter = '|', textBlock = """
        # of | n | low                  | high              | source and mark
        682 | 925 | 0.707668264079039    | 0.765406558241525 | Conover 1971 p. 97 (seen, R 4.2.2 binom.test)
        81  | 263 | 0.252736745585271    | 0.367621922601351 | Newcombe 1998 table I: .2527, .3676 (memory; data seen, DescTools)
        15  | 148 | 0.0578440100834486   | 0.161650490349479 | Newcombe 1998 table I: .0578, .1617 (memory; data seen)
        0   | 20  | 0                    | 0.168433470983085 | Newcombe 1998 table I: 0, .1684 (memory; data seen)
        1   | 29  | 0.000872646883579922 | 0.177644295488723 | Newcombe 1998 table I: .0009, .1776 (memory; data seen)
        0   | 10  | 0                    | 0.308497107818761 | 1 - 0.025^(1/10) (derived)
        1   | 10  | 0.00252857854446178  | 0.445016117028195 | incomplete beta function (derived)
        7   | 20  | 0.153909204784541    | 0.592188534532828 | incomplete beta function (derived)
        10  | 10  | 0.691502892181239    | 1                 | 0.025^(1/10) (derived)
        """)
    void agreesWithPublishedCases(int passing, int n, double low, double high, String source) {
        Interval interval = new PassingShare(passing, n).interval(0.95);
        assertEquals(low, interval.low(), 1e-14, source);
        assertEquals(high, interval.high(), 1e-14);
        assertEquals((double) passing / n, new PassingShare(passing, n).share());
    }

    @ParameterizedTest(name = "{0} of {0}")
    @CsvSource({"3, 0.37", "10, 0.74", "59, 0.95"})
    void ifAllPassTheBoundIsARoot(int n, double bound) {
        // 0.05^(1/n): 37 %, 74 %, 95 % (derived)
        double lower = new PassingShare(n, n).lowerBound(0.95);
        assertEquals(Math.pow(0.05, 1.0 / n), lower, 1e-13);
        assertEquals(bound, lower, 0.005);
    }

    @Test
    void fiftyNineShowNinetyFivePercent() {
        assertEquals(59, PassingShare.locationsFor(0.95, 0.95));
        assertTrue(new PassingShare(58, 58).lowerBound(0.95) < 0.95);
        assertTrue(new PassingShare(59, 59).lowerBound(0.95) >= 0.95);
        assertThrows(IllegalArgumentException.class, () -> PassingShare.locationsFor(1, 0.95));
        assertThrows(IllegalArgumentException.class, () -> PassingShare.locationsFor(0.5, 95));
    }

    @ParameterizedTest(name = "{0}, {1}: {2}")
    @CsvSource(delimiter = '|', textBlock = """
        # share | level   | n  | source and mark
        0.1     | 0.9     | 1  | 0.1^1 is 1 - 0.9 (derived)
        0.1     | 0.99999 | 5  | 0.1^5 is 1 - 0.99999 (derived)
        0.2     | 0.99968 | 5  | 0.2^5 is 0.00032 (derived)
        0.5     | 0.75    | 2  | 0.5^2 is 0.25 (derived)
        0.5     | 0.7501  | 3  | 0.5^2 is more than 0.2499 (derived)
        0.9     | 0.271   | 3  | 0.9^3 is 0.729 (derived)
        0.9     | 0.95    | 29 | 29 of 29 for 90 % at 95 % confidence: common practice (Wilks 1941, first order, memory)
        0.8     | 0.95    | 14 | 0.8^14 = 0.044, 0.8^13 = 0.055 (derived)
        """)
    void fewestLocationsAreExactWherePowerEqualsComplementOfLevel(double share, double level, int n, String source) {
        assertEquals(n, PassingShare.locationsFor(share, level), source);
    }

    @Test
    void nothingJudgedShowsNothing() {
        assertEquals(new Interval(0, 1, 0.95), new PassingShare(0, 0).interval(0.95));
        assertEquals(0, new PassingShare(0, 0).lowerBound(0.95));
        assertThrows(IllegalArgumentException.class, () -> new PassingShare(3, 2));
        assertThrows(IllegalArgumentException.class, () -> new PassingShare(-1, 2));
        assertEquals(
                "3 of 3 pass; at least 36.84 % of the area passes (one-sided 95 % confidence)",
                new PassingShare(3, 3).toString());
    }

    @Property(tries = 2000)
    void agreesWithHipparchus(@ForAll @IntRange(min = 2, max = 300) int n, @ForAll @IntRange(max = 300) int passing) {
        int k = passing % n;
        if (k == 0) {
            return;
        }
        // it takes the count from the share by cutting off: a half more keeps rounding from losing one
        var other = BinomialProportion.getClopperPearsonInterval(n, (k + 0.5) / n, 0.95);
        Interval interval = new PassingShare(k, n).interval(0.95);
        assertEquals(other.getLowerBound(), interval.low(), 1e-7);
        assertEquals(other.getUpperBound(), interval.high(), 1e-7);
    }
}
