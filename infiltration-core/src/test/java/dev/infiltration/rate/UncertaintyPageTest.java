// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.InfiltrationRate;
import dev.infiltration.units.Reading;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The numbers of docs/uncertainty.md are those of the code; {@code -Ddocs.write=true} writes them anew. */
class UncertaintyPageTest {

    private static final Path PAGE = Path.of("../docs/uncertainty.md");
    private static final double[] RATES = {36, 254, 2540, 15_279, 36_000, 68_000};
    private static final double[] MASSES = {3.60, 18.00};

    @Test
    void exampleIsThatOfTheCode() throws IOException {
        assertBlock("example", example());
    }

    @Test
    void instrumentsAreThoseOfTheCode() throws IOException {
        assertBlock(
                "instruments",
                rows(
                        "| mm/h | kg | s | mass % | diameter % | watch % | expanded, 95 %, % |\n|---|---|---|---|---|---|---|\n",
                        UncertaintyPageTest::instruments));
    }

    @Test
    void trialsAreThoseOfTheCode() throws IOException {
        String head = """
                | mm/h | kg | s | u linear % | u trials % | mean/rate | 95 % linear | 95 % trials |
                |---|---|---|---|---|---|---|---|
                """;
        assertBlock("trials", rows(head, UncertaintyPageTest::trials));
    }

    @Test
    void waterIsThatOfTheCode() throws IOException {
        String head = "| °C | kg/m³ | mPa·s | viscosity ratio to 20 °C |\n|---|---|---|---|\n";
        assertBlock(
                "water",
                DoubleStream.of(0, 5, 10, 15, 20, 25, 30, 38, 50, 60)
                        .mapToObj(UncertaintyPageTest::water)
                        .collect(Collectors.joining("", head, "")));
    }

    private static void assertBlock(String name, String block) throws IOException {
        String page = Files.readString(PAGE);
        String begin = "<!-- " + name + ": begin -->\n";
        int from = page.indexOf(begin) + begin.length();
        int to = page.indexOf("<!-- " + name + ": end -->");
        if (Boolean.getBoolean("docs.write")) {
            Files.writeString(PAGE, page.substring(0, from) + block + page.substring(to));
        } else {
            assertEquals(block, page.substring(from, to));
        }
    }

    private interface Row {
        String of(double rate, double kilograms);
    }

    private static String rows(String head, Row row) {
        return DoubleStream.of(RATES)
                .boxed()
                .flatMap(rate -> DoubleStream.of(MASSES).mapToObj(mass -> row.of(rate, mass)))
                .collect(Collectors.joining("", head, ""));
    }

    private static String example() {
        double rate = RateEquation.millimetresPerHour(18.00, 300.5, 60.0);
        UncertaintyBudget budget = UncertaintyBudget.of(new InfiltrationRate(rate), 18.00, 300.5, 60.0)
                .withMass("A1 run 1, before", Reading.of("20.42", FieldUnit.KILOGRAM))
                .withMass("A1 run 1, after", Reading.of("2.42", FieldUnit.KILOGRAM))
                .withDiameters(
                        "ring R1",
                        Stream.of("300", "301")
                                .map(digits -> Reading.of(digits, FieldUnit.MILLIMETRE))
                                .toList())
                .withElapsed("A1 run 1, watch", Reading.of("60.0", FieldUnit.SECOND))
                .with(RingTerm.END_POINT, Term.of("A1 run 1, end", 0, Spread.rectangular(2)))
                .withSeal(new LeakBias(0.01));
        String text = budget + "\n\n" + budget.table().replace(System.lineSeparator(), "\n");
        return text.lines()
                .map(line -> line.isEmpty() ? "\n" : "    " + line + "\n")
                .collect(Collectors.joining());
    }

    private static double seconds(double rate, double kilograms) {
        return RateEquation.millimetresPerHour(kilograms, 300, 1) / rate;
    }

    private static UncertaintyBudget read(double rate, double kilograms) {
        return UncertaintyBudget.of(new InfiltrationRate(rate), kilograms, 300, seconds(rate, kilograms))
                .withMass("poured", Reading.of("18.00", FieldUnit.KILOGRAM))
                .withDiameters("ring", List.of(Reading.of("300", FieldUnit.MILLIMETRE)))
                .withElapsed("watch", Reading.of("60.0", FieldUnit.SECOND));
    }

    private static String instruments(double rate, double kilograms) {
        Uncertainty all = read(rate, kilograms).uncertainty();
        String terms = all.contributions().stream()
                .map(each -> String.format(Locale.ROOT, "%.2f", 100 * Math.abs(each.amount()) / rate))
                .collect(Collectors.joining(" | "));
        return String.format(
                Locale.ROOT,
                "| %.0f | %.2f | %.1f | %s | %.2f |\n",
                rate,
                kilograms,
                seconds(rate, kilograms),
                terms,
                100 * all.expanded(0.95) / rate);
    }

    private static String trials(double rate, double kilograms) {
        Measurement measurement = read(rate, kilograms)
                .with(RingTerm.REACTION, Term.of("reaction", 0, Spread.normal(0.3)))
                .with(RingTerm.END_POINT, Term.of("end", 0, Spread.rectangular(1)))
                .measurement();
        Uncertainty linear = measurement.propagate();
        Trials trials = MonteCarlo.seeded(1).run(measurement);
        return String.format(
                Locale.ROOT,
                "| %.0f | %.2f | %.1f | %.2f | %.2f | %.4f | %s | %s |\n",
                rate,
                kilograms,
                seconds(rate, kilograms),
                100 * linear.standardUncertainty() / rate,
                100 * trials.standardUncertainty() / rate,
                trials.mean() / rate,
                interval(linear.interval(0.95)),
                interval(trials.symmetric()));
    }

    private static String interval(Interval interval) {
        return Rounding.digits(interval.low(), 4) + " to " + Rounding.digits(interval.high(), 4);
    }

    private static String water(double celsius) {
        Water water = Water.at(celsius);
        double ratio = water.viscosity() / Water.at(20).viscosity();
        return String.format(
                Locale.ROOT,
                "| %.0f | %.2f | %.4f | %.3f |\n",
                celsius,
                water.density(),
                1000 * water.viscosity(),
                ratio);
    }
}
