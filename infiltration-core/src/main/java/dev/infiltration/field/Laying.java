// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.field;

/** Laying pattern of the units of a jointed surface. */
public enum Laying implements JsonName {
    /** Straight joints both ways. */
    STACK,
    /** Rows shifted by half a unit. */
    RUNNING_BOND,
    /** Herringbone, the units along and across the x axis. */
    HERRINGBONE_90,
    /** Herringbone, the x axis 45° anticlockwise from the length of the unit at the datum. */
    HERRINGBONE_45,
    /**
     * Square blocks of units side by side, turned by a right angle from block to block: as many units as come nearest
     * to a square, in the middle of the block; where they do not make a square, the joints round the block are wider.
     */
    BASKET_WEAVE,
    /** Regular hexagons, two flats across the x axis. */
    HEXAGONAL,
    /** Slabs with voids, in straight rows. */
    GRID
}
