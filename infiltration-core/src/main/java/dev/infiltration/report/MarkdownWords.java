// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** ReportText in Markdown (CommonMark with pipe tables): what was written in a book can neither mark up nor end a cell. */
final class MarkdownWords {

    /** What means something anywhere in a line. */
    private static final Pattern SIGN = Pattern.compile("[\\\\`*_\\[\\]<>&|#~$]|:(?=//)|(?<=(?i:www))\\.");

    /** What means something where a line begins. */
    private static final Pattern START = Pattern.compile("^(\\s*)([-+=])");

    /** A number that would begin a list. */
    private static final Pattern NUMBER = Pattern.compile("^(\\s*\\d{1,9})([.)])(?=\\s|$)");

    private MarkdownWords() {}

    static String of(Phrase phrase) {
        return phrase.pieces().stream().map(MarkdownWords::of).collect(Collectors.joining());
    }

    private static String of(Phrase.Piece piece) {
        String text = escaped(piece.text());
        return switch (piece.kind()) {
            case OWN, WRITTEN, CODE -> text;
            case STRONG -> "**" + text + "**";
            case MISSING -> "*" + text + "*";
            case LINK -> "[" + text + "](<" + piece.target() + ">)";
        };
    }

    /** {@return the text with a backslash before every sign that would mean something} */
    static String escaped(String text) {
        String inside = SIGN.matcher(Printable.of(text)).replaceAll("\\\\$0");
        return NUMBER.matcher(START.matcher(inside).replaceFirst("$1\\\\$2")).replaceFirst("$1\\\\$2");
    }
}
