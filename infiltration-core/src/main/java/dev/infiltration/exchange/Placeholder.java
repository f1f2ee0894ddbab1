// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

/** Holds the place of a package that has no class yet. */
final class Placeholder {

    private Placeholder() {}
}
