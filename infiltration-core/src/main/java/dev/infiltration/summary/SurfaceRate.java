// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.summary;

import dev.infiltration.check.TestAt;
import dev.infiltration.check.VisitAt;
import dev.infiltration.rate.RateOutcome;
import dev.infiltration.statistics.SampleStatistics;
import java.util.List;
import java.util.Map;

/**
 * What a surface comes to at a visit, over its location rows.
 *
 * <p>The arithmetic mean is what the standards average; the geometric mean and the median say what a typical spot does; the
 * minimum says where ponding starts. All take the rows' values as they stand and share one kind of outcome.
 *
 * @param visit         the visit
 * @param planned       distinct locations that the visit's tests name
 * @param measured      locations with a rate
 * @param bounded       locations with a bound
 * @param withheld      locations tested without either
 * @param notTested     locations with neither prewetting nor run
 * @param mean          arithmetic mean
 * @param geometricMean geometric mean; zero where a rate is zero
 * @param median        median; of an even count the mean of the middle two
 * @param minimum       minimum
 */
public record SurfaceRate(
        VisitAt visit,
        int planned,
        int measured,
        int bounded,
        int withheld,
        int notTested,
        RateOutcome mean,
        RateOutcome geometricMean,
        RateOutcome median,
        RateOutcome minimum) {

    /**
     * {@return the row of a visit}
     *
     * @param visit     the visit
     * @param locations its location rows
     */
    public static SurfaceRate of(VisitAt visit, List<LocationRate> locations) {
        List<RateOutcome> outcomes =
                locations.stream().map(LocationRate::outcome).toList();
        Map<String, List<TestAt>> named = LocationRate.byLocation(visit);
        int measured = count(outcomes, RateOutcome.Measured.class);
        int withheld = count(outcomes, RateOutcome.Withheld.class);
        return new SurfaceRate(
                visit,
                named.size(),
                measured,
                outcomes.size() - measured - withheld,
                withheld,
                named.size() - outcomes.size(),
                Outcomes.join(outcomes, Figures::mean),
                Outcomes.join(outcomes, Figures::geometricMean),
                Outcomes.join(outcomes, SampleStatistics::median),
                Outcomes.join(outcomes, Figures::minimum));
    }

    private static int count(List<RateOutcome> outcomes, Class<? extends RateOutcome> kind) {
        return (int) outcomes.stream().filter(kind::isInstance).count();
    }

    /** {@return the number of locations that the figures rest on} */
    public int usedCount() {
        return measured + bounded;
    }
}
