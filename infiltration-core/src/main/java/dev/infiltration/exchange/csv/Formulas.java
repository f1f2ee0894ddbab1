// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import java.util.regex.Pattern;

/**
 * Protects texts that a spreadsheet would run as formulas with a leading apostrophe, and removes it when reading.
 *
 * <p>Such a text starts with {@code = + - @}, a tab or a line end, or with one of their full-width forms, optionally after
 * blanks, quotes and apostrophes. The part after a comma, a semicolon, a tab or a line end is a separate text, because a
 * spreadsheet may split the cell there even inside quotes. Each such text gets one more apostrophe, so that reading returns
 * exactly what was written.
 */
final class Formulas {

    private static final String APOSTROPHE = "'";
    private static final String SIGNS = "=+\\-@\\uFF1D\\uFF0B\\uFF0D\\uFF20";
    private static final String BEFORE = "['\"\\h&&[^\\t]]*+";
    private static final String TEXT = "\\A(?=" + BEFORE + "[\\t\\r\\n" + SIGNS + "])";
    private static final String PART = "(?<=[,;\\t\\r\\n])(?=" + BEFORE + "[" + SIGNS + "])";
    private static final Pattern RUN = Pattern.compile(TEXT + "|" + PART);
    private static final Pattern DEFUSED = Pattern.compile("(?:" + TEXT + "|" + PART + ")" + APOSTROPHE);

    private Formulas() {}

    static String defused(String text) {
        return RUN.matcher(text).replaceAll(APOSTROPHE);
    }

    static String read(String cell) {
        return DEFUSED.matcher(cell).replaceAll("");
    }
}
