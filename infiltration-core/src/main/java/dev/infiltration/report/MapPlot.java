// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import dev.infiltration.units.FieldUnit;
import java.util.List;
import java.util.Objects;
import javax.measure.quantity.Length;
import javax.measure.quantity.Speed;

/**
 * Where the locations of a surface lie, each with its rate.
 *
 * @param title  what it shows
 * @param unit   the unit of the rates
 * @param length the unit of the places
 * @param across the name of the axis across the page
 * @param up     the name of the axis up the page
 * @param spots  the locations
 */
public record MapPlot(
        String title, FieldUnit<Speed> unit, FieldUnit<Length> length, String across, String up, List<Spot> spots)
        implements Plot {

    /**
     * A location.
     *
     * @param x    its place across
     * @param y    its place up
     * @param mark its rate
     */
    public record Spot(double x, double y, RateMark mark) {}

    /** Copies the locations. */
    public MapPlot {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(length, "length");
        Objects.requireNonNull(across, "across");
        Objects.requireNonNull(up, "up");
        spots = List.copyOf(spots);
    }

    @Override
    public String description() {
        return "Where the locations lie, in " + length.symbol() + ", each with its rate in " + unit.symbol()
                + "; an open mark is a location without a rate.";
    }
}
