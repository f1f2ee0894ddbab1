// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class InversionsTest {

    @Test
    void orderKeepsEqualKeysAsTheyStood() {
        assertArrayEquals(new int[] {3, 0, 2, 1}, Inversions.order(new double[] {5, 9, 5, 1}));
        assertArrayEquals(new int[0], Inversions.order(new double[0]));
    }

    @Property(tries = 500)
    void findsEveryPairWithTheGreaterFirst(@ForAll @Size(max = 70) List<@IntRange(min = 0, max = 20) Integer> values) {
        double[] keys = values.stream().mapToDouble(Integer::doubleValue).toArray();
        List<List<Integer>> expected = new ArrayList<>();
        for (int i = 0; i < keys.length; i++) {
            for (int j = i + 1; j < keys.length; j++) {
                if (keys[i] > keys[j]) {
                    expected.add(List.of(i, j));
                }
            }
        }
        List<List<Integer>> listed = new ArrayList<>();
        Inversions.list(keys, (earlier, later) -> listed.add(List.of(earlier, later)));
        assertEquals(expected.size(), Inversions.count(keys));
        assertEquals(expected.size(), listed.size());
        assertEquals(new HashSet<>(expected), new HashSet<>(listed));
    }
}
