// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Contrast of the pages' inks, by relative luminance as WCAG 2.2 defines it (W3C Recommendation, 2023, "relative luminance" and
 * "contrast ratio"; published): at least 4.5 to 1 for text (success criterion 1.4.3, level AA).
 */
class PageStyleTest {

    private static final double AA = 4.5;

    private static List<Map<String, Integer>> schemes() throws IOException {
        try (InputStream css = PageStyleTest.class.getResourceAsStream("page.css")) {
            String text = new String(Objects.requireNonNull(css).readAllBytes(), StandardCharsets.UTF_8);
            int dark = text.indexOf("prefers-color-scheme: dark");
            return List.of(inks(text.substring(0, dark)), inks(text.substring(dark)));
        }
    }

    private static Map<String, Integer> inks(String css) {
        Map<String, Integer> inks = new LinkedHashMap<>();
        Matcher ink = Pattern.compile("--(\\w+): #([0-9a-f]{6});").matcher(css);
        while (ink.find()) {
            inks.put(ink.group(1), Integer.parseInt(ink.group(2), 16));
        }
        return inks;
    }

    @Test
    void everyInkForTextStandsOutInLightAndInDark() throws IOException {
        for (Map<String, Integer> inks : schemes()) {
            for (String ink : List.of("ink", "faint", "link", "stress")) {
                double contrast = contrast(inks.get(ink), inks.get("paper"));
                assertTrue(contrast >= AA, ink + " " + contrast);
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
        # source                                                                 | one    | other  | ratio
        WCAG 2.2, contrast ratio: black on white is 21 to 1; published           | 000000 | ffffff | 21
        WCAG 2.2, contrast ratio: a colour on itself is 1 to 1; published        | 0a4f66 | 0a4f66 | 1
        relative luminance of pure red 0.2126, (1 + 0.05) / (0.2126 + 0.05); derived | ff0000 | ffffff | 3.99848
        """)
    void contrastIsThatOfTheRecommendation(String source, String one, String other, double ratio) {
        assertEquals(ratio, contrast(Integer.parseInt(one, 16), Integer.parseInt(other, 16)), 1e-4);
    }

    private static double contrast(int one, int other) {
        double lighter = Math.max(luminance(one), luminance(other));
        double darker = Math.min(luminance(one), luminance(other));
        return (lighter + 0.05) / (darker + 0.05);
    }

    private static double luminance(int colour) {
        return 0.2126 * linear(colour >> 16) + 0.7152 * linear(colour >> 8) + 0.0722 * linear(colour);
    }

    private static double linear(int channel) {
        double value = (channel & 0xFF) / 255.0;
        return value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
    }
}
