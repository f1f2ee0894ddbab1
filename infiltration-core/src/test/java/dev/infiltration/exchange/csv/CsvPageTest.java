// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.exchange.TableMappingJson;
import dev.infiltration.field.ReadBook;
import dev.infiltration.review.Review;
import dev.infiltration.units.FieldUnit;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page on tables: its snippet, mapping and table run, its list of columns is that of the code. */
class CsvPageTest {

    private static final Path PAGE = Path.of("../docs/csv.md");
    private static final Path HERE = Path.of("src/test/java/dev/infiltration/exchange/csv/CsvPageTest.java");
    private static final String BEGIN = "<!-- table of columns: begin -->\n";
    private static final String END = "<!-- table of columns: end -->";

    private final List<String> kept = new ArrayList<>();

    private void keep(String line) {
        kept.add(line);
    }

    private ReadBook snippet(Path mappingFile, Path tableFile, Path newTableFile) throws IOException {
        // begin
        RunsCsv csv = RunsCsv.withDefaults()
                .withMapping(TableMappingJson.read(mappingFile).mapping().orElseThrow());
        ReadBook read = csv.read(tableFile);
        read.problems().forEach(problem -> keep("row " + problem.line() + ", column " + problem.column()));
        try (Writer out = Files.newBufferedWriter(newTableFile)) {
            csv.write(read.book().orElseThrow(), out).forEach(place -> keep(place + " is in no table"));
        }
        // end
        return read;
    }

    @Test
    void snippetReadsTheTableByTheMapping(@TempDir Path folder) throws IOException {
        Path mapping = Files.writeString(folder.resolve("mapping.json"), block("json"));
        Path table = Files.writeString(folder.resolve("table.csv"), block("csv"));
        ReadBook read = snippet(mapping, table, folder.resolve("new.csv"));
        assertEquals(List.of(), kept);
        assertEquals(
                "[40.02 lb, 40.04 lb, 40.00 lb]",
                read.book().orElseThrow().visits().get(0).tests().stream()
                        .flatMap(test -> test.runs().stream())
                        .map(run -> run.water().toString())
                        .toList()
                        .toString());
        assertEquals("HQ-A", read.book().orElseThrow().visits().get(0).surface());
        assertRates(Review.of(read));
        assertEquals(
                read.book(),
                RunsCsv.withDefaults().read(folder.resolve("new.csv")).book());
    }

    /** K of inch-pound units as C1701/C1701M has it (memory): 126 870 · 40.02 / (11.95² · 62.3) and so on, worked out apart from the library. */
    private static void assertRates(Review review) {
        double[] inchesPerHour = {570.7056, 555.8239, 644.9581};
        assertEquals(inchesPerHour.length, review.runs().size());
        for (int at = 0; at < inchesPerHour.length; at++) {
            double rate = review.runs().get(at).outcome().rate().orElseThrow().in(FieldUnit.INCH_PER_HOUR);
            assertEquals(inchesPerHour[at], rate, 1e-4);
        }
    }

    @Test
    void snippetStandsOnThePageAsItIsRun() throws IOException {
        String source = Files.readString(HERE);
        String run = source.substring(source.indexOf("// begin\n") + 9, source.indexOf("        // end"));
        assertEquals(plain(run), plain(block("java")));
        assertTrue(plain(run).length() > 100);
    }

    private static String plain(String code) {
        return code.replaceAll("\\s+", "");
    }

    private static String block(String language) throws IOException {
        String page = Files.readString(PAGE);
        int begin = page.indexOf("```" + language + "\n") + language.length() + 4;
        return page.substring(begin, page.indexOf("```", begin));
    }

    @Test
    void tableOfColumnsIsThatOfTheCode() throws IOException {
        String page = Files.readString(PAGE);
        int begin = page.indexOf(BEGIN) + BEGIN.length();
        int end = page.indexOf(END);
        if (Boolean.getBoolean("docs.write")) {
            Files.writeString(PAGE, page.substring(0, begin) + table() + page.substring(end));
        } else {
            assertEquals(table(), page.substring(begin, end));
        }
    }

    private static String table() {
        return Fields.ALL.stream()
                .map(CsvPageTest::row)
                .collect(Collectors.joining("", "| column | of the | member | read too |\n|---|---|---|---|\n", ""));
    }

    private static String row(Field field) {
        String spellings =
                field.spellings().stream().map(text -> "`" + text + "`").collect(Collectors.joining(" "));
        String member = field.equals(Fields.RUN_NUMBER) ? "its number, from 1" : "`" + field.path() + "`";
        String record = field.level() == RowRecord.RUN ? "run" : field.level().entry();
        String unit = field.cell().units().isEmpty() ? "" : " [unit]";
        return String.join(" | ", "| `" + field.name() + unit + "`", record, member, spellings) + " |\n";
    }
}
