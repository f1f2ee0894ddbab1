// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import static dev.infiltration.Amounts.at;
import static dev.infiltration.Amounts.celsius;
import static dev.infiltration.Amounts.fahrenheit;
import static dev.infiltration.Amounts.in;
import static dev.infiltration.Amounts.kg;
import static dev.infiltration.Amounts.lb;
import static dev.infiltration.Amounts.litres;
import static dev.infiltration.Amounts.mm;
import static dev.infiltration.Amounts.s;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Pouring.End;
import dev.infiltration.field.Ring;
import dev.infiltration.field.TestRun;
import dev.infiltration.field.WaterReading;
import dev.infiltration.rate.RateConstant.Source;
import dev.infiltration.units.Reading;
import dev.infiltration.units.UnitSystem;
import java.util.Optional;
import javax.measure.quantity.Temperature;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The equation with another density than the method's. */
class RateConstantTest {

    private static final Ring METRIC = Ring.of("R1").withInsideDiameter(mm("300"));
    private static final Ring INCHES = Ring.of("R2").withInsideDiameter(in("12.00"));
    private static final LocationTest TEST = LocationTest.of("V1-A1", "A1", "R1");
    private static final TestRun RUN = run(kg("18.00"));

    private static TestRun run(WaterReading water) {
        return TestRun.of(at("07:10"), water, s("60.0"), End.DRAINED);
    }

    private static double rate(RateEquation equation, Ring ring, TestRun run) {
        return equation.rate(ring, run).figure().orElseThrow().millimetresPerHour();
    }

    /** K = 3600·4/(π·ρ), worked with 30 digits. */
    @ParameterizedTest(name = "{0}, {1} kg/m3")
    @CsvSource(delimiter = '|', textBlock = """
            # source                                                     | kg/m3    | (mm3 s)/(kg h)       | (in3 s)/(lb h)
            derived, exact                                               | 1000     | 4583662361.046585670 | 126875.337377514146
            density: CIPM table, 20 degrees, Tanaka et al. 2001 (seen)   | 998.2067 | 4591897009.954537142 | 127103.271674608221
            density: CIPM table, 10 degrees (seen)                       | 999.7027 | 4585025489.124502385 | 126913.068632818683
            """)
    void constantIsThatOfTheGeometryOfTheRing(String source, double density, double si, double inchPound) {
        RateEquation equation = RateEquation.asPublished().withWaterDensity(density);
        assertEquals(si, equation.constant(UnitSystem.SI).value(), 1e-14 * si);
        assertEquals(si, equation.constant(UnitSystem.NEITHER).value(), 1e-14 * si);
        assertEquals(inchPound, equation.constant(UnitSystem.INCH_POUND).value(), 1e-14 * inchPound);
        assertEquals(density, equation.constant(UnitSystem.SI).density());
    }

    /** 18.00 kg of 1000 kg/m3 through 300 mm in 60.0 s: 4·0.018/(π·0.3²·60) m/s = 15 278.874 536 821 95 mm/h (derived). */
    @Test
    void fromGeometryIsTheDepthOfACylinder() {
        assertEquals(15278.87453682195, rate(RateEquation.fromGeometry(), METRIC, RUN), 1e-9);
        assertEquals(RateEquation.fromGeometry().constant(UnitSystem.SI).source(), Source.DENSITY);
    }

    /** The method's constant reads 0.18 % low at 20 °C and 0.71 % at 38 °C (derived from the CIPM table, seen). */
    @ParameterizedTest(name = "{0} degrees")
    @CsvSource({"20, 1.0018", "38, 1.0071", "4, 1.0000"})
    void warmWaterRaisesTheRateByWhatItIsLighter(String celsius, double ratio) {
        RateEquation equation = RateEquation.asPublished().withWaterAt(celsius(celsius));
        double published = rate(RateEquation.asPublished(), METRIC, RUN);
        assertEquals(ratio, rate(equation, METRIC, RUN) / published, 6e-5);
    }

    @Test
    void bothSystemsGiveOneRateWhereTheConstantIsThatOfTheGeometry() {
        RateEquation equation = RateEquation.asPublished().withWaterAt(Water.at(20));
        double inchPound = rate(equation, INCHES, run(lb("40.00")));
        double si = rate(equation, Ring.of("R").withInsideDiameter(mm("304.8")), run(kg("18.1436948")));
        assertEquals(si, inchPound, 1e-12 * si);
        assertEquals(
                UnitSystem.INCH_POUND,
                equation.constant(INCHES, run(lb("40.00"))).system());
        assertEquals(UnitSystem.SI, equation.constant(INCHES, RUN).system());
        assertEquals(
                UnitSystem.SI,
                equation.constant(METRIC, TestRun.of(null, null, null, null)).system());
    }

