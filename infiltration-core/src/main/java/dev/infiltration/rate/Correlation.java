// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import dev.infiltration.rate.Uncertainty.Contribution;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Correlation of the errors of named terms; other terms are independent. */
final class Correlation {

    static final Correlation NONE = new Correlation(List.of(), new double[0][0]);

    /** Rounding error that a correlation matrix may have: 1e-9 of its diagonal. */
    private static final double TOLERANCE = 1e-9;

    private final List<String> names;
    private final double[][] matrix;

    private Correlation(List<String> names, double[][] matrix) {
        this.names = names;
        this.matrix = matrix;
    }

    static Correlation of(List<String> names, double[][] matrix) {
        require(matrix.length == names.size(), "a row for each of " + names.size() + " terms");
        for (double[] row : matrix) {
            require(row.length == names.size(), "a column for each of " + names.size() + " terms");
        }
        Correlation correlation = new Correlation(names, symmetric(matrix));
        correlation.root();
        return correlation;
    }

    /** A copy without the rounding errors of its computation. */
    private static double[][] symmetric(double[][] matrix) {
        double[][] copy = new double[matrix.length][matrix.length];
        for (int i = 0; i < matrix.length; i++) {
            require(Math.abs(matrix[i][i] - 1) <= TOLERANCE, "ones on the diagonal");
            copy[i][i] = 1;
            for (int j = 0; j < i; j++) {
                require(Math.abs(matrix[i][j] - matrix[j][i]) <= TOLERANCE, "the same coefficient both ways");
                copy[i][j] = matrix[i][j];
                copy[j][i] = matrix[i][j];
            }
        }
        return copy;
    }

    private static void require(boolean holds, String expected) {
        if (!holds) {
            throw new IllegalArgumentException("correlation: expected " + expected);
        }
    }

    boolean isNone() {
        return names.isEmpty();
    }

    /** {@return the coefficient of two terms} */
    double between(String one, String other) {
        int i = names.indexOf(one);
        int j = names.indexOf(other);
        if (i >= 0 && j >= 0) {
            return matrix[i][j];
        }
        return one.equals(other) ? 1 : 0;
    }

    /** {@return the variance of a sum of contributions of different names} */
    double variance(List<Contribution> contributions) {
        return isNone() ? squares(contributions) : covariance(contributions, contributions);
    }

    private static double squares(List<Contribution> contributions) {
        double sum = 0;
        for (Contribution each : contributions) {
            sum += each.amount() * each.amount();
        }
        return sum;
    }

    /** {@return the covariance of two sums of contributions} */
    double covariance(List<Contribution> some, List<Contribution> others) {
        double sum = 0;
        for (Contribution one : some) {
            for (Contribution other : others) {
                sum += one.amount()
                        * other.amount()
                        * between(one.term().name(), other.term().name());
            }
        }
        return sum;
    }

    /** {@return whether a term is correlated with any other} */
    boolean isTied(String name) {
        return names.stream().anyMatch(other -> !other.equals(name) && between(name, other) != 0);
    }

    /** {@return the union of both}, which must agree on the terms that they share */
    Correlation and(Correlation other) {
        if (isNone() || other == this) {
            return other;
        }
        Set<String> union = new LinkedHashSet<>(names);
        union.addAll(other.names);
        List<String> all = List.copyOf(union);
        double[][] merged = new double[all.size()][all.size()];
        for (int i = 0; i < merged.length; i++) {
            for (int j = 0; j < merged.length; j++) {
                merged[i][j] = merged(other, all.get(i), all.get(j));
            }
        }
        return of(all, merged);
    }

    private double merged(Correlation other, String one, String two) {
        boolean here = names.contains(one) && names.contains(two);
        boolean there = other.names.contains(one) && other.names.contains(two);
        if (here && there) {
            require(between(one, two) == other.between(one, two), "one coefficient of " + one + " and " + two);
        }
        return here ? between(one, two) : other.between(one, two);
    }

    /** {@return the lower triangle whose product with its transpose is the matrix} (Cholesky), zero where it is singular */
    double[][] root() {
        int n = matrix.length;
        double[][] root = new double[n][n];
        for (int j = 0; j < n; j++) {
            double pivot = rest(root, j, j);
            require(pivot >= -TOLERANCE, "no coefficients that contradict each other");
            root[j][j] = StrictMath.sqrt(Math.max(pivot, 0));
            for (int i = j + 1; i < n; i++) {
                root[i][j] = column(rest(root, i, j), pivot, root[j][j]);
            }
        }
        return root;
    }

    private static double column(double rest, double pivot, double diagonal) {
        if (pivot > TOLERANCE) {
            return rest / diagonal;
        }
        require(Math.abs(rest) <= StrictMath.sqrt(TOLERANCE), "no coefficients that contradict each other");
        return 0;
    }

    private double rest(double[][] root, int i, int j) {
        double rest = matrix[i][j];
        for (int k = 0; k < j; k++) {
            rest -= root[i][k] * root[j][k];
        }
        return rest;
    }
}
