// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.compare;

import dev.infiltration.statistics.Interval;
import dev.infiltration.statistics.TextTable;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * By what factor the second differs from the first, with an interval where the data carry one.
 *
 * <p>Held as a logarithm, so that swapping the two changes nothing but the sign.
 *
 * @param log         natural logarithm of the factor
 * @param logInterval interval of the logarithm, or null
 */
public record Ratio(double log, @Nullable Interval logInterval) {

    /**
     * {@return the bare ratio of two figures, such as published medians}
     *
     * @param first  the one, positive
     * @param second the other, positive
     */
    public static Ratio between(double first, double second) {
        double[] logs = Logs.of(new double[] {first, second}, "first, second");
        return new Ratio(logs[1] - logs[0], null);
    }

    static Ratio of(double log, Optional<Interval> logInterval) {
        return new Ratio(log, logInterval.orElse(null));
    }

    /** {@return the factor, above 1 when the second is the higher} */
    public double value() {
        return exp(log);
    }

    /** {@return the interval of the factor} */
    public Optional<Interval> interval() {
        return Optional.ofNullable(logInterval)
                .map(limits -> new Interval(exp(limits.low()), exp(limits.high()), limits.level()));
    }

    /** {@return the exponential, so computed that those of opposite logarithms are each other's inverse} */
    private static double exp(double log) {
        return log >= 0 ? StrictMath.exp(log) : 1 / StrictMath.exp(-log);
    }

    /** {@return the factor and its interval for people} */
    @Override
    public String toString() {
        return TextTable.number(value())
                + interval()
                        .map(limits -> ", " + limits.text(value(), TextTable::number, "values"))
                        .orElse("");
    }
}
