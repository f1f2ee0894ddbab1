// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.examples.season;

import dev.infiltration.exchange.csv.RunsCsv;
import dev.infiltration.field.FieldBook;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;

/** The runs as a table, with metadata beside it. */
final class RunsTable {

    private static final String NAME = "runs.csv";

    private RunsTable() {}

    static void writeTo(Path folder, FieldBook book) throws IOException {
        RunsCsv csv = RunsCsv.withDefaults();
        try (Writer table = Files.newBufferedWriter(folder.resolve(NAME))) {
            csv.write(book, table);
        }
        try (Writer metadata = Files.newBufferedWriter(folder.resolve(NAME + "-metadata.json"))) {
            csv.writeMetadata(book, NAME, metadata);
        }
    }
}
