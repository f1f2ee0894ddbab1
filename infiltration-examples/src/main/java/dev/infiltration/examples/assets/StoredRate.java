// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.assets;

import dev.infiltration.check.Finding;
import dev.infiltration.review.Review;
import dev.infiltration.rule.Effect;
import dev.infiltration.summary.LocationRate;
import dev.infiltration.units.InfiltrationRate;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A row of the department's table of rates: what a location came to at a visit.
 *
 * @param asset              the department's number of the pavement
 * @param location           the location's id
 * @param date               the date of the visit
 * @param outcome            {@code measured}, {@code upper-bound}, {@code lower-bound} or {@code withheld}
 * @param millimetresPerHour the rate or the bound in mm/h; null where there is none
 * @param deviations         the rules that the rate stands with
 */
public record StoredRate(
        String asset,
        String location,
        @Nullable LocalDate date,
        String outcome,
        @Nullable Double millimetresPerHour,
        List<String> deviations) {

    /**
     * {@return the rows of a review}
     *
     * @param asset  the department's number of the pavement
     * @param review the review
     */
    static List<StoredRate> of(String asset, Review review) {
        return review.locations().stream().map(rate -> of(asset, rate, review)).toList();
    }

    private static StoredRate of(String asset, LocationRate rate, Review review) {
        return new StoredRate(
                asset,
                rate.location(),
                rate.visit().visit().date(),
                rate.outcome().word(),
                rate.outcome()
                        .figure()
                        .map(InfiltrationRate::millimetresPerHour)
                        .orElse(null),
                deviations(rate, review));
    }

    private static List<String> deviations(LocationRate rate, Review review) {
        return review.runs().stream()
                .filter(run -> run.run().test().visit() == rate.visit())
                .filter(run -> rate.location().equals(run.run().test().test().location()))
                .flatMap(run -> review.findings(run).stream())
                .filter(finding -> finding.effect() == Effect.DEVIATION)
                .map(Finding::rule)
                .distinct()
                .toList();
    }
}
