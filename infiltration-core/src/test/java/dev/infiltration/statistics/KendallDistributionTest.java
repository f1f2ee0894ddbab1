// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class KendallDistributionTest {

    @Test
    void fourValuesHaveKnownCounts() {
        // 1, 3, 5, 6, 5, 3, 1 of 24 orders (Mahonian numbers, derived)
        KendallDistribution four = KendallDistribution.ofDifferent(4);
        int[] sums = {1, 4, 9, 15, 20, 23, 24};
        for (int k = 0; k < sums.length; k++) {
            assertEquals(ExactProbability.of(sums[k], 24), four.atMost(k));
        }
        assertEquals(ExactProbability.of(0, 1), four.atMost(-1));
        assertEquals(ExactProbability.of(1, 1), four.atMost(99));
    }

    @Test
    void tiedValuesAgreeWithTryingAllOrders() {
        List<Integer> values = List.of(1, 1, 2, 3, 3, 3);
        Set<List<Integer>> orders = new HashSet<>();
        collect(new ArrayList<>(), new ArrayList<>(values), orders);
        KendallDistribution tied = KendallDistribution.of(2, 1, 3);
        for (int most = 0; most <= 11; most++) {
            int limit = most;
            long few =
                    orders.stream().filter(order -> inversions(order) <= limit).count();
            assertEquals(ExactProbability.of(few, orders.size()), tied.atMost(most));
        }
    }

    private static void collect(List<Integer> begun, List<Integer> rest, Set<List<Integer>> orders) {
        if (rest.isEmpty()) {
            orders.add(List.copyOf(begun));
        }
        for (int i = 0; i < rest.size(); i++) {
            begun.add(rest.remove(i));
            collect(begun, rest, orders);
            rest.add(i, begun.remove(begun.size() - 1));
        }
    }

    private static long inversions(List<Integer> order) {
        return Inversions.count(order.stream().mapToDouble(Integer::doubleValue).toArray());
    }

    @Test
    void fortyValuesAreCountedOut() {
        BigInteger orders = BigInteger.ONE;
        for (int i = 2; i <= 40; i++) {
            orders = orders.multiply(BigInteger.valueOf(i));
        }
        assertEquals(
                new ExactProbability(BigInteger.ONE, orders),
                KendallDistribution.ofDifferent(40).atMost(0));
        assertEquals(0.5, KendallDistribution.ofDifferent(40).atMost(389).value(), 0.005);
    }
}
