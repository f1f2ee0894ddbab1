// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
/**
 * Before and during a visit: where the ring goes, where the locations lie, what the surface must carry, when it is dry.
 *
 * <p>What the caller hands in here is a plan, not a field record: a size or share out of its range throws with the
 * argument's name. A result that the data do not give is absent. Nothing looks at a clock.
 *
 * <pre>{@code
 * JointPattern pattern = JointPattern.of(
 *         Laying.RUNNING_BOND, Reading.of("200", FieldUnit.MILLIMETRE),
 *         Reading.of("100", FieldUnit.MILLIMETRE), Reading.of("5", FieldUnit.MILLIMETRE));
 * JointsInRing joints = JointsInRing.of(pattern, Reading.of("300", FieldUnit.MILLIMETRE)).orElseThrow();
 * double off = joints.worst().mismatch();
 * }</pre>
 */
@NullMarked
package dev.infiltration.plan;

import org.jspecify.annotations.NullMarked;
