// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
/**
 * What was not followed, not recorded, or is worth knowing.
 *
 * <p>A checker never throws at a record: it answers with findings, each with a stable rule id, a place and what can still be
 * done. A rule whose inputs are absent says nothing unless it speaks of the absence. A programmer's mistake (null, an unknown
 * rule) throws with the argument's name.
 *
 * <pre>{@code
 * CheckedBook checked = Checker.withDefaults().check(book);
 * for (Finding finding : checked.findings()) {
 *     System.out.println(finding.effect() + " " + finding);
 * }
 * }</pre>
 */
@NullMarked
package dev.infiltration.check;

import org.jspecify.annotations.NullMarked;
