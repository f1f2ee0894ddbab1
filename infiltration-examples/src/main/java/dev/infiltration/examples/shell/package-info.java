// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
/**
 * What the shell offers beside the library: short names for what is typed most, and a chart of a surface over the years.
 *
 * <p>What is named and not there throws with what there is; a file that cannot be read or written throws.
 *
 * <pre>{@code
 * Review season = demo();
 * compare(rates(season, "V8"), rates(season, "V5"))
 * SurfaceHistory history = history(season, "HQ-A");
 * history.beforeAfter().get(0).comparison()
 * save("trend.svg", chart(history));
 * }</pre>
 */
@NullMarked
package dev.infiltration.examples.shell;

import org.jspecify.annotations.NullMarked;
