// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

/** Fractions as they are published: {@code 5/128}. */
final class Fractions {

    private Fractions() {}

    static ExactProbability of(String text) {
        String[] parts = text.split("/", -1);
        return ExactProbability.of(Long.parseLong(parts[0]), Long.parseLong(parts[1]));
    }
}
