// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration;

import dev.infiltration.field.ClockTime;
import dev.infiltration.field.WaterReading;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.math.BigDecimal;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;

/** Short names for the readings that tests write down. */
public final class Amounts {

    private Amounts() {}

    public static Reading<Length> mm(String digits) {
        return Reading.of(digits, FieldUnit.MILLIMETRE);
    }

    public static Reading<Length> m(String digits) {
        return Reading.of(digits, FieldUnit.METRE);
    }

    public static Reading<Length> in(String digits) {
        return Reading.of(digits, FieldUnit.INCH);
    }

    public static Reading<Length> ft(String digits) {
        return Reading.of(digits, FieldUnit.FOOT);
    }

    public static Reading<Time> s(String digits) {
        return Reading.of(digits, FieldUnit.SECOND);
    }

    public static Reading<Time> min(String digits) {
        return Reading.of(digits, FieldUnit.MINUTE);
    }

    public static Reading<Temperature> celsius(String digits) {
        return Reading.of(digits, FieldUnit.CELSIUS);
    }

    public static Reading<Temperature> fahrenheit(String digits) {
        return Reading.of(digits, FieldUnit.FAHRENHEIT);
    }

    public static Reading<Area> m2(String digits) {
        return Reading.of(digits, FieldUnit.SQUARE_METRE);
    }

    public static Reading<Area> ft2(String digits) {
        return Reading.of(digits, FieldUnit.SQUARE_FOOT);
    }

    public static Reading<Dimensionless> percent(String digits) {
        return Reading.of(digits, FieldUnit.PERCENT);
    }

    public static WaterReading kg(String digits) {
        return WaterReading.weighed(Reading.of(digits, FieldUnit.KILOGRAM));
    }

    public static WaterReading g(String digits) {
        return WaterReading.weighed(Reading.of(digits, FieldUnit.GRAM));
    }

    public static WaterReading lb(String digits) {
        return WaterReading.weighed(Reading.of(digits, FieldUnit.POUND));
    }

    public static WaterReading litres(String digits) {
        return WaterReading.measured(Reading.of(digits, FieldUnit.LITRE));
    }

    public static WaterReading gallons(String digits) {
        return WaterReading.measured(Reading.of(digits, FieldUnit.US_GALLON));
    }

    /** A time on the day of the season's visit: {@code at("09:01:30")}. */
    public static ClockTime at(String time) {
        return ClockTime.parse(Season.DATE + "T" + time);
    }

    /** A date and time. */
    public static ClockTime time(String text) {
        return ClockTime.parse(text);
    }

    /** A reading that is greater by a thousandth of its unit, or less with a negative number of thousandths. */
    public static <Q extends Quantity<Q>> Reading<Q> off(Reading<Q> reading, int thousandths) {
        return Reading.of(reading.value().add(BigDecimal.valueOf(thousandths, 3)), reading.unit());
    }
}
