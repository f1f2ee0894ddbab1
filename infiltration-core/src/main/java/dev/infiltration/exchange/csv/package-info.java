// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

/**
 * Field books as tables of runs: CSV in and out, with metadata beside it. Needs Jackson's CSV module.
 *
 * <p>Reading throws nothing for what a table holds: what cannot be read is a problem with its row and column. Writing names what
 * a table cannot hold. {@link java.io.IOException} is thrown for what cannot be fetched or put down.
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
