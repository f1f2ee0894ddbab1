// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

/** What a comparison allows one to say, at a two-sided risk of 5 % of seeing a difference that is not there. */
public enum Conclusion {
    /** The second is shown to be higher than the first. */
    HIGHER("higher"),
    /** The second is shown to be lower than the first. */
    LOWER("lower"),
    /** Some group is shown to differ from the others. */
    DIFFERENT("different"),
    /** A difference could have been shown and was not; that they are equal is not shown either. */
    NOT_SHOWN("no difference shown"),
    /** Too few values: even the clearest outcome would have shown nothing. */
    CANNOT_TELL("cannot tell: too few");

    /** The risk of seeing a difference that is not there: 0.05, both sides together. */
    public static final double RISK = 0.05;

    private final String words;

    Conclusion(String words) {
        this.words = words;
    }

    /**
     * {@return the conclusion of a test}
     *
     * @param p         its two-sided probability
     * @param smallestP the least that could be with so many values
     * @param direction above zero where the second was seen to be the higher
     */
    public static Conclusion of(double p, double smallestP, double direction) {
        if (smallestP > RISK) {
            return CANNOT_TELL;
        }
        if (p > RISK) {
            return NOT_SHOWN;
        }
        return direction > 0 ? HIGHER : LOWER;
    }

    /** {@return the conclusion in words} */
    @Override
    public String toString() {
        return words;
    }
}
