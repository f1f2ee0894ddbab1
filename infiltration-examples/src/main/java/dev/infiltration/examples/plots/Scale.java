// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.plots;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A scale with its ticks.
 *
 * @param kind  how values lie on it
 * @param low   where it starts
 * @param high  where it ends, above the start
 * @param ticks what is marked on it
 */
record Scale(Kind kind, double low, double high, List<Tick> ticks) {

    /** How values lie on a scale. */
    enum Kind {
        EVEN,
        LOG
    }

    /**
     * A mark on a scale.
     *
     * @param at   where
     * @param name its words
     */
    record Tick(double at, String name) {}

    private static final double MARGIN = 1.6;

    Scale {
        ticks = List.copyOf(ticks);
    }

    /** {@return a log scale that holds all positive values}: from 1 to 10 where there are none */
    static Scale log(List<Double> values) {
        List<Double> positive = values.stream()
                .filter(value -> value > 0 && Double.isFinite(value))
                .toList();
        double low = positive.stream().min(Double::compare).orElse(1.0) / MARGIN;
        double high = positive.stream().max(Double::compare).orElse(10.0) * MARGIN;
        return new Scale(Kind.LOG, low, high, named(Ticks.log(low, high)));
    }

    /** {@return an even scale that holds all values, with a margin} */
    static Scale even(List<Double> values) {
        double least = values.stream().min(Double::compare).orElse(0.0);
        double most = values.stream().max(Double::compare).orElse(1.0);
        double margin = most > least ? (most - least) * 0.15 : 1;
        return new Scale(Kind.EVEN, least - margin, most + margin, named(Ticks.even(least - margin, most + margin)));
    }

    /** {@return a scale of names, evenly apart, the first one at 0} */
    static Scale names(List<String> names) {
        List<Tick> ticks = new ArrayList<>();
        names.forEach(name -> ticks.add(new Tick(ticks.size(), Label.shortened(name))));
        return new Scale(Kind.EVEN, -0.5, names.size() - 0.5, ticks);
    }

    /** {@return this scale going on above its end} */
    Scale withRoomAbove(double room) {
        return new Scale(kind, low, high + room, ticks);
    }

    private static List<Tick> named(List<Double> values) {
        return values.stream().map(value -> new Tick(value, number(value))).toList();
    }

    private static String number(double value) {
        String text = String.format(Locale.ROOT, "%.4g", value);
        return value != 0 && (Math.abs(value) >= 1e6 || Math.abs(value) < 1e-3)
                ? String.format(Locale.ROOT, "%.0e", value)
                : new BigDecimal(text).stripTrailingZeros().toPlainString();
    }

    /** {@return a value pulled onto the scale} */
    double held(double value) {
        return Math.min(high, Math.max(low, value));
    }
}
