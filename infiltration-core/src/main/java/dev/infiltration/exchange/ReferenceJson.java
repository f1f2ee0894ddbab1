// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

import dev.infiltration.exchange.text.Output;
import dev.infiltration.field.Problem;
import dev.infiltration.rate.ReferenceCases;
import dev.infiltration.rate.ReferenceCheck;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Reads and writes reference cases of the rate as JSON: built-in cases, a user's cases, and the results of an implementation.
 *
 * <p>A file is read as a whole or not at all: a case that was left out would appear to have passed. Rings and runs are written as in a
 * field book.
 */
public final class ReferenceJson {

    /** The value of {@code format} in reference cases of this version. */
    public static final String FORMAT = "infiltration-reference-cases/1";

    private static final Document<ReferenceCases> CASES =
            Document.of(ReferenceCases.class, FORMAT).whole();

    private static final String SHIPPED = "reference-cases.json";

    private ReferenceJson() {}

    /**
     * The result of reading cases.
     *
     * @param read     the cases; null when they were refused
     * @param problems every fault, in order of place
     */
    public record ReadCases(@Nullable ReferenceCases read, List<Problem> problems) {

        /** Copies the problems. */
        public ReadCases {
            problems = List.copyOf(problems);
        }

        /** {@return the cases, or empty when they were refused} */
        public Optional<ReferenceCases> cases() {
            return Optional.ofNullable(read);
        }
    }

    /**
     * {@return the built-in cases}: from first principles, from the published constants, and from facts of the trade; each
     * gives the quality of its source, and none is invented
     */
    public static ReferenceCases shipped() {
        try (InputStream bytes = ReferenceJson.class.getResourceAsStream(SHIPPED)) {
            return read(Objects.requireNonNull(bytes, SHIPPED)).cases().orElseThrow();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /**
     * Reads cases.
     *
     * @param json the document
     * @return the cases, or why they were refused
     */
    public static ReadCases read(String json) {
        ReadLimits limits = ReadLimits.withDefaults();
        return read(CharacterSource.of(json, limits.documentLength()), limits);
    }

    /**
     * Reads cases from a file.
     *
     * @param json the file
     * @return the cases, or why they were refused
     * @throws IOException if the file cannot be read
     */
    public static ReadCases read(Path json) throws IOException {
        try (InputStream bytes = Files.newInputStream(json)) {
            return read(bytes);
        }
    }

    private static ReadCases read(InputStream bytes) throws IOException {
        ReadLimits limits = ReadLimits.withDefaults();
        return read(TextReader.of(bytes, limits.documentLength()).rest(), limits);
    }

    private static ReadCases read(CharacterSource text, ReadLimits limits) {
        ReadResult<ReferenceCases> content = CASES.read(text, limits);
        @Nullable ReferenceCases cases = content.value();
        if (content.faults().isEmpty() && cases != null && cases.cases().isEmpty()) {
            ReadFault none = new ReadFault(
                    0, "/cases", "found no case, expected one or more: nothing checked is nothing passed");
            return new ReadCases(null, text.problems(List.of(none)));
        }
        return new ReadCases(content.faults().isEmpty() ? content.value() : null, text.problems(content.faults()));
    }

    /**
     * Writes cases over many lines.
     *
     * @param cases  the cases
     * @param target where to; it is flushed and stays open
     * @throws IOException if the target cannot be written to
     */
    public static void write(ReferenceCases cases, Writer target) throws IOException {
        Objects.requireNonNull(cases, "cases");
        int nesting = ReadLimits.withDefaults().nesting();
        Output.PAGE.write(target, json -> new RecordWriter(json, "", nesting).writeDocument(cases, FORMAT));
    }

    /**
     * Writes the results of an implementation as one JSON document, followed by a line end.
     *
     * @param checks the results
     * @param target where to; it is flushed and stays open
     * @throws IOException if the target cannot be written to
     */
    public static void writeChecks(List<ReferenceCheck> checks, Writer target) throws IOException {
        Output.LINE.write(target, json -> new ReferenceAnswers(json).write(checks));
    }
}
