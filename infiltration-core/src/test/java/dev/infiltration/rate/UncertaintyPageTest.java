// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import static dev.infiltration.Amounts.celsius;
import static dev.infiltration.Amounts.kg;
import static dev.infiltration.Amounts.mm;
import static dev.infiltration.Amounts.s;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.infiltration.field.Instrument;
import dev.infiltration.field.Instrument.Kind;
import dev.infiltration.field.Pour;
import dev.infiltration.field.Pouring.End;
import dev.infiltration.field.Ring;
import dev.infiltration.field.TestRun;
import dev.infiltration.method.Methods;
import dev.infiltration.statistics.Interval;
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

/** The numbers of docs/uncertainty.md are those of the code; {@code -Ddocs.write=true} updates them. */
class UncertaintyPageTest {

    private static final Path PAGE = Path.of("../docs/uncertainty.md");
    private static final Path HERE = Path.of("src/test/java/dev/infiltration/rate/UncertaintyPageTest.java");
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

    private static UncertaintyBudget budget() {
        // begin
        Ring ring = Ring.of("R1").withInsideDiameters(List.of(mm("300"), mm("301")));
        TestRun run =
                TestRun.of(null, null, s("60.0"), End.DRAINED).withPours(List.of(Pour.of(kg("20.42"), kg("2.42"))));
        Instrument watch = Instrument.of("W1").withKind(Kind.WATCH).withResolution(s("0.1"));
        UncertaintyBudget budget = Instruments.of(List.of(watch))
                .withMethod(Methods.unitPavement())
                .budget("A1 run 1", RateEquation.asPublished(), ring, run)
                .orElseThrow()
                .with(RingTerm.END_POINT, Term.of("A1 run 1, end", 0, Distribution.rectangular(2)))
                .withSeal(new LeakBias(0.01));
        // end
        return budget;
    }

    private static String example() {
        return indented(budget() + "\n\n" + budget().table().replace(System.lineSeparator(), "\n"));
    }

    private static String indented(String text) {
        return text.lines()
                .map(line -> line.isEmpty() ? "\n" : "    " + line + "\n")
                .collect(Collectors.joining());
    }

    /** u²(I)/I² = u²(M)/M² + 4·u²(D)/D² + u²(t)/t² with the half-widths of the table, each over √3 (derived). */
    @Test
    void exampleIsTheLawOfPropagationByHand() {
        double mass = (2 * 0.005 * 0.005 + 0.01 * 0.01) / (18.00 * 18.00);
        double diameter = 4 * (2 * 0.25 * 0.25 + 0.5 * 0.5) / (300.5 * 300.5);
        double time = (0.05 * 0.05 + 2 * 2) / (60.0 * 60.0);
        double rate = 4_583_666_000.0 * 18.00 / (300.5 * 300.5 * 60.0);
        Uncertainty uncertainty = budget().uncertainty();
        assertEquals(rate, uncertainty.value(), 1e-9);
        double expected = rate * Math.sqrt((mass + diameter + time) / 3);
        assertEquals(expected, uncertainty.standardUncertainty(), 1e-9);
        assertEquals(1.959963984540054 * expected, uncertainty.expanded(0.95), 1e-9);
    }

    @Test
    void exampleStandsOnThePageAsItIsRun() throws IOException {
        String page = Files.readString(PAGE);
        String shown = page.substring(page.indexOf("```java\n") + 8);
        String source = Files.readString(HERE);
        String run = source.substring(source.indexOf("// begin\n") + 9, source.indexOf("        // end"));
        assertEquals(
                run.replaceAll("\\s+", ""),
                shown.substring(0, shown.indexOf("```")).replaceAll("\\s+", ""));
    }

    @Test
    void variantsAreThoseOfTheCode() throws IOException {
        assertBlock("variants", indented(variants()));
    }

    /** 18.00 kg through 300 mm in 60.0 s, water at 25 °C. */
    private static String variants() {
        Ring ring = Ring.of("R1").withInsideDiameter(mm("300"));
        TestRun run = TestRun.of(null, kg("18.00"), s("60.0"), End.DRAINED);
        RateEquation published = RateEquation.asPublished();
        String rates = Stream.of(published, RateEquation.fromGeometry(), published.withWaterAt(celsius("25")))
                .map(equation -> String.format(
                        Locale.ROOT, "%.1f mm/h  %s%n", rate(equation, ring, run), equation.constant(ring, run)))
                .collect(Collectors.joining())
                .replace(System.lineSeparator(), "\n");
        InfiltrationRate measured = new InfiltrationRate(rate(published, ring, run));
        return rates + new NormalizedRate(measured, Water.at(25), Water.at(20), 0.5);
    }

    private static double rate(RateEquation equation, Ring ring, TestRun run) {
        return equation.rate(ring, run).rate().orElseThrow().millimetresPerHour();
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
        MeasurementModel measurement = read(rate, kilograms)
                .with(RingTerm.REACTION, Term.of("reaction", 0, Distribution.normal(0.3)))
                .with(RingTerm.END_POINT, Term.of("end", 0, Distribution.rectangular(1)))
                .measurement();
        Uncertainty linear = measurement.propagate();
        MonteCarloResult trials = MonteCarlo.seeded(1).run(measurement);
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
