// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

class RandomDeviatesTest {

    /** SplitMix64 with seed 1234567: the first five numbers as commonly published for it (memory). */
    private static final String[] SPLIT_MIX = {
        "6457827717110365317",
        "3203168211198807973",
        "9817491932198370423",
        "4593380528125082431",
        "16408922859458223821"
    };

    @Test
    void bitsAreThoseOfSplitMix() {
        RandomDeviates draws = new RandomDeviates(1234567);
        for (String published : SPLIT_MIX) {
            assertEquals((Long.parseUnsignedLong(published) >>> 11) * 0x1.0p-53, draws.unit());
        }
    }

    /** What this code gave when it was written (JDK 17 and 25 alike): no later platform or release may give other bits. */
    @Test
    void numbersNeverChange() {
        RandomDeviates draws = new RandomDeviates(42);
        double[] drawn = {draws.centred(), draws.normal(), draws.normal(), draws.student(3), draws.normal()};
        double[] then = {
            0x1.eeb991317f5b4p-2,
            -0x1.8813939bf902ap-1,
            -0x1.fe7c1bdbd7059p-2,
            -0x1.a376d04a6b839p-4,
            0x1.bf84f051025d8p-2
        };
        assertArrayEquals(then, drawn);
    }

    @Test
    void secondOfAPairIsAsGoodAsTheFirst() {
        RandomDeviates draws = new RandomDeviates(7);
        double[] drawn = DoubleStream.generate(draws::normal).limit(100_000).toArray();
        double product = 0;
        for (int i = 0; i < drawn.length; i += 2) {
            product += drawn[i] * drawn[i + 1] / (drawn.length / 2.0);
        }
        assertEquals(0, product, 0.02);
    }
}
