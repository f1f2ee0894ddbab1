// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.review;

import static dev.infiltration.Amounts.kg;
import static dev.infiltration.Amounts.mm;
import static dev.infiltration.Amounts.s;
import static dev.infiltration.Amounts.time;

import dev.infiltration.field.FieldBook;
import dev.infiltration.field.Location;
import dev.infiltration.field.Location.Selection;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Maintenance;
import dev.infiltration.field.Pouring.End;
import dev.infiltration.field.PreWet;
import dev.infiltration.field.Ring;
import dev.infiltration.field.Site;
import dev.infiltration.field.Surface;
import dev.infiltration.field.TestRun;
import dev.infiltration.field.Visit;
import dev.infiltration.rate.RateEquation;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Invented books of one surface over some years, written down by their rates. */
record Years(List<Location> locations, List<Visit> visits, List<Maintenance> maintenance) {

    private static final double MILLIMETRES = 300;
    private static final double KILOGRAMS = 18;

    static Years random(int locations) {
        return of(Selection.RANDOM, locations);
    }

    static Years of(Selection selection, int locations) {
        List<Location> all = IntStream.rangeClosed(1, locations)
                .mapToObj(i -> Location.of("A" + i).withSelection(selection))
                .toList();
        return new Years(all, List.of(), List.of());
    }

    /** One more visit; a rate below zero is an upper bound, one that is not a number leaves its location out. */
    Years visit(String id, String date, double... rates) {
        List<LocationTest> tests = new ArrayList<>();
        for (int i = 0; i < rates.length; i++) {
            if (!Double.isNaN(rates[i])) {
                tests.add(test(id, i + 1, rates[i]));
            }
        }
        Visit visit = Visit.of(id, "HQ-A", LocalDate.parse(date))
                .withMethod("unit-pavement")
                .withTests(tests);
        return new Years(locations, plus(visits, visit), maintenance);
    }

    private static LocationTest test(String visit, int number, double rate) {
        double atOneSecond = RateEquation.millimetresPerHour(KILOGRAMS, MILLIMETRES, 1);
        String seconds = new BigDecimal(atOneSecond / Math.abs(rate))
                .round(MathContext.DECIMAL32)
                .toPlainString();
        TestRun run = TestRun.of(null, kg("18.00"), s(seconds), rate < 0 ? End.STOPPED : End.DRAINED);
        PreWet wetting = PreWet.of(null, kg("3.60"), s("20.0"), End.DRAINED);
        return LocationTest.of(visit + "-" + number, "A" + number, "R1")
                .withPreWet(wetting)
                .withRuns(List.of(run));
    }

    /** The last visit, changed. */
    Years last(UnaryOperator<Visit> change) {
        List<Visit> changed = new ArrayList<>(visits);
        changed.set(visits.size() - 1, change.apply(visits.get(visits.size() - 1)));
        return new Years(locations, changed, maintenance);
    }

    Years maintenance(String id, String end, String... only) {
        Maintenance entry = Maintenance.of(id, "HQ-A").withEnd(time(end)).withLocations(List.of(only));
        return new Years(locations, visits, plus(maintenance, entry));
    }

    private static <T> List<T> plus(List<T> list, T last) {
        return Stream.concat(list.stream(), Stream.of(last)).toList();
    }

    Review review() {
        return Review.of(FieldBook.of()
                .withSites(List.of(
                        Site.of("HQ").withSurfaces(List.of(Surface.of("HQ-A").withLocations(locations)))))
                .withRings(List.of(Ring.of("R1").withInsideDiameter(mm("300"))))
                .withVisits(visits)
                .withMaintenance(maintenance));
    }

    SurfaceHistory history() {
        return review().histories().get(0);
    }
}
