// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import javax.measure.IncommensurableException;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import systems.uom.ucum.format.UCUMFormat;

/**
 * Every code and factor against a general-purpose implementation of UCUM (systems-ucum), which has its own definitions.
 *
 * <p>It changes Indriya's global state once it is loaded: it runs in a JVM of its own. It reads every code of the table;
 * one that it came to read no more would have to be named here and checked by LegalDefinitionsTest alone.
 */
class UcumOracleTest {

    private static final double[] VALUES = {-40, 0, 1, 8.1, 451, 126_870};

    static List<FieldUnit<?>> units() {
        return FieldUnit.all();
    }

    @ParameterizedTest
    @MethodSource("units")
    <Q extends Quantity<Q>> void codeMeansTheSameInUcum(FieldUnit<Q> unit) throws IncommensurableException {
        for (FieldUnit<Q> target : FieldUnit.allOf(unit.kind())) {
            UnitConverter ucum = ucum(unit.code()).getConverterToAny(ucum(target.code()));
            for (double value : VALUES) {
                double expected = ucum.convert(value);
                assertEquals(expected, unit.convert(value, target), tolerance(expected, target), target.code());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("units")
    <Q extends Quantity<Q>> void measureUnitIsThatOfUcum(FieldUnit<Q> unit) throws IncommensurableException {
        UnitConverter same = ucum(unit.code()).getConverterToAny(unit.unit());
        assertEquals(0, same.convert(0.0), 1e-13);
        assertEquals(1, same.convert(1.0), 1e-13);
    }

    /** What the oracle can tell: codes are case-sensitive, and the trade's spellings are none or mean something else. */
    @ParameterizedTest
    @CsvSource({"lb", "LB", "inches", "sq ft", "acre", "[IN_I]", "degF"})
    void spellingOfTheTradeIsNoCode(String spelling) {
        assertTrue(FieldUnit.all().stream().noneMatch(unit -> unit.code().equals(spelling)));
        assertTrue(isRefused(spelling), spelling);
    }

    @Test
    void litresHaveTheirTwoCodes() throws IncommensurableException {
        assertEquals(1, ucum("l").getConverterToAny(ucum("L")).convert(1.0));
        assertEquals(FieldUnit.LITRE, FieldUnit.parse("l").orElseThrow());
        assertEquals(1, ucum("ml").getConverterToAny(ucum("mL")).convert(1.0));
        assertEquals(FieldUnit.MILLILITRE, FieldUnit.parse("ml").orElseThrow());
    }

    /** A few roundings of a double in the oracle, those of the offset among them. */
    private static double tolerance(double expected, FieldUnit<?> target) {
        return 4
                * Math.ulp(Math.max(Math.abs(expected), target.factor().offset().doubleValue()));
    }

    private static Unit<?> ucum(String code) {
        try {
            return UCUMFormat.getInstance(UCUMFormat.Variant.CASE_SENSITIVE).parse(code);
        } catch (Throwable failure) { // its parser throws errors too
            throw new AssertionError("no UCUM code: " + code, failure);
        }
    }

    private static boolean isRefused(String code) {
        try {
            ucum(code);
            return false;
        } catch (AssertionError refused) {
            return true;
        }
    }
}
