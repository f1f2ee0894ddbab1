// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.plots;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Contrast by relative luminance as WCAG 2.2 defines it (W3C Recommendation, 2023; published): at least 4.5 to 1 for words
 * (success criterion 1.4.3) and 3 to 1 for shapes that tell something (1.4.11), level AA.
 */
class InkTest {

    private static final double WORDS = 4.5;
    private static final double SHAPES = 3;

    @ParameterizedTest
    @EnumSource(names = {"INK", "FAINT", "THREE"})
    void wordsStandOut(Ink ink) {
        assertTrue(contrast(ink.inLight(), Ink.PAPER.inLight()) >= WORDS);
        assertTrue(contrast(ink.inDark(), Ink.PAPER.inDark()) >= WORDS);
    }

    @ParameterizedTest
    @EnumSource(names = {"ONE", "TWO"})
    void marksStandOutFromPaperAndBand(Ink ink) {
        assertTrue(contrast(ink.inLight(), Ink.PAPER.inLight()) >= SHAPES);
        assertTrue(contrast(ink.inDark(), Ink.PAPER.inDark()) >= SHAPES);
        assertTrue(contrast(ink.inLight(), Ink.BAND.inLight()) >= SHAPES);
        assertTrue(contrast(ink.inDark(), Ink.BAND.inDark()) >= SHAPES);
    }

    private static double contrast(String one, String other) {
        double lighter = Math.max(luminance(one), luminance(other));
        double darker = Math.min(luminance(one), luminance(other));
        return (lighter + 0.05) / (darker + 0.05);
    }

    private static double luminance(String declared) {
        int colour = Integer.parseInt(declared.substring(declared.indexOf('#') + 1), 16);
        return 0.2126 * linear(colour >> 16) + 0.7152 * linear(colour >> 8) + 0.0722 * linear(colour);
    }

    private static double linear(int channel) {
        double value = (channel & 0xFF) / 255.0;
        return value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
    }
}
