// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import java.util.regex.Pattern;

/** ReportText in HTML: everything escaped, what was written in a book kept from reordering what stands around it. */
final class HtmlWords {

    /** Days and amounts are not broken over lines. */
    private static final Pattern WHOLE =
            Pattern.compile("\\b\\d{4}-\\d{2}-\\d{2}\\b|\\b\\d[\\d.]* (?:(?:mm|in)/h|(?:mm|cm|m|ft|in)[\u00B2\u00B3]?"
                    + "|kg|g|lb|s|min|h|\u00B0[CF]|%)(?![\\p{L}\\d/])");

    private HtmlWords() {}

    /** {@return text for content and for quoted attributes} */
    static String escaped(String text) {
        return Printable.of(text)
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("'", "&#39;");
    }

    static String of(Phrase phrase) {
        StringBuilder html = new StringBuilder();
        phrase.pieces().forEach(piece -> html.append(of(piece)));
        return html.toString();
    }

    private static String of(Phrase.Piece piece) {
        String text = WHOLE.matcher(escaped(piece.text())).replaceAll("<span class=\"whole\">$0</span>");
        return switch (piece.kind()) {
            case OWN -> text;
            case STRONG -> "<strong>" + text + "</strong>";
            case WRITTEN -> "<bdi>" + text + "</bdi>";
            case CODE -> "<code dir=\"ltr\">" + text + "</code>";
            case MISSING -> "<em class=\"missing\">" + text + "</em>";
            case LINK -> "<a href=\"" + escaped(piece.target()) + "\"><bdi>" + text + "</bdi></a>";
        };
    }

    /** {@return the words alone, for a title} */
    static String plain(Phrase phrase) {
        StringBuilder text = new StringBuilder();
        phrase.pieces().forEach(piece -> text.append(piece.text()));
        return escaped(text.toString());
    }
}
