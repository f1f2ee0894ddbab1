// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import dev.infiltration.check.Checker;
import dev.infiltration.field.ClockTime;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Pouring;
import dev.infiltration.field.PreWet;
import dev.infiltration.field.Ring;
import dev.infiltration.field.Site;
import dev.infiltration.field.Visit;
import dev.infiltration.method.Limit;
import dev.infiltration.method.Methods;
import dev.infiltration.method.TestMethod;
import dev.infiltration.rule.RuleId;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import dev.infiltration.units.UnitSystem;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;

/**
 * Whether a test begun now would lie too near to another: the checker is asked, as if the test were on record already.
 *
 * @param method the method
 * @param zone   the time zone of the site
 * @param ring   the ring that will be used; null for one of the size that the method allows at most
 */
record SpacingCheck(
        TestMethod method, ZoneId zone, @Nullable Ring ring) {

    private static final RuleId RULE = RuleId.VISIT_SPACING;

    /** Tests on dates farther back than the method's time between locations and these do not matter. */
    private static final int DAYS = 3;

    /** {@return whether the checker would find the test too near, by the places on record alone} */
    boolean isTooNear(FieldBook book, Visit visit, String location, Instant now) {
        if (book.sites().isEmpty()) {
            return false;
        }
        LocalDateTime local = LocalDateTime.ofInstant(now, ZoneOffset.UTC);
        LocalDate oldest = local.toLocalDate().minusDays(DAYS + spacingTime().toDays());
        Stream<Visit> others = book.visits().stream()
                .filter(other -> Objects.equals(visit.surface(), other.surface()))
                .filter(other -> !Objects.equals(visit.id(), other.id()))
                .filter(other -> other.date() == null || !other.date().isBefore(oldest));
        FieldBook asked = FieldBook.empty()
                .withSites(book.sites().stream().map(this::timed).toList())
                .withRings(and(Stream.ofNullable(ring), book.rings().stream()))
                .withVisits(and(Stream.of(begun(visit, location, local)), others));
        String place = "/visits/0/tests/" + visit.tests().size();
        return Checker.withDefaults().withMethods(Methods.builtIn().with(method)).check(asked).findings().stream()
                .anyMatch(finding ->
                        RULE.is(finding.rule()) && finding.where().toString().equals(place));
    }

    private Visit begun(Visit visit, String location, LocalDateTime now) {
        ClockTime start = new ClockTime(now, ClockTime.Precision.EXACT, ZoneOffset.UTC);
        LocationTest begun = LocationTest.of(null, location, ring == null ? null : ring.id())
                .withPreWet(PreWet.of(start, null, null, Pouring.End.DRAINED));
        return visit.withMethod(method.id()).withTests(and(visit.tests().stream(), Stream.of(begun)));
    }

    private static <T> List<T> and(Stream<T> some, Stream<T> more) {
        return Stream.concat(some, more).toList();
    }

    private Site timed(Site site) {
        return site.timeZone() == null ? site.withTimeZone(zone) : site;
    }

    private Duration spacingTime() {
        @Nullable
        Reading<Time> least =
                method.limit(Limit.SPACING_TIME).in(UnitSystem.NEITHER).lowest();
        return least == null ? Duration.ZERO : Duration.ofSeconds((long) Math.ceil(least.in(FieldUnit.SECOND)));
    }
}
