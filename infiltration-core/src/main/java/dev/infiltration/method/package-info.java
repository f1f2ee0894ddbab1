// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
/**
 * Requirements of test methods as plain data: limits in both unit systems, each with its source.
 *
 * <p>A method that contradicts itself is refused with all its faults named. Latest licensed edition and the engineer of
 * record always govern; values marked "memory" were not read while they were entered.
 *
 * <pre>{@code
 * TestMethod method = Methods.unitPavement();
 * method.limit(Limit.PREWET_MASS).holds(Reading.of("8.1", FieldUnit.POUND));      // true
 * method.limit(Limit.PREWET_MASS).in(UnitSystem.INCH_POUND);                      // 7.9 to 8.1 lb
 * method.locationCount().of(Reading.of("2501", FieldUnit.SQUARE_METRE));  // OptionalLong[4]
 * TestMethod three = method.withId("three-a-day").withRunsPerDay(3);
 * }</pre>
 */
@NullMarked
package dev.infiltration.method;

import org.jspecify.annotations.NullMarked;
