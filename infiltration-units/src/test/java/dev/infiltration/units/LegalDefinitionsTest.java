// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Volume;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tech.units.indriya.function.RationalNumber;

/** Every unit against its legal definition, in exact fractions: no tolerance. */
class LegalDefinitionsTest {

    /**
     * How much of the SI unit (m, kg, s, K, m², m³, m/s, 1) each unit is, and what is added to a value first.
     *
     * <p>"file" is units-exact.csv, which cites NIST SP 447, NIST HB 44 appendix C, 24 FR 5348 and 85 FR 62698.
     */
    private static final String DEFINITIONS = """
            # code    | SI unit                           | plus   | source                                     | mark
            m         | 1                                 | 0      | SI Brochure, base unit                     | memory
            cm        | 1 / 100                           | 0      | SI Brochure, prefix centi                  | memory
            mm        | 1 / 1000                          | 0      | SI Brochure, prefix milli                  | memory
            [ft_i]    | 12 * 0.0254                       | 0      | file: foot (international)                 | seen
            [in_i]    | 0.0254                            | 0      | file: inch                                 | seen
            kg        | 1                                 | 0      | SI Brochure, base unit                     | memory
            g         | 1 / 1000                          | 0      | SI Brochure, kilogram                      | memory
            [lb_av]   | 0.45359237                        | 0      | file: pound (avoirdupois)                  | seen
            [oz_av]   | 0.45359237 / 16                   | 0      | file: ounce                                | seen
            s         | 1                                 | 0      | SI Brochure, base unit                     | memory
            min       | 60                                | 0      | SI Brochure, 8th edition, table 6          | published
            h         | 3600                              | 0      | SI Brochure, 8th edition, table 6          | published
            d         | 86400                             | 0      | SI Brochure, 8th edition, table 6          | published
            Cel       | 1                                 | 273.15 | NIST SP 811, B.9, as quoted elsewhere      | secondary
            [degF]    | 1 / 1.8                           | 459.67 | NIST SP 811, B.9, as quoted elsewhere      | secondary
            K         | 1                                 | 0      | SI Brochure, base unit                     | memory
            m2        | 1                                 | 0      | SI Brochure, derived unit                  | memory
            har       | 100 * 100                         | 0      | SI Brochure, 8th edition, table 6          | published
            [sft_i]   | 0.3048 * 0.3048                   | 0      | file: square foot                          | seen
            [acr_us]  | 43560 * 1200 / 3937 * 1200 / 3937 | 0      | file: acre (US survey foot)                | seen
            L         | 1 / 1000                          | 0      | SI Brochure, 8th edition, table 6          | published
            mL        | 1 / 1000 / 1000                   | 0      | SI Brochure, 8th edition, table 6, milli   | published
            [gal_us]  | 231 * 0.0254 * 0.0254 * 0.0254    | 0      | file: US gallon                            | seen
            mm/h      | 0.001 / 3600                      | 0      | its two units                              | derived
            [in_i]/h  | 0.0254 / 3600                     | 0      | file: inch per hour                        | seen
            cm/h      | 0.01 / 3600                       | 0      | its two units                              | derived
            mm/min    | 0.001 / 60                        | 0      | its two units                              | derived
            cm/s      | 0.01                              | 0      | its two units                              | derived
            m/s       | 1                                 | 0      | SI Brochure, derived unit                  | memory
            m/d       | 1 / 86400                         | 0      | its two units                              | derived
            L/(s.har) | 0.001 / 10000                     | 0      | its three units                            | derived
            1         | 1                                 | 0      | SI Brochure, unit one                      | memory
            %         | 1 / 100                           | 0      | SI Brochure, per cent                      | memory
            """;

