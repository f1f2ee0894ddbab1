// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import java.util.stream.Collectors;

/** Text of a book made fit to stand on a page: as written, but that characters which are no text show as U+FFFD. */
final class Printable {

    private static final String REPLACEMENT = "\uFFFD";

    private Printable() {}

    /** {@return the text}: control characters, halves of characters, noncharacters and reordering marks replaced */
    static String of(String text) {
        return text.codePoints()
                .mapToObj(c -> isSpace(c) ? " " : isText(c) ? Character.toString(c) : REPLACEMENT)
                .collect(Collectors.joining());
    }

    private static boolean isSpace(int c) {
        return c == '\t' || c == '\n' || c == '\r';
    }

    private static boolean isText(int c) {
        boolean isHalf = c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE;
        boolean isNone = (c & 0xFFFE) == 0xFFFE || (c >= 0xFDD0 && c <= 0xFDEF);
        return !Character.isISOControl(c) && !isHalf && !isNone && !reorders(c);
    }

    /** Embeddings, overrides and isolates could reach beyond the text they stand in; plain direction marks cannot. */
    private static boolean reorders(int c) {
        return (c >= 0x202A && c <= 0x202E) || (c >= 0x2066 && c <= 0x2069);
    }
}
