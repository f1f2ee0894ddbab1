// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import dev.infiltration.field.Location;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Ring;
import dev.infiltration.field.Site;
import dev.infiltration.field.Surface;
import dev.infiltration.field.TestRun;
import dev.infiltration.field.Visit;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A row to be written: a run with its test, location, ring, visit, surface and site where they exist.
 *
 * @param number the run's number in its test, from 1; 0 for a test without runs
 */
record WrittenRow(
        @Nullable Site site,
        @Nullable Surface surface,
        @Nullable Location location,
        @Nullable Ring ring,
        @Nullable Visit visit,
        @Nullable LocationTest test,
        @Nullable TestRun run,
        int number) {

    /** {@return the value of a column in this row, or null} */
    @Nullable
    Object value(Field field, List<String> path) {
        if (field.equals(Fields.RUN_NUMBER)) {
            return number == 0 ? null : number;
        }
        if (visit != null && field.isId()) {
            return id(field, visit);
        }
        @Nullable Object record = record(field.level());
        return record == null || isTold(field) ? null : Paths.value(record, path);
    }

    /** An id in a visit or a test is written even if no such record exists. */
    private @Nullable Object id(Field field, Visit visit) {
        return switch (field.level()) {
            case SITE -> site == null ? null : site.id();
            case SURFACE -> visit.surface();
            case LOCATION -> test == null ? null : test.location();
            case RING -> test == null ? null : test.ring();
            case VISIT -> visit.id();
            case TEST, RUN -> test == null ? null : test.id();
        };
    }

    /** Values that occur once in a test, such as the prewetting, are written in the row of its first run only. */
    private boolean isTold(Field field) {
        return field.level() == RowRecord.TEST && number > 1;
    }

    private @Nullable Object record(RowRecord level) {
        return switch (level) {
            case SITE -> site;
            case SURFACE -> surface;
            case LOCATION -> location;
            case RING -> ring;
            case VISIT -> visit;
            case TEST -> test;
            case RUN -> run;
        };
    }
}
