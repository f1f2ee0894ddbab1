// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.verification;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.CsvSource;

/** Tables of published figures: those that stand at the tests, and those that stand in files. */
public final class Table {

    /** A comma that no quotation marks hold. */
    private static final Pattern COMMA = Pattern.compile(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)");

    private static final String SAME = "the same";

    private Table() {}

    /**
     * A row of a table.
     *
     * @param heading the names of its columns
     * @param cells   what stands in them
     */
    public record Row(List<String> heading, List<String> cells) {

        /** {@return what stands in a column} */
        public String text(String column) {
            int index = heading.indexOf(column);
            if (index < 0) {
                throw new IllegalArgumentException("column: expected one of " + heading + ", got " + column);
            }
            return index < cells.size() ? cells.get(index) : "";
        }

        /** {@return the number in a column} */
        public double number(String column) {
            return Double.parseDouble(text(column));
        }

        /** {@return whether something stands in a column} */
        public boolean has(String column) {
            return !text(column).isEmpty();
        }

        /** {@return a figure of this row, off by {@code tolerance} at most} */
        public Check within(double tolerance, String what, String column, double got) {
            return Check.within(tolerance, what, source(), text(column), got);
        }

        /** {@return a figure of this row, off by {@code part} of it at most} */
        public Check relative(double part, String what, String column, double got) {
            return Check.relative(part, what, source(), text(column), got);
        }

        /** {@return a figure of this row that must be the same} */
        public Check exact(String what, String column, Object got) {
            return Check.exact(what, source(), text(column), got);
        }

        private String source() {
            return text(heading.contains("source and mark") ? "source and mark" : "source");
        }
    }

    /** {@return the rows of the table at a test} */
    public static Stream<Row> at(Class<?> test, String name) {
        Method method = Arrays.stream(test.getDeclaredMethods())
                .filter(each -> each.getName().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("name: no test " + name + " of " + test));
        List<String> lines = method.getAnnotation(CsvSource.class)
                .textBlock()
                .lines()
                .map(String::strip)
                .toList();
        List<String> heading = cells(lines.get(0).substring(1), "\\|");
        List<Row> rows = new ArrayList<>();
        lines.stream()
                .filter(line -> !line.isEmpty() && !line.startsWith("#"))
                .forEach(line -> rows.add(new Row(heading, named(rows, cells(line, "\\|")))));
        return rows.stream();
    }

    /** A row whose source is the same as that of the row before it gets the name of that one. */
    private static List<String> named(List<Row> before, List<String> cells) {
        String source = cells.get(cells.size() - 1);
        if (!source.startsWith(SAME) || before.isEmpty()) {
            return cells;
        }
        List<String> last = before.get(before.size() - 1).cells();
        String name =
                last.get(last.size() - 1).split("[:(]|, recomputed| by ", 2)[0].strip();
        List<String> named = new ArrayList<>(cells);
        named.set(cells.size() - 1, name + source.substring(SAME.length()));
        return named;
    }

    /** {@return the rows of a file of a module's test resources} */
    public static Stream<Row> file(String module, String name) {
        List<String> lines = lines(path(module, name));
        List<String> heading = cells(lines.get(0), ",");
        return lines.stream().skip(1).map(line -> new Row(heading, quoted(line)));
    }

    /** {@return the rows of a file without a heading} */
    public static Stream<Row> file(String module, String name, List<String> heading) {
        return lines(path(module, name)).stream().map(line -> new Row(heading, quoted(line)));
    }

    private static Path path(String module, String name) {
        return Path.of("..", module, "src", "test", "resources", "dev", "infiltration")
                .resolve(name);
    }

    private static List<String> lines(Path file) {
        try (Stream<String> lines = Files.lines(file)) {
            return lines.filter(line -> !line.startsWith("#")).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> cells(String line, String separator) {
        return Arrays.stream(line.split(separator, -1)).map(String::strip).toList();
    }

    private static List<String> quoted(String line) {
        return Arrays.stream(COMMA.split(line, -1))
                .map(cell -> cell.replace("\"", "").strip())
                .toList();
    }
}
