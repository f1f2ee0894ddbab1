// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import dev.infiltration.statistics.Interval;
import java.util.ArrayList;
import java.util.List;

/** Blocks of trials, until the values are stable (JCGM 101, 7.9.4). */
final class TrialBatches {

    /** A result that is to judge another one has to be stable to a fifth of the tolerance (8.2). */
    private static final double SHARE_OF_TOLERANCE = 0.2;

    private final double level;
    private final int digits;
    private final List<double[]> blocks = new ArrayList<>();

    /** Of each block: mean, standard uncertainty, lower end, upper end. */
    private final List<double[]> figures = new ArrayList<>();

    private int count;

    TrialBatches(double level, int digits) {
        this.level = level;
        this.digits = digits;
    }

    void add(double[] block) {
        MonteCarloResult trials = new MonteCarloResult(block, level, digits, false);
        Interval symmetric = trials.symmetric();
        blocks.add(block);
        figures.add(new double[] {trials.mean(), trials.standardUncertainty(), symmetric.low(), symmetric.high()});
        count += block.length;
    }

    int count() {
        return count;
    }

    /** {@return whether twice the standard deviation of each mean over the blocks is within the share of the tolerance} */
    boolean areStable() {
        if (blocks.size() < 2) {
            return false;
        }
        double allowed = SHARE_OF_TOLERANCE * MonteCarloResult.tolerance(pooledUncertainty(), digits);
        for (int figure = 0; figure < 4; figure++) {
            double deviation = StrictMath.sqrt(variance(figure) / blocks.size());
            if (!(2 * deviation <= allowed)) {
                return false;
            }
        }
        return true;
    }

    /** The standard deviation of all trials so far, from those of the blocks. */
    private double pooledUncertainty() {
        double within = 0;
        for (double[] figure : figures) {
            within += figure[1] * figure[1] / figures.size();
        }
        return StrictMath.sqrt(within + variance(0));
    }

    /** The variance of a figure over the blocks. */
    private double variance(int figure) {
        double mean = 0;
        for (double[] block : figures) {
            mean += block[figure] / figures.size();
        }
        double sum = 0;
        for (double[] block : figures) {
            sum += (block[figure] - mean) * (block[figure] - mean);
        }
        return sum / (figures.size() - 1);
    }

    MonteCarloResult result() {
        double[] all = new double[count];
        int at = 0;
        for (double[] block : blocks) {
            System.arraycopy(block, 0, all, at, block.length);
            at += block.length;
        }
        return new MonteCarloResult(all, level, digits, areStable());
    }
}
