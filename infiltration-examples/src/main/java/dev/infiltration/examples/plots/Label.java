// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.plots;

/**
 * Words in a drawing.
 *
 * @param x      where, across
 * @param y      where, down, of the line that letters stand on
 * @param anchor {@code start}, {@code middle} or {@code end}: what of the words lies there
 * @param ink    their ink
 * @param text   the words
 */
record Label(double x, double y, String anchor, Ink ink, String text) {

    private static final int LONGEST = 20;
    private static final double LETTER = 6.4;
    static final double HIGH = 12;

    /** {@return words short enough to stand beside a mark} */
    static String shortened(String text) {
        int length = text.codePointCount(0, text.length());
        return length <= LONGEST ? text : text.substring(0, text.offsetByCodePoints(0, LONGEST - 1)) + "\u2026";
    }

    private double width() {
        return LETTER * text.codePointCount(0, text.length());
    }

    /** {@return about where the words begin} */
    double left() {
        return switch (anchor) {
            case "start" -> x;
            case "end" -> x - width();
            default -> x - width() / 2;
        };
    }

    /** {@return about where the words end} */
    double right() {
        return left() + width();
    }

    boolean covers(Label other) {
        return left() < other.right() && other.left() < right() && Math.abs(y - other.y) < HIGH;
    }
}
