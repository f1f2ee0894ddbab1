// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

/** Conclusion of a test at a two-sided significance level of 5 %. */
public enum Conclusion {
    /** The second is significantly higher than the first. */
    HIGHER("higher"),
    /** The second is significantly lower than the first. */
    LOWER("lower"),
    /** At least one group differs significantly from the others. */
    DIFFERENT("different"),
    /** No significant difference; this does not show that they are equal. */
    NOT_SIGNIFICANT("not-significant"),
    /** Too few values: no outcome could reach significance. */
    INSUFFICIENT_DATA("insufficient-data");

    /** Significance level: 0.05, two-sided. */
    public static final double RISK = 0.05;

    private final String word;

    Conclusion(String word) {
        this.word = word;
    }

    /**
     * {@return the conclusion of a test}
     *
     * @param p         its two-sided probability
     * @param smallestPValue the least that could be with so many values
     * @param direction above zero where the second was seen to be the higher
     */
    public static Conclusion of(double p, double smallestPValue, double direction) {
        if (smallestPValue > RISK) {
            return INSUFFICIENT_DATA;
        }
        if (p > RISK) {
            return NOT_SIGNIFICANT;
        }
        return direction > 0 ? HIGHER : LOWER;
    }

    /** {@return the conclusion as a token of JSON documents: {@code insufficient-data}} */
    public String word() {
        return word;
    }

    /** {@return the conclusion for people: {@code insufficient data}} */
    @Override
    public String toString() {
        return word.replace('-', ' ');
    }
}
