// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

/**
 * Shared by all kinds of documents: digits, stopwatch times, byte-order marks, JSON generators. Not exported.
 *
 * <p>A value that cannot be read is null, and the caller reports its place. Writing throws what the target throws.
 *
 * <pre>{@code
 * Reader reader = ByteOrderMark.reader(bytes).reader();
 * BigDecimal number = Digits.quoted("40.00");
 * BigDecimal seconds = Stopwatch.MINUTES.seconds("2:21.7");
 * String found = "found " + Found.quoted(text);
 * Output.LINE.write(target, json -> json.writeString(found));
 * }</pre>
 */
@NullMarked
package dev.infiltration.exchange.text;

import org.jspecify.annotations.NullMarked;
