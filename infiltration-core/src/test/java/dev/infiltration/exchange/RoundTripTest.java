// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.infiltration.field.Books;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.ReadBook;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What is written is read back equal. */
class RoundTripTest {

    private static final FieldBookJson JSON = FieldBookJson.withDefaults();

    @Provide
    Arbitrary<FieldBook> books() {
        return Books.readable();
    }

    @Property(tries = 500)
    void documentReadsBackEqual(@ForAll("books") FieldBook book) throws IOException {
        StringWriter written = new StringWriter();
        JSON.write(book, written);
        assertSame(book, JSON.read(written.toString()));
    }

    @Property(tries = 300)
    void bytesReadBackEqual(@ForAll("books") FieldBook book) throws IOException {
        ByteArrayOutputStream written = new ByteArrayOutputStream();
        JSON.write(book, written);
        assertSame(book, JSON.read(new ByteArrayInputStream(written.toByteArray())));
        assertSame(book, JSON.readEither(new ByteArrayInputStream(written.toByteArray())));
    }

    @Property(tries = 500)
    void linesReadBackEqual(@ForAll("books") FieldBook book) throws IOException {
        ByteArrayOutputStream written = new ByteArrayOutputStream();
        JSON.writeLines(book, written);
        assertSame(book, JSON.readLines(new ByteArrayInputStream(written.toByteArray())));
        assertSame(book, JSON.readEither(new ByteArrayInputStream(written.toByteArray())));
    }

    private static void assertSame(FieldBook book, ReadBook read) {
        assertEquals(List.of(), read.problems());
        assertEquals(Optional.of(book), read.readPart());
    }
}
