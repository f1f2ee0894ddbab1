// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Proxy;
import java.math.BigDecimal;
import java.util.List;
import javax.measure.MetricPrefix;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Volume;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tech.units.indriya.function.RationalNumber;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/** The edge to javax.measure. The factors of its units are checked in LegalDefinitionsTest. */
class MeasureUnitsTest {

    static List<FieldUnit<?>> units() {
        return FieldUnit.all();
    }

    @ParameterizedTest
    @MethodSource("units")
    <Q extends Quantity<Q>> void readingComesBackAsTheSameAmountInItsUnit(FieldUnit<Q> unit) {
        for (String digits : List.of("40", "40.50", "-0.125", "0", "12345.67890123456789012345678901234")) {
            Reading<Q> reading = Reading.of(digits, unit);
            Reading<Q> back = Reading.of(reading.toQuantity(), unit.kind());
            assertSame(unit, back.unit());
            assertTrue(reading.sameAmountAs(back), () -> reading + " came back as " + back);
        }
    }

    @Test
    void unitsOfTheReferenceLibraryAreItsOwn() {
        assertEquals(Units.METRE, FieldUnit.METRE.unit());
        assertEquals(Units.GRAM, FieldUnit.GRAM.unit());
        assertEquals(Units.HOUR, FieldUnit.HOUR.unit());
        assertEquals(Units.LITRE, FieldUnit.LITRE.unit());
        assertEquals(Units.METRE_PER_SECOND, FieldUnit.METRE_PER_SECOND.unit());
        assertEquals(Units.PERCENT, FieldUnit.PERCENT.unit());
    }

    @Test
    void unitOfTheHostsOwnMakingIsRecognised() {
        Unit<Length> hostsInch = FieldUnit.FOOT.unit().divide(12);
        Unit<Speed> hostsRate =
                Units.METRE.prefix(MetricPrefix.MILLI).divide(Units.HOUR).asType(Speed.class);
        assertReads("11.95 in", Quantities.getQuantity(11.95, hostsInch), Length.class);
        assertReads("2540 mm/h", Quantities.getQuantity(2540, hostsRate), Speed.class);
        assertReads("0.02 m/s", Quantities.getQuantity(0.02, Units.METRE_PER_SECOND), Speed.class);
        assertReads("20.5 °C", Quantities.getQuantity(20.5, Units.CELSIUS), Temperature.class);
        assertReads("1.5 %", Quantities.getQuantity(1.5, Units.PERCENT), Dimensionless.class);
    }

    @Test
    void unitOutsideTheTableIsConvertedToTheFirstOfItsKind() {
        assertReads("1200 m", Quantities.getQuantity(1.2, MetricPrefix.KILO(Units.METRE)), Length.class);
        assertReads("18000 kg", Quantities.getQuantity(18, MetricPrefix.MEGA(Units.GRAM)), Mass.class);
        assertReads("20 L", Quantities.getQuantity(0.02, Units.CUBIC_METRE), Volume.class);
    }

    @Test
    void fractionIsReadToThirtyFourDigits() {
        RationalNumber third = RationalNumber.of(1, 3);
        assertEquals(
                new BigDecimal("0.3333333333333333333333333333333333"),
                Reading.of(metres(third), Length.class).value());
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void quantityThatIsNotFiniteIsRefusedByName(double value) {
        Quantity<Length> quantity = metres(value);
        IllegalArgumentException refusal =
                assertThrows(IllegalArgumentException.class, () -> Reading.of(quantity, Length.class));
        assertEquals("quantity: expected a finite number, got " + value, refusal.getMessage());
    }

    @Test
    void kindOutsideTheTableIsRefusedByName() {
        Quantity<Pressure> pressure = Quantities.getQuantity(1, Units.PASCAL);
        IllegalArgumentException refusal =
                assertThrows(IllegalArgumentException.class, () -> Reading.of(pressure, Pressure.class));
        assertEquals("kind: no unit of the table measures Pressure", refusal.getMessage());
    }

    @Test
    void rateIsHandedOutInMillimetresAnHour() {
        Quantity<Speed> quantity = new InfiltrationRate(2540).toQuantity();
        assertEquals(2540, quantity.getValue().intValue());
        assertEquals(
                0.0254 / 36,
                quantity.to(Units.METRE_PER_SECOND).getValue().doubleValue(),
                1e-19,
                "2540 mm in 3600 s; first principles, derived");
    }

    private static <Q extends Quantity<Q>> void assertReads(String expected, Quantity<Q> quantity, Class<Q> kind) {
        assertEquals(expected, Reading.of(quantity, kind).toString());
    }

    /** A host's own implementation, which checks nothing. */
    @SuppressWarnings("unchecked") // the proxy has the one interface
    private static Quantity<Length> metres(Number value) {
        return (Quantity<Length>) Proxy.newProxyInstance(
                MeasureUnitsTest.class.getClassLoader(),
                new Class<?>[] {Quantity.class},
                (proxy, method, arguments) -> switch (method.getName()) {
                    case "getValue" -> value;
                    case "getUnit" -> Units.METRE;
                    default -> throw new UnsupportedOperationException(method.getName());
                });
    }
}
