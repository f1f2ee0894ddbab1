// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.exchange.FieldBookJson;
import dev.infiltration.field.Books;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.ReadBook;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/** What is exported imports back equal; what a table cannot hold is named. */
class RunsCsvRoundTripTest {

    private static final RunsCsv CSV = RunsCsv.withDefaults();

    @Provide
    Arbitrary<FieldBook> tabled() {
        return Tabled.books();
    }

    @Provide
    Arbitrary<FieldBook> books() {
        return Books.readable();
    }

    @Property(tries = 300, seed = "20260603")
    void bookThatATableCanHoldReadsBackEqual(@ForAll("tabled") FieldBook book) throws IOException {
        assertHeld(CSV, book);
    }

    @Property(tries = 200, seed = "20260603")
    void tableWithDecimalCommasReadsBackEqual(@ForAll("tabled") FieldBook book) throws IOException {
        assertHeld(CSV.withDecimalComma(), book);
    }

    private static void assertHeld(RunsCsv csv, FieldBook book) throws IOException {
        ReadBook read = csv.read(new ByteArrayInputStream(written(csv, book)));
        assertEquals(List.of(), read.problems());
        assertEquals(Optional.of(book), read.book());
        assertEquals(List.of(), csv.notHeld(book));
    }

    /** What is not named is held, whatever the book. */
    @Property(tries = 200, seed = "20260603")
    void whatIsNotHeldIsNamed(@ForAll("books") FieldBook book) throws IOException {
        Optional<FieldBook> read =
                CSV.read(new ByteArrayInputStream(written(CSV, book))).book();
        assertEquals(Optional.of(book).equals(read), CSV.notHeld(book).isEmpty());
    }

    @Property(tries = 200, seed = "20260603")
    void booksDifferWhereTheyAreNotEqual(@ForAll("books") FieldBook book, @ForAll("books") FieldBook other) {
        assertEquals(book.equals(other), Differences.between(book, other).isEmpty());
        assertEquals(List.of(), Differences.between(book, book));
    }

    @Test
    void demoIsHeldButForWhatNoColumnIsFor() throws IOException {
        Path demo = Path.of("../infiltration-examples/demo/harrow-quay.json");
        FieldBook book = FieldBookJson.withDefaults().read(demo).book().orElseThrow();
        List<String> places = CSV.notHeld(book).stream().map(Object::toString).toList();
        assertFalse(places.isEmpty());
        assertTrue(
                places.stream()
                        .allMatch(
                                place -> place.matches(
                                        "/extra|/sites/0/position|/instruments/\\d|/maintenance/\\d|/visits/\\d/amendments/\\d")),
                places::toString);
    }

    static byte[] written(RunsCsv csv, FieldBook book) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        csv.write(book, new OutputStreamWriter(bytes, StandardCharsets.UTF_8));
        return bytes.toByteArray();
    }
}
