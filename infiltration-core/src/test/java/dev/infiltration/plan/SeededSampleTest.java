// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import java.util.stream.LongStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class SeededSampleTest {

    /** The JDK's SplittableRandom, a general library, uses the same generator (seen). */
    @Property(tries = 200)
    void bitsAreThoseOfAnotherImplementation(@ForAll long seed) {
        SplittableRandom other = new SplittableRandom(seed);
        SeededSample draw = new SeededSample(seed);
        for (int i = 0; i < 10; i++) {
            assertEquals(other.nextLong(), draw.bits());
        }
    }

    @Property(tries = 500)
    void sharesLieBetweenNothingAndTheWhole(@ForAll long seed) {
        double share = new SeededSample(seed).share();
        assertTrue(share >= 0 && share < 1, () -> "share " + share);
    }

    /** Crews take small whole numbers for seeds: their first shares must not lie together. */
    @Test
    void neighbouringSeedsGiveUnlikeShares() {
        double mean = LongStream.range(0, 10_000)
                .mapToDouble(seed -> new SeededSample(seed).share())
                .average()
                .orElseThrow();
        long low = LongStream.range(0, 10_000)
                .filter(seed -> new SeededSample(seed).share() < 0.1)
                .count();
        assertEquals(0.5, mean, 4 * Math.sqrt(1 / 12.0) / 100);
        assertEquals(1000, (double) low, 4 * 30.0);
    }
}
