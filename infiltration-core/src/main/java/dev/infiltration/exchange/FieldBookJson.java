// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

import dev.infiltration.exchange.text.Output;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.IndexMap;
import dev.infiltration.field.ReadBook;
import dev.infiltration.field.Visit;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Reads and writes field books as JSON: one document, or one visit on each line.
 *
 * <p>Reading throws nothing for the content of a document: each value that cannot be read is a {@link
 * dev.infiltration.field.Problem} with its place, and the rest is read. Bytes are UTF-8 unless a byte-order mark identifies
 * UTF-16 or UTF-32. Numbers keep their digits. Reading and writing do not depend on locale, time zone or default encoding.
 */
public final class FieldBookJson {

    /** The value of {@code format} in a field book of this version. */
    public static final String FORMAT = "infiltration-field-book/1";

    static final Document<FieldBook> BOOK = Document.of(FieldBook.class, FORMAT);

    private final ReadLimits limits;

    private FieldBookJson(ReadLimits limits) {
        this.limits = limits;
    }

    /** {@return field books with limits above the size of any real book} */
    public static FieldBookJson withDefaults() {
        return new FieldBookJson(ReadLimits.withDefaults());
    }

    /**
     * {@return field books with other limits}
     *
     * @param limits how large a document may be
     */
    public FieldBookJson withLimits(ReadLimits limits) {
        return new FieldBookJson(Objects.requireNonNull(limits, "limits"));
    }

    /**
     * Reads a document.
     *
     * @param json the document
     * @return the book as far as it can be read, and every problem
     */
    public ReadBook read(String json) {
        return read(CharacterSource.of(json, limits.documentLength()));
    }

    /**
     * Reads a document to the end of the stream, which stays open.
     *
     * @param json the document's bytes
     * @return the book as far as it can be read, and every problem
     * @throws IOException if the stream cannot be read
     */
    public ReadBook read(InputStream json) throws IOException {
        return read(reader(json).rest());
    }

    /**
     * Reads a document from a file.
     *
     * @param json the file
     * @return the book as far as it can be read, and every problem
     * @throws IOException if the file cannot be read
     */
    public ReadBook read(Path json) throws IOException {
        try (InputStream bytes = Files.newInputStream(json)) {
            return read(bytes);
        }
    }

    private ReadBook read(CharacterSource text) {
        ReadResult<FieldBook> content = BOOK.read(text, limits);
        return new ReadBook(
                content.value(), text.problems(content.faults()), IndexMap.of(content.gaps()), content.unreadable());
    }

    /**
     * Reads a book line by line to the end of the stream, which stays open: the first line is the book without visits,
     * every further line a visit. Only one line of the text is in memory.
     *
     * @param lines the lines' bytes
     * @return the book as far as it can be read, and every problem
     * @throws IOException if the stream cannot be read
     */
    public ReadBook readLines(InputStream lines) throws IOException {
        TextReader reader = reader(lines);
        @Nullable CharacterSource first = reader.line();
        return first == null ? read("") : readLines(new BookLines(first, limits), reader);
    }

    /**
     * Reads a book line by line from a file, as {@link #readLines(InputStream)} does.
     *
     * @param lines the file
     * @return the book as far as it can be read, and every problem
     * @throws IOException if the file cannot be read
     */
    public ReadBook readLines(Path lines) throws IOException {
        try (InputStream bytes = Files.newInputStream(lines)) {
            return readLines(bytes);
        }
    }

    private static ReadBook readLines(BookLines lines, TextReader reader) throws IOException {
        for (@Nullable CharacterSource line = lines.isBook() ? reader.line() : null;
                line != null;
                line = reader.line()) {
            lines.add(line);
        }
        return lines.toBook();
    }

    /**
     * Reads a document or lines and detects which: lines if the first line is a complete object and lines that are not blank
     * follow; otherwise a document.
     *
     * @param json the bytes
     * @return the book as far as it can be read, and every problem
     * @throws IOException if the stream cannot be read
     */
    public ReadBook readEither(InputStream json) throws IOException {
        TextReader reader = reader(json);
        @Nullable CharacterSource first = reader.line();
        if (first == null) {
            return read("");
        }
        return isObject(first) ? readEither(first, reader) : read(reader.restFrom(first));
    }

    private ReadBook readEither(CharacterSource first, TextReader reader) throws IOException {
        int blanks = 0;
        @Nullable CharacterSource line = reader.line();
        while (line != null && line.isBlank()) {
            blanks++;
            line = reader.line();
        }
        if (line == null) {
            return read(first);
        }
        BookLines lines = new BookLines(first, limits);
        lines.skip(blanks);
        lines.add(line);
        return readLines(lines, reader);
    }

    private boolean isObject(CharacterSource line) {
        return line.startsObject() && FirstFault.of(line, limits) == null;
    }

