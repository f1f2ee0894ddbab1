// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.plots;

import dev.infiltration.rate.RateOutcome;
import dev.infiltration.report.RateMark;
import org.knowm.xchart.style.markers.Marker;
import org.knowm.xchart.style.markers.SeriesMarkers;

/** How a rate is marked: by shape and by ink, so that either alone tells a rate from a bound. */
final class Marks {

    private Marks() {}

    static Ink ink(RateMark mark) {
        return mark.outcome() instanceof RateOutcome.Measured ? Ink.ONE : Ink.TWO;
    }

    /** {@return the mark on a scale across} */
    static Marker across(RateMark mark) {
        return mark.outcome()
                .match(
                        measured -> SeriesMarkers.CIRCLE,
                        upper -> Arrow.left(),
                        lower -> Arrow.right(),
                        none -> new Hollow());
    }

    /** {@return the mark on a scale that goes up} */
    static Marker up(RateMark mark) {
        return mark.outcome()
                .match(
                        measured -> SeriesMarkers.CIRCLE,
                        upper -> Arrow.down(),
                        lower -> Arrow.up(),
                        none -> new Hollow());
    }
}