    /** A volume is what it is at any density; the published constant counts a litre for a kilogram. */
    @Test
    void volumeOfWaterGivesTheSameRateAtAnyDensity() {
        double geometry = rate(RateEquation.fromGeometry(), METRIC, run(litres("18.00")));
        RateEquation warm = RateEquation.asPublished().withWaterDensity(992);
        assertEquals(geometry, rate(warm, METRIC, run(litres("18.00"))), 1e-12 * geometry);
        double published = rate(RateEquation.asPublished(), METRIC, RUN);
        assertEquals(published, rate(RateEquation.asPublished(), METRIC, run(litres("18.00"))));
    }

    /** 18.00 kg less 50 mm over π/4·0.3² m² at 990 kg/m³: 14.501 087 kg, at K of 990 kg/m³ (derived). */
    @Test
    void waterLeftStandingWeighsByTheDensity() {
        TestRun stopped = RUN.withEnd(End.STOPPED).withDepthAtStop(mm("50"));
        RateEquation equation = RateEquation.asPublished().withWaterDensity(990);
        double area = Math.PI / 4 * 0.09;
        assertEquals(18 - 0.05 * area * 990, equation.infiltrated(METRIC, stopped), 1e-12);
        assertEquals((18 / 990.0 - 0.05 * area) / area / 60 * 3.6e6, rate(equation, METRIC, stopped), 1e-8);
        assertEquals(18.0, equation.infiltrated(METRIC, RUN));
    }

    @Test
    void recordedTemperatureGivesTheDensity() {
        RateEquation equation = RateEquation.forWaterOf(TEST.withWaterTemperature(fahrenheit("68")))
                .orElseThrow();
        assertEquals(998.2067, equation.constant(UnitSystem.SI).density(), 1e-3);
        assertEquals(Source.WATER_TEMPERATURE, equation.constant(UnitSystem.SI).source());
    }

    @ParameterizedTest
    @ValueSource(strings = {"-0.01", "60.01", "1e999", "-1e999999999"})
    void temperatureWithoutADensityGivesNoEquation(String celsius) {
        assertEquals(Optional.empty(), RateEquation.forWaterOf(TEST.withWaterTemperature(celsius(celsius))));
        Reading<Temperature> temperature = celsius(celsius);
        assertThrows(
                IllegalArgumentException.class, () -> RateEquation.asPublished().withWaterAt(temperature));
    }

    @Test
    void noRecordedTemperatureGivesNoEquation() {
        assertEquals(Optional.empty(), RateEquation.forWaterOf(TEST));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.998, 62.4, 899, 1101, Double.NaN, Double.POSITIVE_INFINITY})
    void densityInAnotherUnitIsRefused(double density) {
        RateEquation equation = RateEquation.asPublished();
        Throwable refusal = assertThrows(IllegalArgumentException.class, () -> equation.withWaterDensity(density));
        assertEquals("kilogramsPerCubicMetre: allowed 900 to 1100 kg/m³, found " + density, refusal.getMessage());
    }

    @Test
    void constantNamesItselfItsUnitAndTheDensity() {
        RateEquation published = RateEquation.asPublished();
        assertEquals(
                "K = 4583666000 (mm³·s)/(kg·h), as published, water about 1000 kg/m³",
                published.constant(METRIC, RUN).toString());
        assertEquals(
                "K = 126870 (in³·s)/(lb·h), as published, water about 1000 kg/m³",
                published.constant(INCHES, run(lb("40.00"))).toString());
        RateEquation warm = published.withWaterAt(Water.at(20));
        assertEquals(
                "K = 4591896800 (mm³·s)/(kg·h), from geometry, water of 998.21 kg/m³",
                warm.constant(UnitSystem.SI).toString());
        assertEquals("K as published, water about 1000 kg/m³", published.toString());
        assertEquals("K = 3600·4/(π·ρ), water of 998.21 kg/m³", warm.toString());
    }

    @Property
    void rateGoesWithTheDensityInversely(@ForAll @DoubleRange(min = 900, max = 1100) double density) {
        double nominal = rate(RateEquation.fromGeometry(), METRIC, RUN);
        double found = rate(RateEquation.asPublished().withWaterDensity(density), METRIC, RUN);
        assertEquals(nominal * 1000 / density, found, 1e-12 * found);
    }
}
