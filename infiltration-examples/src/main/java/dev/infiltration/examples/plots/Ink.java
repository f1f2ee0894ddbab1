// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.plots;

import java.awt.Color;
import java.util.Locale;

/** The inks of a drawing, told apart by people who see colours differently, in light and in dark. */
enum Ink {
    PAPER("plot-paper", 0xFDFCF8, 0x15181B),
    INK("plot-ink", 0x1C1F22, 0xE8E5DD),
    FAINT("plot-faint", 0x55595E, 0xADABA4),
    RULE("plot-rule", 0xD8D5CC, 0x3A3F44),
    ONE("plot-one", 0x0072B2, 0x66B8EC),
    TWO("plot-two", 0xB84A00, 0xF0A050),
    THREE("plot-three", 0x00735A, 0x45C9A5),
    BAND("plot-band", 0xCFE3F0, 0x1F3B4D);

    private final String name;
    private final int light;
    private final int dark;

    Ink(String name, int light, int dark) {
        this.name = name;
        this.light = light;
        this.dark = dark;
    }

    Color colour() {
        return new Color(light);
    }

    /** {@return how the chart library writes it} */
    String written() {
        Color colour = colour();
        return "rgb(" + colour.getRed() + "," + colour.getGreen() + "," + colour.getBlue() + ")";
    }

    /** {@return how a page may set it otherwise} */
    String variable() {
        return "var(--" + name + "," + hex(light) + ")";
    }

    String inLight() {
        return "--" + name + ":" + hex(light);
    }

    String inDark() {
        return "--" + name + ":" + hex(dark);
    }

    private static String hex(int colour) {
        return String.format(Locale.ROOT, "#%06x", colour);
    }
}
