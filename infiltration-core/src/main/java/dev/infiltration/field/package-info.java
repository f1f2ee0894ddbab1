// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
/**
 * Field records as written, nothing derived.
 *
 * <p>Records hold anything that can be written: missing, zero, negative, contradictory. Null collections become empty, null
 * elements throw with their place; what is wrong with the content is for the rules to say. Canonical constructors are no
 * promise, because records grow: use {@code of} and {@code with…}.
 *
 * <pre>{@code
 * Ring ring = Ring.of("R1").withInsideDiameter(Reading.of("300", FieldUnit.MILLIMETRE));
 * TestRun run = TestRun.of(
 *         ClockTime.parse("2026-06-03T09:12"), WaterReading.weighed(Reading.of("18.02", FieldUnit.KILOGRAM)),
 *         Reading.of("141.7", FieldUnit.SECOND), Pouring.End.DRAINED);
 * LocationTest test = LocationTest.of("T1", "A1", "R1").withRuns(List.of(run));
 * }</pre>
 */
@NullMarked
package dev.infiltration.field;

import org.jspecify.annotations.NullMarked;
