// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

/**
 * In and out: field books and other records as JSON.
 *
 * <p>Reading throws nothing for what a document holds: what cannot be read is a problem with its line, column and JSON
 * Pointer. {@link java.io.IOException} is thrown for what cannot be fetched or put down. Writing what JSON or the
 * calendar of a document cannot hold is a programmer's mistake and throws with the value's pointer.
 *
 * <pre>{@code
 * FieldBookJson json = FieldBookJson.withDefaults();
 * ReadBook read = json.read(Path.of("season.json"));
 * read.problems().forEach(problem -> System.err.println(problem.line() + ": " + problem.message()));
 * FieldBook book = read.complete();
 * json.write(book, System.out);
 * }</pre>
 */
@NullMarked
package dev.infiltration.exchange;

import org.jspecify.annotations.NullMarked;
