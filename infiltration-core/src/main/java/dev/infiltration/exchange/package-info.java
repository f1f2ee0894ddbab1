// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

/**
 * Reads and writes field books and other records as JSON.
 *
 * <p>Reading throws nothing for the content of a document: each value that cannot be read is a problem with its line, column
 * and JSON Pointer. {@link java.io.IOException} is thrown if a file or stream cannot be read or written. Writing a value that
 * JSON or the calendar of a document cannot represent is a programming error; the exception gives the value's pointer.
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
