// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

import dev.infiltration.exchange.text.Output;
import dev.infiltration.field.Problem;
import java.io.IOException;
import java.io.InputStream;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads and writes mappings of tables as JSON: a user's headers are a file, not code. A file is read as a whole or not at all. */
public final class TableMappingJson {

    /** The value of {@code format} in a mapping of this version. */
    public static final String FORMAT = "infiltration-table-mapping/1";

    private static final Document<TableMapping> MAPPING =
            Document.of(TableMapping.class, FORMAT).whole();

    private TableMappingJson() {}

    /**
     * The result of reading a mapping.
     *
     * @param read     the mapping; null when it was refused
     * @param problems every fault, in order of place
     */
    public record ReadMapping(@Nullable TableMapping read, List<Problem> problems) {

        /** Copies the problems. */
        public ReadMapping {
            problems = List.copyOf(problems);
        }

        /** {@return the mapping, or empty when it was refused} */
        public Optional<TableMapping> mapping() {
            return Optional.ofNullable(read);
        }
    }

    /**
     * Reads a mapping.
     *
     * @param json the document
     * @return the mapping, or why it was refused
     */
    public static ReadMapping read(String json) {
        ReadLimits limits = ReadLimits.withDefaults();
        return read(CharacterSource.of(json, limits.documentLength()), limits);
    }

    /**
     * Reads a mapping from a file.
     *
     * @param json the file
     * @return the mapping, or why it was refused
     * @throws IOException if the file cannot be read
     */
    public static ReadMapping read(Path json) throws IOException {
        ReadLimits limits = ReadLimits.withDefaults();
        try (InputStream bytes = Files.newInputStream(json)) {
            return read(TextReader.of(bytes, limits.documentLength()).rest(), limits);
        }
    }

    private static ReadMapping read(CharacterSource text, ReadLimits limits) {
        ReadResult<TableMapping> content = MAPPING.read(text, limits);
        return new ReadMapping(content.faults().isEmpty() ? content.value() : null, text.problems(content.faults()));
    }

    /**
     * Writes a mapping.
     *
     * @param mapping the mapping
     * @param target  where to; it is flushed and stays open
     * @throws IOException if the target cannot be written to
     */
    public static void write(TableMapping mapping, Writer target) throws IOException {
        Objects.requireNonNull(mapping, "mapping");
        int nesting = ReadLimits.withDefaults().nesting();
        Output.PAGE.write(target, json -> new RecordWriter(json, "", nesting).writeDocument(mapping, FORMAT));
    }
}
