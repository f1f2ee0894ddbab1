// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

/** Writes and reads texts in quotes, with quotes inside them doubled (RFC 4180), for cells and for values inside a cell. */
final class Quotes {

    private static final char QUOTE = '"';

    private Quotes() {}

    static String around(String text) {
        return QUOTE + text.replace("\"", "\"\"") + QUOTE;
    }

    /** {@return the text, in quotes where splitting at {@code separator} would change it} */
    static String whole(String text, String separator) {
        boolean isPlain =
                !text.isEmpty() && !text.contains(separator) && !isQuote(text, 0) && text.equals(text.strip());
        return isPlain ? text : around(text);
    }

    /** {@return the text inside the quotes} */
    static String within(String quoted) {
        return quoted.substring(1, quoted.length() - 1).replace("\"\"", "\"");
    }

    static boolean isQuote(String text, int at) {
        return at < text.length() && text.charAt(at) == QUOTE;
    }

    /** {@return the index after the closing quote}; {@code from} if no quoted text starts there or it is not closed */
    static int end(String text, int from) {
        if (!isQuote(text, from)) {
            return from;
        }
        int close = text.indexOf(QUOTE, from + 1);
        while (close >= 0 && isQuote(text, close + 1)) {
            close = text.indexOf(QUOTE, close + 2);
        }
        return close < 0 ? from : close + 1;
    }

    /** {@return the index of the first character that is not blank, from {@code from}} */
    static int afterBlanks(String text, int from) {
        int at = from;
        while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
            at++;
        }
        return at;
    }
}
