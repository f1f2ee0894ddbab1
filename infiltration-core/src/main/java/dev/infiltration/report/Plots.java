// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

/**
 * Draws plots as SVG.
 *
 * <p>The core draws nothing itself: whoever makes a page hands it a renderer, or {@link #none()}, and then each plot stands there
 * as a table alone.
 */
@FunctionalInterface
public interface Plots {

    /**
     * {@return an {@code svg} element that can stand in an HTML page, text as text, the same for the same plot; empty for none}
     *
     * @param plot what to draw
     * @param id   the element's id, letters, digits and hyphens; every id in the drawing begins with it
     */
    String svg(Plot plot, String id);

    /** {@return a renderer that draws nothing} */
    static Plots none() {
        return (plot, id) -> "";
    }
}