    /**
     * Writes a book as one document over many lines: members in the order of the records, absent and empty values
     * omitted, digits as they were written, units by their UCUM codes.
     *
     * @param book   the book
     * @param target where to; it is flushed and stays open
     * @throws IOException              if the target cannot be written to
     * @throws IllegalArgumentException if a value cannot be written, with its pointer; nothing is written then
     */
    public void write(FieldBook book, Writer target) throws IOException {
        writeDocument(book, Output.PAGE, Writer.nullWriter());
        writeDocument(book, Output.PAGE, target);
    }

    /**
     * Writes a book as {@link #write(FieldBook, Writer)} does, in UTF-8.
     *
     * @param book   the book
     * @param target where to; it is flushed and stays open
     * @throws IOException              if the target cannot be written to
     * @throws IllegalArgumentException if a value cannot be written, with its pointer; nothing is written then
     */
    public void write(FieldBook book, OutputStream target) throws IOException {
        write(book, new OutputStreamWriter(target, StandardCharsets.UTF_8));
    }

    /**
     * Writes a book line by line: the book without visits, then one visit on each line.
     *
     * @param book   the book
     * @param target where to; it is flushed and stays open
     * @throws IOException              if the target cannot be written to
     * @throws IllegalArgumentException if a value cannot be written, with its pointer; nothing is written then
     */
    public void writeLines(FieldBook book, Writer target) throws IOException {
        writeEachLine(book, Writer.nullWriter());
        writeEachLine(book, target);
    }

    /**
     * Writes what was read of a document, with the original of every value that could not be read at its place.
     *
     * @param read   what was read
     * @param target where to; it is flushed and stays open
     * @throws IOException              if the target cannot be written to
     * @throws IllegalArgumentException if nothing was readable, or a value cannot be written; nothing is written then
     */
    public void write(ReadBook read, Writer target) throws IOException {
        FieldBook book = read.readPart().orElseThrow(() -> new IllegalArgumentException("read: nothing was readable"));
        Originals originals = Originals.of(read);
        for (Writer each : List.of(Writer.nullWriter(), target)) {
            Output.PAGE.write(
                    each, json -> new RecordWriter(json, "", limits.nesting(), originals).writeDocument(book, FORMAT));
        }
    }

    /**
     * Writes what was read of a document line by line, with the original of every value that could not be read.
     *
     * @param read   what was read
     * @param target where to; it is flushed and stays open
     * @throws IOException              if the target cannot be written to
     * @throws IllegalArgumentException if nothing was readable, or a value cannot be written; nothing is written then
     */
    public void writeLines(ReadBook read, Writer target) throws IOException {
        FieldBook book = read.readPart().orElseThrow(() -> new IllegalArgumentException("read: nothing was readable"));
        for (Writer each : List.of(Writer.nullWriter(), target)) {
            writeEachLine(book, Originals.of(read), each);
        }
    }

    private void writeEachLine(FieldBook book, Originals originals, Writer target) throws IOException {
        FieldBook first = book.withVisits(List.of());
        Output.LINE.write(
                target,
                json -> new RecordWriter(json, "", limits.nesting(), originals.outside("/visits"))
                        .writeDocument(first, FORMAT));
        int line = 0;
        for (int i = 0; i < book.visits().size(); i++) {
            Visit visit = book.visits().get(i);
            for (int position = originals.position("/visits", i); line < position; line++) {
                writeLost(originals.inside("/visits/" + line), target);
            }
            String pointer = "/visits/" + line++;
            Output.LINE.write(
                    target, json -> new RecordWriter(json, pointer, limits.nesting(), originals).write(visit));
        }
        for (; line <= originals.lastEntry("/visits"); line++) {
            writeLost(originals.inside("/visits/" + line), target);
        }
    }

    /** A line contains no line breaks; a space replaces them between the tokens of JSON. */
    private static void writeLost(@Nullable String original, Writer target) throws IOException {
        target.write(original == null ? "null" : original.replace('\n', ' ').replace('\r', ' '));
        target.write('\n');
    }

    /**
     * Writes a book as {@link #writeLines(FieldBook, Writer)} does, in UTF-8.
     *
     * @param book   the book
     * @param target where to; it is flushed and stays open
     * @throws IOException              if the target cannot be written to
     * @throws IllegalArgumentException if a value cannot be written, with its pointer; nothing is written then
     */
    public void writeLines(FieldBook book, OutputStream target) throws IOException {
        writeLines(book, new OutputStreamWriter(target, StandardCharsets.UTF_8));
    }

    private void writeEachLine(FieldBook book, Writer target) throws IOException {
        writeDocument(book.withVisits(List.of()), Output.LINE, target);
        int index = 0;
        for (Visit visit : book.visits()) {
            String pointer = "/visits/" + index++;
            Output.LINE.write(target, json -> new RecordWriter(json, pointer, limits.nesting()).write(visit));
        }
    }

    private void writeDocument(FieldBook book, Output layout, Writer target) throws IOException {
        layout.write(target, json -> new RecordWriter(json, "", limits.nesting()).writeDocument(book, FORMAT));
    }

    private TextReader reader(InputStream bytes) throws IOException {
        return TextReader.of(Objects.requireNonNull(bytes, "bytes"), limits.documentLength());
    }
}
