// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.trend;

import java.util.Locale;

/**
 * Model of the logarithm of a rate over the years since a surface was new or last maintained.
 *
 * <p>Each model has two parameters, so models are compared by the residual standard deviation.
 */
public enum TrendModel {
    /** By the same share every year: the straight line on the log scale. */
    STEADY("changes by the same factor every year"),
    /** Fast at first, then slower: a line over the square root of the years. */
    LEVELLING_OFF("changes fast at first, then more slowly (levelling off)"),
    /** Slow at first, then faster: a line over the square of the years. */
    ACCELERATING("changes slowly at first, then faster (accelerating)");

    private final String words;

    TrendModel(String words) {
        this.words = words;
    }

    /** {@return the abscissa of the fitted line} */
    double scale(double years) {
        return switch (this) {
            case STEADY -> years;
            case LEVELLING_OFF -> Math.sqrt(years);
            case ACCELERATING -> years * years;
        };
    }

    /** {@return the years at which {@link #scale} has a value, not a number below 0} */
    double unscale(double scaled) {
        return switch (this) {
            case STEADY -> scaled;
            case LEVELLING_OFF -> scaled < 0 ? Double.NaN : scaled * scaled;
            case ACCELERATING -> Math.sqrt(scaled);
        };
    }

    /** {@return the model as a token of JSON documents: {@code levelling-off}} */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** {@return the model for people} */
    @Override
    public String toString() {
        return words;
    }
}
