// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.stream.Stream;

/** Published data beside these tests; files begin with their source. */
final class References {

    private References() {}

    /** {@return the rows of a file after its comments and its heading} */
    static Stream<String[]> rows(String file) {
        try (InputStream stream = References.class.getResourceAsStream(file)) {
            String text = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
            return text.lines().filter(line -> !line.startsWith("#")).skip(1).map(line -> line.split(",", -1));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
