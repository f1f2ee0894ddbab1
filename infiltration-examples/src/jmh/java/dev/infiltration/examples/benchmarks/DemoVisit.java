// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.benchmarks;

import dev.infiltration.exchange.FieldBookJson;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.Visit;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

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
}
