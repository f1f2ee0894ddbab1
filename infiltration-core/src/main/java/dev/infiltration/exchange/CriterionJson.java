// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.exchange;

import dev.infiltration.field.Problem;
import dev.infiltration.summary.Specification;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Reads criteria and the user's table of actions from JSON: the requirements for a surface are in a file, not in code.
 *
 * <p>A file is read as a whole or not at all: one with a missing part, an unknown unit, or an action that depends on a
 * criterion not in the file is refused, and its faults are reported.
 */
public final class CriterionJson {

    /** The value of {@code format} in a file of criteria of this version. */
    public static final String FORMAT = "infiltration-criterion/1";

    private static final Document<CriterionFile.Whole> FILE =
            Document.of(CriterionFile.Whole.class, FORMAT).whole();

    private CriterionJson() {}

    /**
     * The result of reading a file.
     *
     * @param read     the criteria and actions; null when the file was refused
     * @param problems every fault, in order of place
     */
    public record ReadCriteria(@Nullable Specification read, List<Problem> problems) {

        /** Copies the problems. */
        public ReadCriteria {
            problems = List.copyOf(problems);
        }

        /** {@return the criteria and actions, or empty when the file was refused} */
        public Optional<Specification> specification() {
            return Optional.ofNullable(read);
        }
    }

    /**
     * Reads criteria.
     *
     * @param json the document
     * @return the criteria and actions, or why they were refused
     */
    public static ReadCriteria read(String json) {
        ReadLimits limits = ReadLimits.withDefaults();
        return read(CharacterSource.of(json, limits.documentLength()), limits);
    }

    /**
     * Reads criteria from a file.
     *
     * @param json the file
     * @return the criteria and actions, or why they were refused
     * @throws IOException if the file cannot be read
     */
    public static ReadCriteria read(Path json) throws IOException {
        ReadLimits limits = ReadLimits.withDefaults();
        try (InputStream bytes = Files.newInputStream(json)) {
            return read(TextReader.of(bytes, limits.documentLength()).rest(), limits);
        }
    }

    private static ReadCriteria read(CharacterSource text, ReadLimits limits) {
        ReadResult<CriterionFile.Whole> content = FILE.read(text, limits);
        CriterionFile.@Nullable Whole value = content.value();
        if (value == null || !content.faults().isEmpty()) {
            return new ReadCriteria(null, text.problems(content.faults()));
        }
        CriterionFile file = CriterionFile.of(value);
        List<ReadFault> faults = file.faults();
        return new ReadCriteria(faults.isEmpty() ? file.specification() : null, text.problems(faults));
    }
}
