// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * Reference values of repeated-location trends, power, adjusted p-values and censored trends: each file states its source,
 * its trust mark and a second way (R 4.2.2 or scipy 1.17.1).
 */
final class Panel {

    private Panel() {}

    /** A reference value of a case. */
    record Value(String name, String quantity, String expected) {

        double number() {
            return Double.parseDouble(expected);
        }

        @Override
        public String toString() {
            return name + ", " + quantity;
        }
    }

    static Stream<Value> values(String file) {
        return lines(file, ";").stream().map(row -> new Value(row[0], row[1], row[2]));
    }

    static List<String[]> lines(String file, String separator) {
        try (InputStream in = Panel.class.getResourceAsStream("/dev/infiltration/panel/" + file);
                BufferedReader reader =
                        new BufferedReader(new InputStreamReader(Objects.requireNonNull(in), StandardCharsets.UTF_8))) {
            return reader.lines()
                    .filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .map(line -> line.split(separator, -1))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
