// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.schema;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.infiltration.exchange.FieldBookJson;
import dev.infiltration.field.Books;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.Problem;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;
import net.jqwik.api.statistics.StatisticsReport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the schema takes the reader takes without a problem, and the other way round, but for what no schema can say. */
class FieldBookSchemaTest {

    private static final Path FILE =
            Path.of("src/main/resources/dev/infiltration/exchange/schema", JsonSchema.FIELD_BOOK.fileName());
    private static final FieldBookJson JSON = FieldBookJson.withDefaults();
    private static final Validated SCHEMA = Validated.by(JsonSchema.FIELD_BOOK);

    @Test
    void schemaIsMadeFromTheRecords() throws IOException {
        String made = Validated.pretty(FieldBookSchema.make());
        if (Boolean.getBoolean("docs.write")) {
            Files.writeString(FILE, made);
        }
        assertEquals(made, Files.readString(FILE));
    }

    @Test
    void schemaIsASchema() {
        assertEquals(List.of(), Validated.byDraft(JsonSchema.FIELD_BOOK));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "../infiltration-examples/demo/harrow-quay.json",
                "src/test/resources/dev/infiltration/exchange/harrow-quay.json"
            })
    void everyExampleIsTaken(String file) throws IOException {
        String book = Files.readString(Path.of(file));
        assertEquals(List.of(), SCHEMA.faults(book));
        assertEquals(List.of(), JSON.read(book).problems());
    }

    @Provide
    Arbitrary<FieldBook> books() {
        return Books.readable();
    }

    @Property(tries = 200, seed = "20260603")
    void whatIsWrittenIsTaken(@ForAll("books") FieldBook book) throws IOException {
        assertEquals(List.of(), SCHEMA.faults(written(book)));
    }

    @Provide
    Arbitrary<Long> seeds() {
        return Arbitraries.longs();
    }

    @StatisticsReport(StatisticsReport.StatisticsReportMode.OFF)
    @Property(tries = 700, seed = "20260603")
    void schemaAndReaderTakeTheSame(@ForAll("books") FieldBook book, @ForAll("seeds") long seed) throws IOException {
        String changed = Validated.text(new Mutation(new Random(seed)).of(Validated.tree(written(book))));
        List<String> faults = SCHEMA.faults(changed);
        List<String> problems = JSON.read(changed).problems().stream()
                .filter(problem -> !faults.isEmpty() || !problem.where().endsWith("/timeZone"))
                .map(Problem::toString)
                .toList();
        Statistics.collect(faults.isEmpty());
        Statistics.coverage(coverage -> {
            coverage.check(true).percentage(taken -> taken > 10);
            coverage.check(false).percentage(refused -> refused > 10);
        });
        assertEquals(problems.isEmpty(), faults.isEmpty(), () -> changed + "\n" + problems + "\n" + faults);
    }

    /** In the schema's patterns the end is the end, and not a line feed before it. */
    @Test
    void lineEndBehindADateIsRefusedByBoth() {
        String book = "{\"format\":\"infiltration-field-book/1\",\"visits\":[{\"date\":\"2026-06-03\\n\"}]}";
        assertEquals(1, JSON.read(book).problems().size());
        assertEquals(1, SCHEMA.faults(book).size());
    }

    /** Each row is an amount that the reader refuses and the schema takes: the digits of a number are no part of its value. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            {"value": 3.6000000000000000000000000000000000001, "unit": "mm"} | 38 digits
            {"value": "1e16", "unit": "mm"}                                  | magnitude of a string
            {"value": "12345678901234567890123456789012345", "unit": "mm"}   | digits of a string
            """)
    void digitsAreBeyondASchema(String amount, String why) {
        String book =
                "{\"format\":\"infiltration-field-book/1\",\"rings\":[{\"id\":\"R1\",\"height\":" + amount + "}]}";
        assertEquals(List.of(), SCHEMA.faults(book));
        assertEquals(
                List.of("/rings/0/height/value"),
                JSON.read(book).problems().stream().map(Problem::where).toList());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            a repeated key        | {"format":"infiltration-field-book/1","rings":[],"rings":[]}
            an unknown time zone  | {"format":"infiltration-field-book/1","sites":[{"id":"HQ","timeZone":"Harrow/Quay"}]}
            a watch that has shown more than 1e15 s | {"format":"infiltration-field-book/1","visits":[{"tests":[{"runs":[{"elapsed":{"value":"999999999999999:59.9","unit":"min:s"}}]}]}]}
            """)
    void whatElseIsBeyondASchema(String what, String book) {
        assertEquals(List.of(), SCHEMA.faults(book));
        assertEquals(1, JSON.read(book).problems().size(), what);
    }

    static String written(FieldBook book) throws IOException {
        StringWriter text = new StringWriter();
        JSON.write(book, text);
        return text.toString();
    }
}
