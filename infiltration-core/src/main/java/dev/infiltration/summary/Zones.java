// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.summary;

import dev.infiltration.statistics.SampleStatistics;
import dev.infiltration.statistics.StratifiedSample;
import dev.infiltration.summary.Sample.Spot;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;

/** Figures of the locations by zone, each zone weighing by its share of the area. */
final class Zones {

    private final Sample sample;
    /** In order of name, so that sums round alike whatever order the zones came in. */
    private final Map<String, Double> areas;

    private final double total;

    Zones(Sample sample) {
        this.sample = sample;
        this.areas = new TreeMap<>(sample.zoneShares());
        this.total = areas.values().stream().mapToDouble(Double::doubleValue).sum();
    }

    /** Whether every figure lies in a zone of known area, and every such zone has a figure. */
    boolean areKnown() {
        boolean haveArea = sample.spots().stream()
                .filter(spot -> spot.figure().isPresent())
                .allMatch(this::hasArea);
        return haveArea && !areas.isEmpty() && areas.keySet().stream().allMatch(zone -> figures(zone).length > 0);
    }

    private boolean hasArea(Spot spot) {
        return spot.zone() != null && areas.containsKey(spot.zone());
    }

    private double[] figures(String zone) {
        return sample.spots().stream()
                .filter(spot -> zone.equals(spot.zone()))
                .flatMap(spot -> spot.figure().stream())
                .mapToDouble(Double::doubleValue)
                .toArray();
    }

    /** The mean over the area of a figure of each zone. */
    double weighted(ToDoubleFunction<double[]> figure) {
        return areas.entrySet().stream()
                .mapToDouble(zone -> zone.getValue() / total * figure.applyAsDouble(figures(zone.getKey())))
                .sum();
    }

    StratifiedSample strata() {
        return new StratifiedSample(areas.entrySet().stream()
                .map(zone -> new StratifiedSample.Stratum(
                        zone.getValue() / total, SampleStatistics.of(logs(figures(zone.getKey())))))
                .toList());
    }

    static double[] logs(double[] rates) {
        return Arrays.stream(rates).map(StrictMath::log).toArray();
    }
}
