// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

/**
 * What documents of every kind share: digits, what a watch shows, byte-order marks, JSON generators. Not exported.
 *
 * <p>What cannot be read answers null, for the caller to say where it stood; what cannot be written throws as its target
 * does.
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
