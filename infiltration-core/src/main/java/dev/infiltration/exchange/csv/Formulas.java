// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import java.util.regex.Pattern;

/**
 * Texts that a spreadsheet would run as formulas, made harmless by an apostrophe before them, and read back without it.
 *
 * <p>Such a text starts with {@code = + - @}, a tab or a line end, or with one of their full-width forms, behind blanks, quotes
 * and apostrophes or not. What stands behind a comma, a semicolon, a tab or a line end counts as a text of its own, since a
 * spreadsheet may part the cells there, whatever quotes say. All get an apostrophe more than they had, so that what is read back
 * is what was written.
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
