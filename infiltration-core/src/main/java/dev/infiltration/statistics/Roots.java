// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import java.util.function.DoubleUnaryOperator;

/** Where a function that starts above zero and falls comes to zero. */
final class Roots {

    private static final double WIDTH = 1e-14;
    private static final int MOST_STEPS = 200;

    private Roots() {}

    /**
     * {@return the zero on the side of {@code step}, infinite if there is none}: steps that double until the function is
     * negative, then false position with the end that stays put weighing half as much each time (Illinois)
     */
    static double beyond(double from, double step, DoubleUnaryOperator function) {
        double inside = from;
        double length = step;
        while (function.applyAsDouble(inside + length) > 0) {
            inside += length;
            length *= 2;
            if (Double.isInfinite(inside + length)) {
                return inside + length;
            }
        }
        return between(inside, inside + length, WIDTH * (Math.abs(step) + Math.abs(inside)), function);
    }

    private static double between(double above, double below, double width, DoubleUnaryOperator function) {
        double atAbove = function.applyAsDouble(above);
        double atBelow = function.applyAsDouble(below);
        double a = above;
        double b = below;
        boolean wasAbove = false;
        for (int i = 0; i < MOST_STEPS && Math.abs(b - a) > width; i++) {
            double next = i % 3 == 2 ? (a + b) / 2 : (a * atBelow - b * atAbove) / (atBelow - atAbove);
            double height = function.applyAsDouble(next);
            boolean isAbove = height > 0;
            double weight = i > 0 && isAbove == wasAbove ? 0.5 : 1;
            if (isAbove) {
                a = next;
                atAbove = height;
                atBelow *= weight;
            } else {
                b = next;
                atBelow = height;
                atAbove *= weight;
            }
            wasAbove = isAbove;
        }
        return a;
    }
}
