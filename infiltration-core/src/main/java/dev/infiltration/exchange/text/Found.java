// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.text;

import java.util.Locale;

/** Shows what was found in a message: shortened and without control characters. */
public final class Found {

    private static final int LONGEST = 40;

    private Found() {}

    /** {@return a text in quotes, shortened} */
    public static String quoted(String text) {
        return '"' + shortened(text) + '"';
    }

    /** {@return the first 40 characters of a text, control characters as escapes} */
    public static String shortened(String text) {
        StringBuilder shown = new StringBuilder();
        int characters = 0;
        for (int at = 0; at < text.length(); at += Character.charCount(text.codePointAt(at))) {
            if (characters++ == LONGEST) {
                return shown.append('…').toString();
            }
            shown.append(shown(text.codePointAt(at)));
        }
        return shown.toString();
    }

    /** {@return one character of broken JSON} */
    public static String character(int codePoint) {
        return codePoint == '"' ? "a quote" : '"' + shown(codePoint) + '"';
    }

    private static String shown(int codePoint) {
        return switch (Character.getType(codePoint)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR,
                    Character.SURROGATE -> String.format(Locale.ROOT, "\\u%04X", codePoint);
            default -> Character.toString(codePoint);
        };
    }
}
