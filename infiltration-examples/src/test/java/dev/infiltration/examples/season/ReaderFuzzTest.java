// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeout;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The inputs in {@code fuzz}: one for each reader to start a fuzzer from, and each that once broke something. */
class ReaderFuzzTest {

    private static final Path INPUTS = Path.of("src/test/resources/dev/infiltration/examples/season/fuzz");

    @ParameterizedTest
    @EnumSource
    void keptInputsAreReadAsDocumented(ReaderFuzz.Target target) throws IOException {
        for (Path input : inputs(target)) {
            byte[] bytes = Files.readAllBytes(input);
            assertTimeout(Duration.ofSeconds(20), () -> target.read(bytes), input.toString());
        }
    }

    @Test
    void rainRecordOfMoreThan50MegabytesIsRefused(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("rain.csv");
        try (RandomAccessFile sparse = new RandomAccessFile(file.toFile(), "rw")) {
            sparse.setLength(50_000_001);
        }
        IOException refused = assertThrows(IOException.class, () -> RainTable.read(file, ZoneOffset.UTC));
        assertEquals(file + ": found more than 50 MB; a rain record has at most 50 MB", refused.getMessage());
    }

    private static List<Path> inputs(ReaderFuzz.Target target) throws IOException {
        try (Stream<Path> files = Files.list(INPUTS.resolve(target.name().toLowerCase(Locale.ROOT)))) {
            return files.sorted().toList();
        }
    }
}
