// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import dev.infiltration.exchange.TableMapping;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.ReadBook;
import dev.infiltration.field.TestRun;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Tables for tests, and short ways to ask what was read of them. */
final class Csv {

    private Csv() {}

    static ReadBook read(String table) {
        return read(table, StandardCharsets.UTF_8);
    }

    static ReadBook read(String table, Charset charset) {
        return read(RunsCsv.withDefaults(), table.getBytes(charset));
    }

    static ReadBook read(TableMapping mapping, String table) {
        return read(RunsCsv.withDefaults().withMapping(mapping), table.getBytes(StandardCharsets.UTF_8));
    }

    private static ReadBook read(RunsCsv csv, byte[] bytes) {
        try {
            return csv.read(new ByteArrayInputStream(bytes));
        } catch (IOException never) {
            throw new UncheckedIOException(never);
        }
    }

    static FieldBook book(ReadBook read) {
        if (!read.problems().isEmpty()) {
            throw new AssertionError(read.problems());
        }
        return read.book().orElseThrow();
    }

    static List<LocationTest> tests(ReadBook read) {
        return book(read).visits().stream()
                .flatMap(visit -> visit.tests().stream())
                .toList();
    }

    static TestRun run(ReadBook read) {
        return tests(read).get(0).runs().get(0);
    }

    /** {@return each problem as its row, its column and where it is} */
    static List<String> places(ReadBook read) {
        return read.problems().stream()
                .map(problem -> problem.line() + " " + problem.column() + " " + problem.where())
                .toList();
    }
}
