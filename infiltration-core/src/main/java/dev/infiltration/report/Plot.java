// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

/** Something to be drawn. */
public interface Plot {
    /** {@return what it shows in a sentence or two} */
    String description();
}
