// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
/**
 * Plots of the core's reports as SVG, drawn with XChart and VectorGraphics2D.
 *
 * <p>Shapes come from the chart library, words are set as text of their own: they can be read, searched and enlarged, and the
 * bytes do not depend on the fonts of a machine. Nothing is thrown at figures: what cannot be drawn is left out.
 *
 * <pre>{@code
 * Plots plots = new SvgPlots();
 * String page = SeasonPage.of(review).withPlots(plots).html();
 * for (Plot plot : SeasonPage.of(review).plots()) {
 *     System.out.println(plots.svg(plot, "plot"));
 * }
 * }</pre>
 */
@NullMarked
package dev.infiltration.examples.plots;

import org.jspecify.annotations.NullMarked;
