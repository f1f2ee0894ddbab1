// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.review;

import dev.infiltration.check.TestAt;
import dev.infiltration.check.VisitAt;
import dev.infiltration.field.Ring;
import dev.infiltration.field.Site;
import dev.infiltration.field.Surface;
import dev.infiltration.method.Methods;
import dev.infiltration.method.TestMethod;
import dev.infiltration.plan.ExpectedRate;
import dev.infiltration.plan.VisitPlan;
import dev.infiltration.summary.LocationRate;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.InfiltrationRate;
import dev.infiltration.units.Reading;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * What a book has on record for planning the next visit to a surface.
 *
 * <pre>{@code
 * NextVisit next = NextVisit.of(review, Methods.builtIn(), "HQ-A").orElseThrow();
 * next.expected().map(next::plan).ifPresent(plan -> System.out.print(plan.text()));
 * }</pre>
 *
 * @param surface the surface
 * @param site    the site it lies on
 * @param method  the method of the last visit, where that names a known one; else that for the kind of surface
 * @param ring    the usable ring of the last visit that was used last; null where there was none
 * @param expected the lowest, middle and highest figure of the locations of the last visit that has any, bounds as they stand
 * @param lastVisit the date of that visit
 */
public record NextVisit(
        Surface surface,
        Site site,
        TestMethod method,
        @Nullable Ring ring,
        Optional<ExpectedRate> expected,
        Optional<LocalDate> lastVisit) {

    private static final Reading<Length> LONGEST = Reading.of("10", FieldUnit.METRE);

    /**
     * {@return what is on record for a surface; empty where the book has no surface of that id}
     *
     * @param review  the review of the book
     * @param methods the known methods
     * @param surface the id of the surface
     */
    public static Optional<NextVisit> of(Review review, Methods methods, String surface) {
        return review.book().sites().stream()
                .flatMap(site -> site.surfaces().stream()
                        .filter(each -> surface.equals(each.id()))
                        .map(each -> of(review, methods, site, each)))
                .findFirst();
    }

    private static NextVisit of(Review review, Methods methods, Site site, Surface surface) {
        List<VisitAt> visits = review.surfaces().stream()
                .map(row -> row.visit())
                .filter(visit -> Objects.equals(surface.id(), visit.visit().surface()))
                .sorted(Comparator.comparing(NextVisit::date))
                .toList();
        Optional<VisitAt> last = last(visits.stream());
        Optional<VisitAt> withRates =
                last(visits.stream().filter(visit -> !figures(review, visit).isEmpty()));
        return new NextVisit(
                surface,
                site,
                last.flatMap(VisitAt::method).orElseGet(() -> methods.forSurface(surface.type())),
                last.flatMap(NextVisit::ring).orElse(null),
                withRates.map(visit -> expected(figures(review, visit))),
                withRates.map(visit -> visit.visit().date()));
    }

    private static <T> Optional<T> last(Stream<T> all) {
        return all.reduce((earlier, later) -> later);
    }

    private static LocalDate date(VisitAt visit) {
        @Nullable LocalDate date = visit.visit().date();
        return date == null ? LocalDate.MIN : date;
    }

    private static Optional<Ring> ring(VisitAt visit) {
        return last(visit.tests().stream()
                .flatMap((TestAt test) -> test.ring().stream())
                .filter(ring -> ring.isUsable() && ring.diametersInUse().get(0).compareAmount(LONGEST) <= 0));
    }

    /** {@return the figures of a visit's locations above 0, ascending} */
    private static List<InfiltrationRate> figures(Review review, VisitAt visit) {
        return review.locations().stream()
                .filter((LocationRate row) -> row.visit() == visit)
                .flatMap(row -> row.outcome().figure().stream())
                .filter(rate -> rate.millimetresPerHour() > 0)
                .sorted()
                .toList();
    }

    private static ExpectedRate expected(List<InfiltrationRate> ascending) {
        int count = ascending.size();
        return new ExpectedRate(ascending.get(0), ascending.get((count - 1) / 2), ascending.get(count - 1));
    }

    /**
     * {@return the plan of the visit}, at the surface's locations on record
     *
     * @param rate the rate to be ready for
     */
    public VisitPlan plan(ExpectedRate rate) {
        VisitPlan plan = VisitPlan.of(method, surface, rate).withLocations(surface.locations());
        plan = site.timeZone() == null ? plan : plan.withZone(site.timeZone());
        return ring == null ? plan : plan.withRing(ring.diametersInUse().get(0));
    }
}
