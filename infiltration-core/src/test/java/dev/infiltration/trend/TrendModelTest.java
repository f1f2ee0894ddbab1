// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.trend;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class TrendModelTest {

    @ParameterizedTest
    @EnumSource
    void goesThereAndBack(TrendModel curve) {
        assertEquals(7.3, curve.unscale(curve.scale(7.3)), 1e-14);
        assertEquals(curve == TrendModel.STEADY ? -1 : Double.NaN, curve.unscale(-1));
        assertTrue(curve.toString().contains(" "));
    }
}
