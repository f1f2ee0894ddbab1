// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

/**
 * Random numbers that are the same for a seed on every machine and in every release.
 *
 * <p>SplitMix64 (Steele, Lea and Flood 2014, OOPSLA, "Fast splittable pseudorandom number generators"): neighbouring seeds
 * give unlike numbers from the first on.
 */
final class SeededSample {

    private static final long GOLDEN = 0x9e3779b97f4a7c15L;

    private long state;

    SeededSample(long seed) {
        state = seed;
    }

    /** {@return the next 64 bits} */
    long bits() {
        state += GOLDEN;
        long mixed = (state ^ (state >>> 30)) * 0xbf58476d1ce4e5b9L;
        mixed = (mixed ^ (mixed >>> 27)) * 0x94d049bb133111ebL;
        return mixed ^ (mixed >>> 31);
    }

    /** {@return the next number, 0 to below 1} */
    double share() {
        return (bits() >>> 11) * 0x1.0p-53;
    }
}
