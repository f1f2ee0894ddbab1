// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

/**
 * Propagation of distributions by trials, after JCGM 101:2008.
 *
 * <p>Trials are made in blocks until mean, standard uncertainty and both ends of the symmetric interval are stable (7.9):
 * twice the standard deviation of their means over the blocks stays below a fifth of the numerical tolerance (8.2), which
 * is half a unit in the last significant digit of the standard uncertainty (7.9.2). The same seed gives the
 * same numbers on every Java platform (SplitMix64 and {@link StrictMath}).
 */
public final class MonteCarlo {

    private static final double LEVEL = 0.95;
    private static final int AT_MOST = 2_000_000;
    private static final int SMALLEST_BLOCK = 10_000;

    private final long seed;
    private final double level;
    private final int digits;
    private final int atLeast;
    private final int atMost;

    private MonteCarlo(long seed, double level, int digits, int atLeast, int atMost) {
        this.seed = seed;
        this.level = level;
        this.digits = digits;
        this.atLeast = atLeast;
        this.atMost = atMost;
    }

    /**
     * {@return trials until the 95 % interval is stable to one significant digit of the standard uncertainty, 2 000 000 at
     * most}
     *
     * @param seed the seed of the random numbers
     */
    public static MonteCarlo seeded(long seed) {
        return new MonteCarlo(seed, LEVEL, 1, 0, AT_MOST);
    }

    /**
     * {@return the same for another coverage probability}
     *
     * @param level 0.95 for 95 %
     * @throws IllegalArgumentException if the level is not between 0 and 1
     */
    public MonteCarlo withLevel(double level) {
        Uncertainty.requireLevel(level);
        return new MonteCarlo(seed, level, digits, atLeast, atMost);
    }

    /**
     * {@return the same with another number of meaningful digits}
     *
     * @param digits significant digits of the standard uncertainty, 1 to 4; each costs a hundred times the trials
     * @throws IllegalArgumentException if it is not 1 to 4
     */
    public MonteCarlo withDigits(int digits) {
        requireRange("digits", digits, 1, 4);
        return new MonteCarlo(seed, level, digits, atLeast, atMost);
    }

    /**
     * {@return the same with a number of trials fixed beforehand} (JCGM 101, 7.2), rounded up to whole blocks
     *
     * @param trials the number, 1 to 100 000 000; each takes 8 bytes
     * @throws IllegalArgumentException if it is not 1 to 100 000 000
     */
    public MonteCarlo withTrials(int trials) {
        requireRange("trials", trials, 1, 100_000_000);
        return new MonteCarlo(seed, level, digits, trials, trials);
    }

    private static void requireRange(String name, int value, int from, int to) {
        if (value < from || value > to) {
            throw new IllegalArgumentException(name + ": allowed " + from + " to " + to + ", found " + value);
        }
    }

    /**
     * {@return the result of the trials of a measurement}
     *
     * @param measurement the measurement; correlated terms have to be normal
     * @throws IllegalArgumentException if correlated terms are not normal
     */
    public MonteCarloResult run(MeasurementModel measurement) {
        Sampler sampler = new Sampler(measurement, seed);
        TrialBatches blocks = new TrialBatches(level, digits);
        int size = (int) Math.max(SMALLEST_BLOCK, Math.min(atMost, Math.ceil(100 / (1 - level))));
        while (blocks.count() < atLeast || (blocks.count() < atMost && !blocks.areStable())) {
            blocks.add(sampler.draw(size));
        }
        return blocks.result();
    }
}
