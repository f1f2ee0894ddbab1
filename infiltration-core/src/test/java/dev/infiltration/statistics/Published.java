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

/** Published data sets; each file says where its numbers come from. */
public final class Published {

    private Published() {}

    /** {@return the rows of a file without its comments and heading} */
    public static List<String[]> rows(String file) {
        try (InputStream in = Published.class.getResourceAsStream("/dev/infiltration/published/" + file);
                BufferedReader reader =
                        new BufferedReader(new InputStreamReader(Objects.requireNonNull(in), StandardCharsets.UTF_8))) {
            return reader.lines()
                    .filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .map(line -> line.split(",", -1))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** {@return a column of the rows of one case} */
    public static double[] column(String file, String name, int column) {
        return values(rows(file).stream().filter(row -> row[0].equals(name)).toList(), column);
    }

    /** {@return a column of a file of one case} */
    public static double[] column(String file, int column) {
        return values(rows(file), column);
    }

    /** {@return the values of one group of a case of the small samples} */
    public static double[] group(String name, String group) {
        return values(
                rows("small-sample.csv").stream()
                        .filter(row -> row[0].equals(name) && row[1].equals(group))
                        .toList(),
                2);
    }

    private static double[] values(List<String[]> rows, int column) {
        if (rows.isEmpty()) {
            throw new IllegalArgumentException("no such case");
        }
        return rows.stream().mapToDouble(row -> Double.parseDouble(row[column])).toArray();
    }
}
