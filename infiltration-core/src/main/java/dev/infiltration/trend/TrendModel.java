// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.trend;

/**
 * How the logarithm of a rate may go with the years since a surface was new or last maintained.
 *
 * <p>Each has two figures to fit, so that they are compared by the scatter they leave.
 */
public enum TrendModel {
    /** By the same share every year: the straight line on the log scale. */
    STEADY("falls or rises by the same share every year"),
    /** Fast at first, then slower: a line over the square root of the years. */
    LEVELS_OFF("changes fast at first, then levels off"),
    /** Slow at first, then faster: a line over the square of the years. */
    GIVES_WAY("holds at first, then gives way");

    private final String words;

    TrendModel(String words) {
        this.words = words;
    }

    /** {@return what the line is drawn over} */
    double scale(double years) {
        return switch (this) {
            case STEADY -> years;
            case LEVELS_OFF -> Math.sqrt(years);
            case GIVES_WAY -> years * years;
        };
    }

    /** {@return the years at which {@link #scale} has a value, not a number below 0} */
    double unscale(double scaled) {
        return switch (this) {
            case STEADY -> scaled;
            case LEVELS_OFF -> scaled < 0 ? Double.NaN : scaled * scaled;
            case GIVES_WAY -> Math.sqrt(scaled);
        };
    }

    /** {@return the curve in words} */
    @Override
    public String toString() {
        return words;
    }
}
