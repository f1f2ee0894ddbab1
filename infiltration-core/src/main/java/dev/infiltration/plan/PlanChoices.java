// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import dev.infiltration.field.Location;
import dev.infiltration.units.Reading;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * What the planner of a visit may choose beyond method, surface and rate.
 *
 * @param ring      inside diameter; null for the method's nominal one
 * @param count     number of locations asked for; null for the method's
 * @param runs      runs at a location
 * @param setUp     time a location takes beside the pouring
 * @param locations where to test
 * @param drawn     how they were drawn; null where they were not
 * @param window    when to start, as handed in; null where it was not
 * @param rain      the rain to look for a window in; null where none was given
 * @param zone      the clock of the site
 */
record PlanChoices(
        @Nullable Reading<Length> ring,
        @Nullable Integer count,
        int runs,
        Duration setUp,
        List<Location> locations,
        LocationSample.@Nullable Drawn drawn,
        @Nullable DryWindow window,
        @Nullable Rain rain,
        ZoneId zone) {

    /**
     * Rain to look for a window in.
     *
     * @param record    the rain, past and forecast
     * @param notBefore no start is wanted earlier
     */
    record Rain(RainRecord record, Instant notBefore) {}

    PlanChoices {
        locations = List.copyOf(locations);
    }

    /** {@return no choices but a number of runs} */
    static PlanChoices of(int runs) {
        return new PlanChoices(null, null, runs, Duration.ZERO, List.of(), null, null, null, ZoneOffset.UTC);
    }

    PlanChoices withRing(Reading<Length> ring) {
        return new PlanChoices(ring, count, runs, setUp, locations, drawn, window, rain, zone);
    }

    PlanChoices withCount(int count) {
        return new PlanChoices(ring, count, runs, setUp, locations, drawn, window, rain, zone);
    }

    PlanChoices withRuns(int runs) {
        return new PlanChoices(ring, count, runs, setUp, locations, drawn, window, rain, zone);
    }

    PlanChoices withSetUp(Duration setUp) {
        return new PlanChoices(ring, count, runs, setUp, locations, drawn, window, rain, zone);
    }

    PlanChoices withLocations(List<Location> locations) {
        return new PlanChoices(ring, count, runs, setUp, locations, null, window, rain, zone);
    }

    PlanChoices withDrawn(LocationSample.Drawn drawn) {
        return new PlanChoices(ring, count, runs, setUp, drawn.locations(), drawn, window, rain, zone);
    }

    PlanChoices withWindow(DryWindow window) {
        return new PlanChoices(ring, count, runs, setUp, locations, drawn, window, rain, zone);
    }

    PlanChoices withRain(Rain rain) {
        return new PlanChoices(ring, count, runs, setUp, locations, drawn, window, rain, zone);
    }

    PlanChoices withZone(ZoneId zone) {
        return new PlanChoices(ring, count, runs, setUp, locations, drawn, window, rain, zone);
    }
}
