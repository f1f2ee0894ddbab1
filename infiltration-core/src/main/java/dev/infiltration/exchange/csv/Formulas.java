// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import java.util.regex.Pattern;

/**
 * Texts that a spreadsheet would run as formulas, made harmless by an apostrophe before them, and read back without it.
 *
 * <p>Such a text starts with {@code = + - @}, a tab or a line end, or with one of their full-width forms, behind blanks or not.
 * One that starts with apostrophes before any of these gets one more, so that what is read back is what was written.
 */
final class Formulas {

    private static final String APOSTROPHE = "'";
    private static final String STARTS = "[=+\\-@\\t\\r\\n\\uFF1D\\uFF0B\\uFF0D\\uFF20]";
    private static final Pattern RUN = Pattern.compile("'*[\\h&&[^\\t]]*" + STARTS + ".*", Pattern.DOTALL);
    private static final Pattern DEFUSED = Pattern.compile("'+[\\h&&[^\\t]]*" + STARTS + ".*", Pattern.DOTALL);

    private Formulas() {}

    static String defused(String text) {
        return RUN.matcher(text).matches() ? APOSTROPHE + text : text;
    }

    static String read(String cell) {
        return DEFUSED.matcher(cell).matches() ? cell.substring(1) : cell;
    }
}
