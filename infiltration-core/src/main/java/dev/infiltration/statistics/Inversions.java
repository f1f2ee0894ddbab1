// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import org.jspecify.annotations.Nullable;

/**
 * Pairs of which the earlier has the greater key, found while the keys are merged into order (Knight 1966).
 *
 * <p>Time goes with n log n, and with the number of pairs where each is told.
 */
final class Inversions {

    /** Told of a pair by the places at which the two stood. */
    interface Pairs {
        void take(int earlier, int later);
    }

    /** Blocks so short are sorted by insertion. */
    private static final int BLOCK = 16;

    private final double[] keys;
    private final @Nullable Pairs pairs;
    private int[] order;
    private int[] merged;

    private Inversions(double[] keys, @Nullable Pairs pairs) {
        this.keys = keys;
        this.pairs = pairs;
        this.order = new int[keys.length];
        this.merged = new int[keys.length];
        for (int i = 0; i < order.length; i++) {
            order[i] = i;
        }
    }

    /** {@return how many pairs have the greater key first; equal keys are in order} */
    static long count(double[] keys) {
        double[] from = keys.clone();
        double[] to = new double[from.length];
        long count = 0;
        for (int left = 0; left < from.length; left += BLOCK) {
            count += insert(from, left, Math.min(left + BLOCK, from.length));
        }
        for (int width = BLOCK; width < from.length; width *= 2) {
            for (int left = 0; left < from.length; left += 2 * width) {
                int middle = Math.min(left + width, from.length);
                count += merge(from, to, left, middle, Math.min(middle + width, from.length));
            }
            double[] swap = from;
            from = to;
            to = swap;
        }
        return count;
    }

    /** Sorts a block by moving each key past the greater ones before it. */
    private static long insert(double[] keys, int from, int to) {
        long count = 0;
        for (int i = from + 1; i < to; i++) {
            double key = keys[i];
            int place = i;
            while (place > from && keys[place - 1] > key) {
                keys[place] = keys[place - 1];
                place--;
            }
            keys[place] = key;
            count += (long) i - place;
        }
        return count;
    }

    private static long merge(double[] from, double[] to, int left, int middle, int right) {
        long count = 0;
        int i = left;
        int j = middle;
        for (int k = left; k < right; k++) {
            if (j >= right || (i < middle && from[i] <= from[j])) {
                to[k] = from[i++];
            } else {
                to[k] = from[j++];
                count += (long) middle - i;
            }
        }
        return count;
    }

    /** Tells of every pair that has the greater key first. */
    static void list(double[] keys, Pairs pairs) {
        new Inversions(keys, pairs).sort();
    }

    /** {@return the places of the keys in order, equal ones as they stood} */
    static int[] order(double[] keys) {
        return new Inversions(keys, null).sort();
    }

    private int[] sort() {
        for (int width = 1; width < keys.length; width *= 2) {
            pass(width);
        }
        return order;
    }

    private void pass(int width) {
        for (int left = 0; left < keys.length; left += 2 * width) {
            int middle = Math.min(left + width, keys.length);
            merge(left, middle, Math.min(middle + width, keys.length));
        }
        int[] swap = order;
        order = merged;
        merged = swap;
    }

    private void merge(int left, int middle, int right) {
        int i = left;
        int j = middle;
        for (int k = left; k < right; k++) {
            if (j >= right || (i < middle && keys[order[i]] <= keys[order[j]])) {
                merged[k] = order[i++];
            } else {
                tell(i, middle, order[j]);
                merged[k] = order[j++];
            }
        }
    }

    private void tell(int from, int to, int later) {
        for (int i = from; pairs != null && i < to; i++) {
            pairs.take(order[i], later);
        }
    }
}
