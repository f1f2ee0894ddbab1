// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigInteger;
import org.junit.jupiter.api.Test;

class ExactProbabilityTest {

    @Test
    void isReduced() {
        ExactProbability p = ExactProbability.of(20, 512);
        assertEquals(BigInteger.valueOf(5), p.numerator());
        assertEquals(BigInteger.valueOf(128), p.denominator());
        assertEquals(0.0390625, p.value());
        assertEquals("0.03906 (5/128)", p.toString());
    }

    @Test
    void longFractionsPrintTheirValueAlone() {
        assertEquals("0.3333", ExactProbability.of(100_003, 300_007).toString());
    }

    @Test
    void compares() {
        assertTrue(ExactProbability.of(1, 3).compareTo(ExactProbability.of(333, 1000)) > 0);
        assertEquals(0, ExactProbability.of(1, 3).compareTo(ExactProbability.of(2, 6)));
    }

    @Test
    void doublesUpToOne() {
        assertEquals(ExactProbability.of(1, 2), ExactProbability.of(1, 4).doubled());
        assertEquals(ExactProbability.of(1, 1), ExactProbability.of(3, 4).doubled());
    }

    @Test
    void reachesLevelWithoutRounding() {
        // as doubles (1 - 0.9) / 2 is below 0.05, so a comparison of doubles misses the equality
        assertTrue(ExactProbability.of(1, 20).reaches(0.9));
        assertTrue(ExactProbability.of(11, 220).reaches(0.9));
        assertFalse(new ExactProbability(
                        BigInteger.TEN.pow(30).add(BigInteger.ONE),
                        BigInteger.TEN.pow(30).multiply(BigInteger.valueOf(20)))
                .reaches(0.9));
        assertTrue(ExactProbability.of(1, 2000).reaches(0.999));
        assertFalse(ExactProbability.of(3, 4).reaches(0.1));
    }

    @Test
    void levelIsRoundedOnce() {
        assertEquals(0.9, ExactProbability.of(1, 20).level());
        assertEquals(0.999, ExactProbability.of(1, 2000).level());
        assertEquals(0, ExactProbability.of(3, 4).level());
    }

    @Test
    void refusesWhatIsNoProbability() {
        assertThrows(IllegalArgumentException.class, () -> ExactProbability.of(5, 4));
        assertThrows(IllegalArgumentException.class, () -> ExactProbability.of(-1, 4));
        assertThrows(IllegalArgumentException.class, () -> ExactProbability.of(0, 0));
    }

    @Test
    void tinyFractionsKeepTheirValue() {
        ExactProbability p = new ExactProbability(BigInteger.ONE, BigInteger.TWO.pow(900));
        assertEquals(Math.scalb(1.0, -900), p.value(), Math.scalb(1.0, -945));
    }
}
