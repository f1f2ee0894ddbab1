// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.plots;

import dev.infiltration.report.Plot;
import java.util.Arrays;
import java.util.Locale;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A drawing written as one SVG element: named, described, its inks open to the page, its words as text. */
final class SvgText {

    private static final Pattern NOTHING = Pattern.compile("\\s*<rect [^>]*fill-opacity:0;[^>]*/>");
    private static final Pattern CLIP = Pattern.compile("clip-?\\d+");
    private static final Pattern LONG_NUMBER = Pattern.compile("-?\\d+\\.\\d{3,}(E-?\\d+)?");
    private static final int LONGEST_TITLE = 52;

    private SvgText() {}

    static String of(Plot plot, String id, Drawing drawing) {
        return String.join(
                "\n",
                "<svg xmlns=\"http://www.w3.org/2000/svg\" id=\"" + id
                        + "\" class=\"plot\" role=\"img\" aria-labelledby=\""
                        + id + "-title " + id + "-desc\" viewBox=\"0 0 " + Drawing.WIDTH + " " + drawing.pageHeight()
                        + "\" width=\"" + Drawing.WIDTH + "\" height=\"" + drawing.pageHeight() + "\">",
                "<title id=\"" + id + "-title\">" + escaped(plot.title()) + "</title>",
                "<desc id=\"" + id + "-desc\">" + escaped(plot.description()) + "</desc>",
                "<style>" + style(id) + "</style>",
                shapes(drawing.shapes(), id),
                text(new Label(8, 18, "start", Ink.INK, title(plot)), "600 13px"),
                drawing.labels().stream().map(label -> text(label, "12px")).collect(Collectors.joining("\n")),
                "</svg>");
    }

    private static String title(Plot plot) {
        String title = plot.title();
        return title.codePointCount(0, title.length()) <= LONGEST_TITLE
                ? title
                : title.substring(0, title.offsetByCodePoints(0, LONGEST_TITLE - 1)) + "\u2026";
    }

    private static String style(String id) {
        return "#" + id + "{background:" + Ink.PAPER.variable() + ";" + inks(Ink::inLight)
                + "}@media screen and (prefers-color-scheme:dark){#" + id + "{" + inks(Ink::inDark) + "}}";
    }

    private static String inks(Function<Ink, String> words) {
        return Arrays.stream(Ink.values()).map(words).collect(Collectors.joining(";"));
    }

    private static String shapes(String written, String id) {
        String body =
                written.substring(written.indexOf('>', written.indexOf("<svg")) + 1, written.lastIndexOf("</svg>"));
        String seen = NOTHING.matcher(body).replaceAll("");
        String named = CLIP.matcher(seen).replaceAll(id + "-clip");
        String round = LONG_NUMBER.matcher(named).replaceAll(SvgText::rounded);
        for (Ink ink : Ink.values()) {
            round = round.replace(ink.written(), ink.variable());
        }
        return round.strip();
    }

    private static String rounded(MatchResult number) {
        return String.format(Locale.ROOT, "%.2f", Double.parseDouble(number.group()));
    }

    private static String text(Label label, String font) {
        return String.format(
                Locale.ROOT,
                "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\" style=\"fill:%s;font:%s Charter,'Noto Serif',Georgia,serif;"
                        + "direction:ltr;unicode-bidi:isolate;paint-order:stroke;stroke:%s;stroke-width:3px\">%s</text>",
                label.x(),
                label.y(),
                label.anchor(),
                label.ink().variable(),
                font,
                Ink.PAPER.variable(),
                escaped(label.text()));
    }

    /** {@return text for XML}: what XML has no room for is replaced */
    private static String escaped(String text) {
        return text.codePoints()
                .mapToObj(c -> isXml(c) ? Character.toString(c) : "\uFFFD")
                .collect(Collectors.joining())
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;");
    }

    private static boolean isXml(int c) {
        return (c >= 0x20 && c <= 0xD7FF) || (c >= 0xE000 && c <= 0xFFFD) || c >= 0x10000;
    }
}
