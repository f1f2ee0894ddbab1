// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import java.util.Objects;

/**
 * A part of a surface that locations are drawn in by its share of the area: run-on edge, low spot, wheel path, interior.
 *
 * <p>Clogging starts where run-on enters and in low spots; locations drawn over the whole surface alone may miss it (Brown
 * and Borst 2014, J. Environ. Eng. 140(3), published). Zones should not overlap; two of one name are two parts of it.
 *
 * @param name    what it is called
 * @param outline where it lies
 */
public record Zone(String name, Outline outline) {

    /** Checks that both are there. */
    public Zone {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(outline, "outline");
    }
}
