// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import java.util.Locale;

/**
 * Distribution of the error of an input, centred on zero, with the degrees of freedom of its standard uncertainty.
 *
 * <p>Widths are in the unit of the input. Distributions and their standard uncertainties after JCGM 100:2008, 4.2 and 4.3,
 * and JCGM 101:2008, 6.4. Two are equal when they are the same distribution with the same widths and degrees of freedom.
 *
 * @param shape            the kind of distribution
 * @param width            the standard uncertainty of {@code NORMAL} and {@code STUDENT}, else the half-width; finite, not
 *                         negative
 * @param inexactness      uncertainty of each limit of {@code CURVILINEAR_TRAPEZOID}; else 0
 * @param degreesOfFreedom degrees of freedom of the standard uncertainty: above 0, infinite if it is exact
 */
public record Distribution(Shape shape, double width, double inexactness, double degreesOfFreedom) {

    /** The kinds of distribution. */
    public enum Shape {
        /** Gaussian. */
        NORMAL,
        /**
         * Scaled and shifted t: the mean of a few readings. Its standard uncertainty is s/√n, as JCGM 100 takes it; the
         * standard deviation of its draws is √(ν/(ν − 2)) times that.
         */
        STUDENT,
        /** Rectangular: all values between two limits are equally likely. */
        RECTANGULAR,
        /** Triangular: the sum of two equal rectangular distributions. */
        TRIANGULAR,
        /** A sine of unknown phase. */
        ARCSINE,
        /** Rectangular with limits that are not well known. */
        CURVILINEAR_TRAPEZOID
    }

    /**
     * Checks the widths.
     *
     * @throws IllegalArgumentException if a width is negative or not finite, the inexactness exceeds the half-width, or the
     *     degrees of freedom are not above zero
     */
    public Distribution {
        requireWidth("width", width);
        requireWidth("inexactness", inexactness);
        if (inexactness > width) {
            throw new IllegalArgumentException(
                    "inexactness: allowed up to the half-width " + width + ", found " + inexactness);
        }
        if (!(degreesOfFreedom > 0)) {
            throw new IllegalArgumentException("degreesOfFreedom: allowed above 0, found " + degreesOfFreedom);
        }
    }

    private static void requireWidth(String name, double width) {
        if (!(width >= 0) || Double.isInfinite(width)) {
            throw new IllegalArgumentException(name + ": allowed 0 or more and finite, found " + width);
        }
    }

    /**
     * {@return a Gaussian}
     *
     * @param standardUncertainty its standard deviation
     */
    public static Distribution normal(double standardUncertainty) {
        return exact(Shape.NORMAL, standardUncertainty);
    }

    /**
     * {@return the distribution of the mean of a few readings}
     *
     * @param standardUncertainty s/√n
     * @param degreesOfFreedom    n − 1, above 0
     */
    public static Distribution student(double standardUncertainty, double degreesOfFreedom) {
        return exact(Shape.STUDENT, standardUncertainty).withDegreesOfFreedom(degreesOfFreedom);
    }

    /**
     * {@return a rectangular distribution}
     *
     * @param halfWidth from the middle to each limit
     */
    public static Distribution rectangular(double halfWidth) {
        return exact(Shape.RECTANGULAR, halfWidth);
    }

    /**
     * {@return the distribution of one reading of an instrument: half a step, either way}
     *
     * @param step the step it is read to
     */
    public static Distribution resolution(double step) {
        return rectangular(step / 2);
    }

    /**
     * {@return a triangular distribution}
     *
     * @param halfWidth from the middle to each limit
     */
    public static Distribution triangular(double halfWidth) {
        return exact(Shape.TRIANGULAR, halfWidth);
    }

    /**
     * {@return a sine of unknown phase}
     *
     * @param amplitude its amplitude
     */
    public static Distribution arcsine(double amplitude) {
        return exact(Shape.ARCSINE, amplitude);
    }

    /**
     * {@return a rectangular distribution with inexact limits}
     *
     * @param halfWidth   from the middle to the middle of each limit
     * @param inexactness uncertainty of each limit
     */
    public static Distribution curvilinearTrapezoid(double halfWidth, double inexactness) {
        return new Distribution(Shape.CURVILINEAR_TRAPEZOID, halfWidth, inexactness, Double.POSITIVE_INFINITY);
    }

    private static Distribution exact(Shape shape, double width) {
        return new Distribution(shape, width, 0, Double.POSITIVE_INFINITY);
    }

    /**
     * {@return this distribution with other degrees of freedom} (JCGM 100, G.4.2); the samples do not change
     *
     * @param degreesOfFreedom above 0
     */
    public Distribution withDegreesOfFreedom(double degreesOfFreedom) {
        return new Distribution(shape, width, inexactness, degreesOfFreedom);
    }

    /** {@return the standard uncertainty} */
    public double standardUncertainty() {
        return switch (shape) {
            case NORMAL, STUDENT -> width;
            case RECTANGULAR -> width / StrictMath.sqrt(3);
            case TRIANGULAR -> width / StrictMath.sqrt(6);
            case ARCSINE -> width / StrictMath.sqrt(2);
            case CURVILINEAR_TRAPEZOID -> StrictMath.sqrt(width * width / 3 + inexactness * inexactness / 9);
        };
    }

    /** {@return one value of this distribution} (JCGM 101, 6.4 and C) */
    double draw(RandomDeviates draws) {
        return switch (shape) {
            case NORMAL -> width * draws.normal();
            case STUDENT -> width * draws.student(degreesOfFreedom);
            case RECTANGULAR -> width * draws.centred();
            case TRIANGULAR -> width * (draws.centred() + draws.centred()) / 2;
            case ARCSINE -> width * StrictMath.sin(StrictMath.PI * draws.centred());
            case CURVILINEAR_TRAPEZOID -> (width + inexactness * draws.centred()) * draws.centred();
        };
    }

    /** {@return the distribution for people: {@code rectangular ±0.005}} */
    @Override
    public String toString() {
        String name = shape.name().toLowerCase(Locale.ROOT).replace('_', ' ');
        String sign = shape == Shape.NORMAL || shape == Shape.STUDENT ? " u = " : " ±";
        String limits = shape == Shape.CURVILINEAR_TRAPEZOID ? ", limits ±" + Rounding.digits(inexactness, 2) : "";
        return name + sign + Rounding.digits(width, 2) + limits;
    }
}
