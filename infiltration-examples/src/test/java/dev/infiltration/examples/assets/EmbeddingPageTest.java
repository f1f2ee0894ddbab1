// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.assets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every snippet of the page on asset systems stands in code that {@code InspectionDeskTest} runs. */
class EmbeddingPageTest {

    private static final Path PAGE = Path.of("..", "docs", "embedding.md");
    private static final Path CODE = Path.of("src/main/java/dev/infiltration/examples/assets");
    private static final Pattern SNIPPET = Pattern.compile("```java\n(.*?)```", Pattern.DOTALL);

    @Test
    void snippetsAreTakenFromTheCode() throws IOException {
        List<String> snippets = SNIPPET.matcher(Files.readString(PAGE))
                .results()
                .map(found -> plain(found.group(1)))
                .toList();
        String code = plain(code());
        assertEquals(
                List.of(),
                snippets.stream().filter(snippet -> !code.contains(snippet)).toList());
        assertTrue(snippets.size() >= 4, () -> snippets.size() + " snippets");
    }

    private static String code() throws IOException {
        try (Stream<Path> files = Files.list(CODE)) {
            return files.map(EmbeddingPageTest::read).collect(Collectors.joining("\n"));
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Line breaks are the formatter's. */
    private static String plain(String code) {
        return code.replaceAll("\\s+", "");
    }
}
