// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.method;

import java.util.Locale;
import java.util.Objects;

/**
 * The source of a number of a method, and the quality of that source.
 *
 * @param source the standard, handbook or paper; {@code the trade} where it is common practice
 * @param clause the clause, table or section; empty where there is none
 * @param trust  quality of the source
 */
public record Basis(String source, String clause, Trust trust) {

    /** Quality of a source. */
    public enum Trust {
        /** Read in the standard's own public pages or its publisher's catalogue. */
        PUBLISHED,
        /** Read in a published source that describes the standard. */
        SECONDARY,
        /** Known from memory, not read while the value was entered. */
        MEMORY,
        /** A fact of the trade, without a source. */
        COMMON_PRACTICE,
        /** Arithmetic on other values. */
        DERIVED,
        /** Set by the user. */
        USER
    }

    /** Checks that all parts are there. */
    public Basis {
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(clause, "clause");
        Objects.requireNonNull(trust, "trust");
    }

    /**
     * {@return the basis of a clause}
     *
     * @param source the standard or paper
     * @param clause the clause, table or section
     * @param trust  quality of the source
     */
    public static Basis clause(String source, String clause, Trust trust) {
        return new Basis(source, clause, trust);
    }

    /** {@return a fact of the trade} */
    public static Basis commonPractice() {
        return new Basis("the trade", "", Trust.COMMON_PRACTICE);
    }

    /** {@return the basis for people: {@code ASTM C1701/C1701M, 8.2 (memory)}} */
    @Override
    public String toString() {
        String mark = trust.name().toLowerCase(Locale.ROOT).replace('_', ' ');
        if (trust == Trust.COMMON_PRACTICE) {
            return mark;
        }
        return source + (clause.isEmpty() ? "" : ", " + clause) + " (" + mark + ")";
    }
}
