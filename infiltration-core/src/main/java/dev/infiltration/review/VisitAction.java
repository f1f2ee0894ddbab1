// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.review;

import dev.infiltration.check.VisitAt;
import dev.infiltration.summary.ActionTable;

/**
 * What the user's own table of actions asks for after a visit.
 *
 * @param visit  the visit
 * @param choice the action, by when, and the decisions it rests on
 */
public record VisitAction(VisitAt visit, ActionTable.Choice choice) {}
