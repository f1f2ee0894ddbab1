// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.assets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.exchange.FieldBookJson;
import dev.infiltration.field.FieldBook;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InspectionDeskTest {

    private static final Path DEMO = Path.of("demo", "inspection.json");

    private final InspectionDesk desk = new InspectionDesk();
    private String demo;

    @BeforeEach
    void readDemo() throws IOException {
        demo = Files.readString(DEMO);
    }

    /** {@code K·M/(D²·t)} with the published SI constant, the mean of a location's two runs. */
    private static double mean(double firstSeconds, double secondSeconds) {
        return 4_583_666_000.0 / (300 * 300) * (18.00 / firstSeconds + 18.02 / secondSeconds) / 2;
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            # source                                             | location | first | second | deviations  | relative
            equation and constant of ASTM C1701 (secondary)      | N1       | 150.0 | 160.0  |             | 1e-12
            equation and constant of ASTM C1701 (secondary)      | N2       | 120.0 | 125.0  | prewet.mass | 1e-12
            equation and constant of ASTM C1701 (secondary)      | N3       | 300.0 | 310.0  |             | 1e-12
            """)
    void ratesAreStoredWithTheDeviationsTheyStandWith(
            String source, String location, double first, double second, String deviations, double relative) {
        assertEquals(List.of(), desk.take(demo));
        assertEquals(3, desk.rates().size());
        StoredRate rate = desk.rates().stream()
                .filter(row -> row.location().equals(location))
                .findFirst()
                .orElseThrow();
        double expected = mean(first, second);
        assertEquals(expected, rate.millimetresPerHour(), relative * expected, source);
        assertEquals(deviations == null ? List.of() : List.of(deviations), rate.deviations());
        assertEquals("measured", rate.outcome());
        assertEquals("PP-0147", rate.asset());
        assertEquals(LocalDate.parse("2026-08-19"), rate.date());
    }

    @Test
    void whatTakesARateAwayIsAComplaintAtItsProperty() {
        assertEquals(
                List.of("fieldBook.visits[0].tests[1].ring: names a record that is not in the book: no ring R9"),
                desk.take(replace(
                        "\"location\": \"N2\",\n      \"ring\": \"R2\"", "\"location\": \"N2\", \"ring\": \"R9\"")));
        assertEquals(List.of(), desk.rates());
    }

    @Test
    void everythingUnreadableIsAComplaintAtOnce() {
        String broken = replace("\"value\": 150.0, \"unit\": \"s\"", "\"value\": 150.0, \"unit\": \"fortnight\"")
                .replace("\"2026-08-16T04:20\"", "\"last week\"");
        List<String> complaints = desk.take(broken);
        assertEquals(1, complaints.size());
        assertTrue(complaints.get(0).contains("/visits/0/tests/0/runs/0/elapsed/unit: "), complaints::toString);
        assertTrue(complaints.get(0).contains("/visits/0/weather/lastRainEnd: "), complaints::toString);
    }

    @Test
    void membersOfTheHostAreHeldToItsOwnConstraints() {
        List<String> complaints = desk.take(
                replace("\"WO-2291\"", "\" \"").replace("\"inspector\": \"TO\"", "\"inspector\": \"tomorrow\""));
        assertEquals(
                List.of("inspector", "workOrder"),
                complaints.stream()
                        .map(said -> said.substring(0, said.indexOf(':')))
                        .toList());
        assertEquals(List.of(), desk.rates());
    }

    @Test
    void inspectionWithoutFieldBookIsAComplaint() {
        assertEquals(
                1,
                desk.take("{\"work_order\":\"WO-1\",\"asset\":\"PP-1\",\"closed_on\":\"2026-08-20\"}")
                        .size());
    }

    @Test
    void digitsSurviveTheHostsMapper() throws IOException {
        String json = demo.substring(demo.indexOf("\"field_book\": ") + 14, demo.lastIndexOf('}'));
        FieldBook book = FieldBookJson.withDefaults().read(json).book().orElseThrow();
        String written = desk.write(new Inspection("WO-1", "PP-1", LocalDate.parse("2026-08-20"), "TO", book));
        assertTrue(written.startsWith("{\"work_order\":\"WO-1\""), written);
        String back = written.substring(written.indexOf("\"field_book\":") + 13, written.length() - 1);
        assertEquals(book, FieldBookJson.withDefaults().read(back).book().orElseThrow());
        assertTrue(back.contains("18.00"), back);
        assertEquals(List.of(), desk.take(written));
        assertEquals(3, desk.rates().size());
    }

    private String replace(String part, String by) {
        assertTrue(demo.contains(part), part);
        return demo.replace(part, by);
    }

    @Test
    void runsOnTheModulePath() throws IOException, InterruptedException {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-p",
                        modules(),
                        "-m",
                        "dev.infiltration.examples/" + InspectionDesk.class.getName(),
                        DEMO.toString())
                .redirectErrorStream(true)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, process.waitFor(), said);
        assertEquals(
                3,
                said.lines()
                        .filter(line -> line.startsWith("StoredRate[asset=PP-0147"))
                        .count(),
                said);
    }

    /** The class path of this test, save the tests and what is for tests alone. */
    private static String modules() {
        return Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator, -1))
                .filter(entry ->
                        !entry.contains("test-classes") && !entry.contains("surefire") && !entry.contains("jmh"))
                .filter(entry -> !entry.matches(".*(junit|jqwik|opentest4j|apiguardian).*"))
                .collect(Collectors.joining(File.pathSeparator));
    }
}
