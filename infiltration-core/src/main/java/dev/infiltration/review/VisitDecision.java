// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.review;

import dev.infiltration.check.VisitAt;
import dev.infiltration.summary.Decision;

/**
 * A decision on a surface as it was found at a visit.
 *
 * @param visit    the visit
 * @param decision the decision
 */
public record VisitDecision(VisitAt visit, Decision decision) {}
