// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import dev.infiltration.statistics.RandomInterceptLine.Slope;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/** What a line with random intercepts needs of its values: the mean of each group, and sums of squares within groups. */
record GroupSums(int n, List<Group> means, double meanX, double meanY, double xx, double xy, double yy) {

    /** Squares within groups smaller than this share of all squares are rounding. */
    private static final double ROUNDING = 1e-24;

    /** Number of values of a group, and its means less the means of all values. */
    record Group(int m, double x, double y) {}

    static GroupSums of(int[] groups, double[] x, double[] y) {
        double meanX = SampleStatistics.of(x).mean();
        double meanY = SampleStatistics.of(y).mean();
        Map<Integer, List<Integer>> places = new LinkedHashMap<>();
        for (int i = 0; i < groups.length; i++) {
            places.computeIfAbsent(groups[i], group -> new ArrayList<>()).add(i);
        }
        List<Group> means = new ArrayList<>();
        double xx = 0;
        double xy = 0;
        double yy = 0;
        for (List<Integer> of : places.values()) {
            double groupX = mean(of, i -> x[i]);
            double groupY = mean(of, i -> y[i]);
            means.add(new Group(of.size(), groupX - meanX, groupY - meanY));
            for (int i : of) {
                xx += (x[i] - groupX) * (x[i] - groupX);
                xy += (x[i] - groupX) * (y[i] - groupY);
                yy += (y[i] - groupY) * (y[i] - groupY);
            }
        }
        return new GroupSums(groups.length, List.copyOf(means), meanX, meanY, xx, xy, yy);
    }

    private static double mean(List<Integer> places, ToDoubleFunction<Integer> value) {
        return SampleStatistics.of(places.stream().mapToDouble(value).toArray()).mean();
    }

    int groups() {
        return means.size();
    }

    int withinDegrees() {
        return n - groups() - 1;
    }

    double sum(ToDoubleFunction<Group> term) {
        return means.stream().mapToDouble(term).sum();
    }

    /** {@return the squares within groups about a slope} */
    double within(double slope) {
        double best = xy / xx;
        return Math.max(0, yy - best * xy) + (slope - best) * (slope - best) * xx;
    }

    boolean allowFit() {
        double scale = Math.max(meanX * meanX, sum(group -> group.x() * group.x()));
        return groups() > 1
                && withinDegrees() > 0
                && xx > ROUNDING * scale
                && within(xy / xx) > ROUNDING * Math.max(meanY * meanY, yy);
    }

    Slope withinSlope() {
        double residual = within(xy / xx) / withinDegrees();
        return new Slope(xy / xx, Math.sqrt(residual / xx), withinDegrees());
    }
}
