// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import dev.infiltration.method.Basis;
import java.util.Objects;

/**
 * An input of a measurement that is not known exactly.
 *
 * <p>The name is its identity: a term that two results share under one name (the diameter of ring R1, the adjustment of
 * balance B1) is the same error in both, and does not average out.
 *
 * @param name   what it is and of which instrument or run
 * @param value  its best estimate
 * @param spread how far it may lie from that
 * @param basis  source of the distribution, and the quality of that source
 */
public record Term(String name, double value, Distribution spread, Basis basis) {

    /** Checks that all parts are there. */
    public Term {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(spread, "spread");
        Objects.requireNonNull(basis, "basis");
    }

    /**
     * {@return a term that its user answers for}
     *
     * @param name   what it is and of which instrument or run
     * @param value  its best estimate
     * @param spread how far it may lie from that
     */
    public static Term of(String name, double value, Distribution spread) {
        return new Term(name, value, spread, new Basis("stated by the user", "", Basis.Trust.USER));
    }
}
