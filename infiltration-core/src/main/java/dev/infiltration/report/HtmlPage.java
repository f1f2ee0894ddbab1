// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/**
 * A page of its own: no script, no other file, nothing from a network.
 *
 * @param title   the heading of the page
 * @param kind    a word for the page, which its style may go by
 * @param summary what stands above everything
 * @param blocks  the parts of the page
 */
record HtmlPage(Phrase title, String kind, List<Block> summary, List<Block> blocks) {

    private static final String STYLE = style();

    private static String style() {
        try (InputStream css = HtmlPage.class.getResourceAsStream("page.css")) {
            return new String(Objects.requireNonNull(css).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    String html() {
        return String.join(
                "\n",
                "<!DOCTYPE html>",
                "<html lang=\"en\">",
                "<head>",
                "<meta charset=\"utf-8\">",
                "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">",
                "<meta name=\"color-scheme\" content=\"light dark\">",
                "<meta name=\"referrer\" content=\"no-referrer\">",
                "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'\">",
                "<title>" + HtmlWords.plain(title) + "</title>",
                "<style>",
                STYLE + "</style>",
                "</head>",
                "<body class=\"" + kind + "\">",
                "<a class=\"skip\" href=\"#content\">Skip to the content</a>",
                "<header>",
                "<h1>" + HtmlWords.of(title) + "</h1>",
                HtmlBlocks.of(summary) + "</header>",
                contents() + "<main id=\"content\" tabindex=\"-1\">",
                HtmlBlocks.of(blocks) + "</main>",
                "</body>",
                "</html>",
                "");
    }

    private String contents() {
        StringBuilder links = new StringBuilder();
        for (Block block : blocks) {
            if (block instanceof Block.Section section) {
                links.append("<li><a href=\"#")
                        .append(HtmlWords.escaped(section.id()))
                        .append("\">");
                links.append(HtmlWords.of(section.heading())).append("</a></li>\n");
            }
        }
        return "<nav aria-label=\"On this page\">\n<ol>\n" + links + "</ol>\n</nav>\n";
    }
}