    /** What the factors of these kinds lead to in place of the SI unit: the litre, the millimetre an hour. */
    private static final Map<Class<?>, RationalNumber> REFERENCES =
            Map.of(Volume.class, fraction("1 / 1000"), Speed.class, fraction("0.001 / 3600"));

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = DEFINITIONS)
    void factorOfTheTableIsTheLegalOne(String code, String definition, BigDecimal plus) {
        FieldUnit<?> unit = FieldUnit.parse(code).orElseThrow();
        Factor factor = unit.factor();
        RationalNumber size = RationalNumber.of(factor.numerator())
                .divide(RationalNumber.of(factor.denominator()))
                .multiply(REFERENCES.getOrDefault(unit.kind(), RationalNumber.ONE));
        assertEquals(fraction(definition), size);
        assertEquals(RationalNumber.of(plus), RationalNumber.of(factor.offset()));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = DEFINITIONS)
    <Q extends Quantity<Q>> void measureUnitIsTheLegalOne(String code, String definition, BigDecimal plus) {
        UnitConverter toSi = toSi(FieldUnit.parse(code).orElseThrow());
        for (String value : new String[] {"0", "1", "-2 / 7", "123456789.123456789"}) {
            RationalNumber expected =
                    fraction(value).add(RationalNumber.of(plus)).multiply(fraction(definition));
            assertEquals(expected, exact(toSi.convert(fraction(value))), value);
        }
    }

    @Test
    void everyUnitHasADefinition() {
        Set<String> defined = DEFINITIONS
                .lines()
                .skip(1)
                .map(line -> line.substring(0, line.indexOf('|')).strip())
                .collect(Collectors.toSet());
        assertEquals(FieldUnit.all().stream().map(FieldUnit::code).collect(Collectors.toSet()), defined);
    }

    /** The published values, to the digits that the file gives; its sources stand in it. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            inch                     | m    | [in_i]
            foot (international)     | m    | [ft_i]
            pound (avoirdupois)      | kg   | [lb_av]
            ounce                    | kg   | [oz_av]
            US gallon                | m^3  | [gal_us]
            acre (US survey foot)    | m^2  | [acr_us]
            square foot              | m^2  | [sft_i]
            inch per hour            | m/s  | [in_i]/h
            """)
    void measureUnitHasThePublishedSize(String name, String si, String code) throws IOException {
        BigDecimal published = published(name, si);
        RationalNumber size = exact(toSi(FieldUnit.parse(code).orElseThrow()).convert(RationalNumber.ONE));
        BigDecimal digits = new BigDecimal(size.getDividend())
                .divide(new BigDecimal(size.getDivisor()), new MathContext(published.precision()));
        assertEquals(0, published.compareTo(digits), () -> published + " and " + digits);
    }

    @Test
    void inchAnHourHasThePublishedSizeInMillimetres() throws IOException {
        Reading<Speed> inch = Reading.of("1", FieldUnit.INCH_PER_HOUR);
        assertTrue(inch.sameAmountAs(Reading.of(published("inch per hour", "mm/h"), FieldUnit.MILLIMETRE_PER_HOUR)));
    }

    /** UCUM has the acre of the survey foot alone; the international one is 4 parts in a million less. */
    @Test
    void acreIsNotTheInternationalOne() throws IOException {
        BigDecimal international = published("acre (international foot)", "m^2");
        assertEquals(
                1, Reading.of("1", FieldUnit.ACRE).compareAmount(Reading.of(international, FieldUnit.SQUARE_METRE)));
        assertEquals(
                4.0e-6,
                Reading.of("1", FieldUnit.ACRE).in(FieldUnit.SQUARE_METRE) / international.doubleValue() - 1,
                1e-10);
    }

    @SuppressWarnings({"unchecked", "rawtypes"}) // the system unit is of the unit's own kind
    private static UnitConverter toSi(FieldUnit<?> unit) {
        Unit any = unit.unit();
        return any.getConverterTo(any.getSystemUnit());
    }

    private static RationalNumber exact(Number number) {
        return number instanceof RationalNumber fraction
                ? fraction
                : RationalNumber.of(new BigDecimal(number.toString()));
    }

    /** {@return numbers with {@code *} and {@code /} between them, from left to right} */
    private static RationalNumber fraction(String product) {
        String[] words = product.split(" ", -1);
        RationalNumber result = RationalNumber.of(new BigDecimal(words[0]));
        for (int i = 1; i < words.length; i += 2) {
            RationalNumber next = RationalNumber.of(new BigDecimal(words[i + 1]));
            result = words[i].equals("*") ? result.multiply(next) : result.divide(next);
        }
        return result;
    }

    private static BigDecimal published(String name, String si) throws IOException {
        String start = name + "," + si + ",";
        try (InputStream file = LegalDefinitionsTest.class.getResourceAsStream("units-exact.csv")) {
            return new String(Objects.requireNonNull(file).readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> line.startsWith(start))
                    .map(line -> new BigDecimal(line.substring(start.length()).split(",", 2)[0]))
                    .findFirst()
                    .orElseThrow(() -> new AssertionError(start));
        }
    }
}
