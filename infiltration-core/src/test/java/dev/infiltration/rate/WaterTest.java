// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.hummeling.if97.IF97;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WaterTest {

    /** Half a unit of the last digit that the releases print. */
    private static final double LAST_DIGIT = 0.5000001e-6;

    /** Half a unit of the last digit of the metrologists' table. */
    private static final double LAST_OF_TABLE = 0.50001e-4;

    @ParameterizedTest(name = "{0}: {1} K, {2} kg/m3")
    @CsvFileSource(resources = "iapws-r12-08.csv", numLinesToSkip = 1)
    void viscosityAgreesWithEveryCheckValueOfItsRelease(
            String table, double kelvin, double density, double microPascalSeconds) {
        assertEquals(microPascalSeconds, Iapws.viscosity(kelvin, density) * 1e6, LAST_DIGIT);
    }

    @ParameterizedTest(name = "IAPWS SR6-08 Table 8: {0} K")
    @CsvFileSource(resources = "iapws-sr6-08.csv", numLinesToSkip = 1)
    void densityAgreesWithEveryCheckValueOfItsRelease(double kelvin, double density, double microPascalSeconds) {
        assertEquals(density, Iapws.density(kelvin), LAST_DIGIT);
        assertEquals(microPascalSeconds, viscosityOfSr608(kelvin), 5.1e-6);
        assertEquals(microPascalSeconds, Iapws.viscosity(kelvin, density) * 1e6, 2e-3 * microPascalSeconds);
    }

    /** SR6-08's own short formula of viscosity in microPa s, coefficients as printed (seen): a second one for this library's. */
    private static double viscosityOfSr608(double kelvin) {
        double reduced = kelvin / 300;
        return 280.68 * Math.pow(reduced, -1.9)
                + 511.45 * Math.pow(reduced, -7.7)
                + 61.131 * Math.pow(reduced, -19.6)
                + 0.45903 * Math.pow(reduced, -40);
    }

    @ParameterizedTest(name = "IAPWS SR6-08 viscosity: {0} degrees")
    @ValueSource(doubles = {0, 10, 20, 30, 40, 50, 60})
    void viscosityAgreesWithTheShortFormula(double celsius) {
        double shorter = viscosityOfSr608(celsius + 273.15) * 1e-6;
        assertEquals(shorter, Water.at(celsius).viscosity(), 1.5e-3 * shorter);
    }

    @ParameterizedTest(name = "Tanaka et al. 2001 and ITTC 2011: {0} degrees")
    @CsvFileSource(resources = "water-0-40C.csv", numLinesToSkip = 1)
    void densityAgreesWithThePublishedTables(double celsius, double tanaka, Double ittc) {
        double density = Water.at(celsius).density();
        assertEquals(tanaka, density, LAST_OF_TABLE, "CIPM table, Tanaka et al. 2001 (seen)");
        assertEquals(ittc == null ? density : ittc, density, 1.3e-3, "ITTC 7.5-02-01-03 (seen)");
    }

    @ParameterizedTest(name = "Korson et al. 1969: {0} degrees")
    @CsvFileSource(resources = "water-0-40C.csv", numLinesToSkip = 1)
    void viscosityAgreesWithThePublishedTable(double celsius, double tanaka, Double ittc, Double milliPascalSeconds) {
        double viscosity = Water.at(celsius).viscosity() * 1e3;
        assertEquals(milliPascalSeconds == null ? viscosity : milliPascalSeconds, viscosity, 1e-3 * viscosity);
    }

    /** Beyond 40 degrees, where the metrologists' table ends: the formula of Kell (1975), coefficients as printed (seen). */
    @ParameterizedTest(name = "Kell 1975, J. Chem. Eng. Data 20, 97: {0} degrees")
    @ValueSource(doubles = {0, 20, 40, 45, 50, 55, 60})
    void densityAgreesWithAnotherFormulaOverTheWholeRange(double celsius) {
        double[] kell = {
            999.83952, 16.945176, -7.9870401e-3, -46.170461e-6, 105.56302e-9, -280.54253e-12,
        };
        double sum = 0;
        for (int i = kell.length - 1; i >= 0; i--) {
            sum = sum * celsius + kell[i];
        }
        assertEquals(sum / (1 + 16.879850e-3 * celsius), Water.at(celsius).density(), 4e-3);
    }

    /** IAPWS-IF97 is fitted to the scientific formulation within 0.003 % (memory); it drifts from it above 30 degrees. */
    @ParameterizedTest(name = "{0}: {1} degrees")
    @CsvSource(delimiter = '|', textBlock = """
            # com.hummeling:if97 1.0.5 (IAPWS-IF97; R12-08 at its density), asked in the test: this library less that one
            # source                  | degrees | kg/m3    | viscosity, relative
            if97, general library     |  0      | -0.0015  |   3.6e-6
            if97, general library     |  5      | -0.0001  |   0.3e-6
            if97, general library     | 10      |  0.0012  |  -1.7e-6
            if97, general library     | 15      |  0.0015  |  -1.5e-6
            if97, general library     | 20      |  0.0007  |  -0.4e-6
            if97, general library     | 25      | -0.0010  |   0.4e-6
            if97, general library     | 30      | -0.0032  |   0.2e-6
            if97, general library     | 35      | -0.0059  |  -1.2e-6
            if97, general library     | 40      | -0.0090  |  -4.0e-6
            if97, general library     | 45      | -0.0114  |  -7.4e-6
            if97, general library     | 50      | -0.0133  | -11.2e-6
            if97, general library     | 55      | -0.0146  | -14.8e-6
            if97, general library     | 60      | -0.0154  | -18.1e-6
            """)
    void agreesWithAnIndependentLibrary(String source, double celsius, double denser, double thicker) {
        IF97 reference = new IF97();
        double kelvin = celsius + 273.15;
        double density = reference.densityPT(0.101325, kelvin);
        Water water = Water.at(celsius);
        assertEquals(density, water.density(), 3e-5 * density);
        assertEquals(denser, water.density() - density, 0.6e-4);
        assertEquals(thicker, water.viscosity() / reference.dynamicViscosityPT(0.101325, kelvin) - 1, 1e-7);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.001, 60.001, -40, 1e9, Double.NaN, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY})
    void outsideItsRangeItIsRefused(double celsius) {
        Throwable refusal = assertThrows(IllegalArgumentException.class, () -> Water.at(celsius));
        assertEquals("celsius: allowed 0 to 60 °C, found " + celsius, refusal.getMessage());
        assertEquals(Optional.empty(), Water.within(celsius));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 3.98, 60})
    void withinItsRangeItIsThere(double celsius) {
        assertEquals(Optional.of(Water.at(celsius)), Water.within(celsius));
    }

    @Test
    void takesATemperatureAsItWasRead() {
        assertEquals(Water.at(20), Water.at(Reading.of("68.0", FieldUnit.FAHRENHEIT)));
    }

    /** The formula of the metrologists and SR6-08 meet at 40 °C; apart they differ by 0.0006 kg/m³ (derived). */
    @Test
    void nothingJumpsWhereOneFormulaOfDensityEnds() {
        double above = Water.at(Math.nextUp(40.0)).density();
        assertEquals(Water.at(40).density(), above, 1e-10);
        assertEquals(0.00055, Iapws.density(313.15) - above, 5e-6);
        assertEquals(0.000277, Iapws.density(323.15) - Water.at(50).density(), 2e-6);
        assertEquals(Iapws.density(333.15), Water.at(60).density());
    }

    @Property
    void warmerWaterIsThinner(@ForAll @DoubleRange(max = 59) double celsius) {
        assertTrue(Water.at(celsius + 1).viscosity() < Water.at(celsius).viscosity());
    }

    @Property
    void waterIsHeaviestAtFourDegrees(@ForAll @DoubleRange(max = 60) double celsius) {
        assertTrue(Water.at(celsius).density() <= Water.at(3.98).density() + 1e-7);
    }
}
