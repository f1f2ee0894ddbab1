// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.examples.season;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.CharsetEncoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Files in UTF-8, whatever a book says: halves of characters show as U+FFFD. */
final class TextFile {

    private static final byte[] REPLACEMENT = "\uFFFD".getBytes(StandardCharsets.UTF_8);

    private TextFile() {}

    static Writer writer(Path file) throws IOException {
        CharsetEncoder encoder = StandardCharsets.UTF_8
                .newEncoder()
                .onMalformedInput(CodingErrorAction.REPLACE)
                .replaceWith(REPLACEMENT);
        return new BufferedWriter(new OutputStreamWriter(Files.newOutputStream(file), encoder));
    }

    static void write(Path file, String text) throws IOException {
        try (Writer writer = writer(file)) {
            writer.write(text);
        }
    }
}
