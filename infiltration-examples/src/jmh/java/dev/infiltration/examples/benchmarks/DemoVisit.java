// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.benchmarks;

import dev.infiltration.exchange.FieldBookJson;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Site;
import dev.infiltration.field.Surface;
import dev.infiltration.field.Visit;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;

/** The demo book with one visit left in it: three locations, four runs. */
final class DemoVisit {

    private static final Path DEMO = Path.of("demo", "harrow-quay.json");

    private DemoVisit() {}

    static FieldBook book() throws IOException {
        FieldBook demo = FieldBookJson.withDefaults().read(DEMO).book().orElseThrow();
        List<Visit> visits =
                demo.visits().stream().filter(visit -> "V5".equals(visit.id())).toList();
        return demo.withVisits(visits);
    }

    /** The visit many times over, to a surface of its own each time. */
    static FieldBook repeated(int times) throws IOException {
        FieldBook book = book();
        Visit visit = book.visits().get(0);
        Site site = book.sites().get(0);
        Surface surface = site.surfaces().stream()
                .filter(each -> each.id() != null && each.id().equals(visit.surface()))
                .findFirst()
                .orElseThrow();
        List<Surface> surfaces =
                IntStream.range(0, times).mapToObj(i -> surface.withId("S" + i)).toList();
        return book.withSites(List.of(site.withSurfaces(surfaces)))
                .withMaintenance(List.of())
                .withVisits(IntStream.range(0, times)
                        .mapToObj(
                                i -> visit.withId("V" + i).withSurface("S" + i).withTests(tests(visit, i)))
                        .toList());
    }

    private static List<LocationTest> tests(Visit visit, int i) {
        return visit.tests().stream()
                .map(test -> test.withId(test.id() + "-" + i))
                .toList();
    }
}
