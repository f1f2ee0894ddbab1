// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

/**
 * Reads and writes field books as tables of runs: CSV, with a metadata document. Needs Jackson's CSV module.
 *
 * <p>Reading throws nothing for the content of a table: each value that cannot be read is a problem with its row and column.
 * Writing reports what a table cannot contain. {@link java.io.IOException} is thrown if a file or stream cannot be read or
 * written.
 *
 * <pre>{@code
 * RunsCsv csv = RunsCsv.withDefaults().withMapping(mapping);
 * ReadBook read = csv.read(Path.of("runs.csv"));
 * Review review = Review.of(read);
 * try (Writer out = Files.newBufferedWriter(Path.of("out.csv"))) {
 *     csv.write(review.book(), out).forEach(place -> System.err.println(place + " is in no table"));
 * }
 * }</pre>
 */
@NullMarked
package dev.infiltration.exchange.csv;

import org.jspecify.annotations.NullMarked;
