// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

/** Texts in quotes, those in the text doubled, as RFC 4180 has it for cells: so do cells for values within them. */
final class Quotes {

    private static final char QUOTE = '"';

    private Quotes() {}

    static String around(String text) {
        return QUOTE + text.replace("\"", "\"\"") + QUOTE;
    }

    /** {@return the text as it is, or in quotes where it would not come back whole from where {@code separator} parts texts} */
    static String whole(String text, String separator) {
        boolean isPlain =
                !text.isEmpty() && !text.contains(separator) && !isQuote(text, 0) && text.equals(text.strip());
        return isPlain ? text : around(text);
    }

    /** {@return the text that quotes stand around} */
    static String within(String quoted) {
        return quoted.substring(1, quoted.length() - 1).replace("\"\"", "\"");
    }

    static boolean isQuote(String text, int at) {
        return at < text.length() && text.charAt(at) == QUOTE;
    }

    /** {@return where a text in quotes ends, behind its last one}; {@code from} where none starts, or none that ends */
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

    /** {@return where the first character that is not blank stands, from there on} */
    static int afterBlanks(String text, int from) {
        int at = from;
        while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
            at++;
        }
        return at;
    }
}
