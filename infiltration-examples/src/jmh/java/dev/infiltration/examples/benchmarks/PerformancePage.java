// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.CommandLineOptionException;
import org.openjdk.jmh.runner.options.CommandLineOptions;
import org.openjdk.jmh.runner.options.Options;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** Runs the benchmarks and writes the measured part of {@code docs/performance.md}. */
public final class PerformancePage {

    private static final Path PAGE = Path.of("..", "docs", "performance.md");
    private static final String BEGIN = "<!-- measured: begin -->\n";
    private static final String END = "<!-- measured: end -->";

    /** One table: every row is set against the first. */
    private record Table(String title, Class<?> benchmarks, List<Row> rows) {}

    private record Row(String method, String words) {}

    private static final List<Table> TABLES = List.of(
            new Table(
                    "one rate",
                    RateBenchmark.class,
                    List.of(
                            new Row("onNumbers", "the bare equation"),
                            new Row("onNumbersWithFullBudget", "with its uncertainty by a full budget of ten terms"),
                            new Row("onRecords", "of the records of ring and run"),
                            new Row("onRecordsWithFullBudget", "of the records, with its uncertainty"),
                            new Row("termByTerm", "the budget's uncertainty term by term, with degrees of freedom"),
                            new Row("fromReadings", "a full budget made from readings, and its uncertainty"),
                            new Row("inAReview", "a run's share of the review of one visit"))),
            new Table(
                    "one visit of three locations and four runs",
                    VisitBenchmark.class,
                    List.of(
                            new Row("checked", "`Checker.check`"),
                            new Row("oneTestWhileTyping", "`Typing.findings` of one test"),
                            new Row("reviewed", "`Review.of`, the check in it"),
                            new Row("validatedForParts", "a provider validates the records' own annotations"),
                            new Row("validatedAlone", "a provider validates `@FollowsMethod` on the visit"),
                            new Row("validatedInItsBook", "a provider validates `@FollowsMethod` on the book"))),
            new Table(
                    "one test's share of a book of 9000 tests",
                    BookBenchmark.class,
                    List.of(
                            new Row("checked", "`Checker.check`"),
                            new Row("reviewed", "`Review.of`, the check in it"),
                            new Row("read", "reading the book from JSON"),
                            new Row("written", "writing the book as JSON"),
                            new Row("reviewWritten", "writing the review as JSON"))));

    private PerformancePage() {}

    /**
     * Measures all and writes the page; with the name of a benchmark, measures that alone and writes none.
     *
     * @param arguments options of JMH
     */
    public static void main(String[] arguments) throws CommandLineOptionException, RunnerException, IOException {
        CommandLineOptions line = new CommandLineOptions(arguments);
        Options options =
                new OptionsBuilder().parent(line).addProfiler(GCProfiler.class).build();
        Map<String, RunResult> results = byName(new Runner(options).run());
        if (line.getIncludes().isEmpty()) {
            write(conditions(results)
                    + TABLES.stream().map(table -> text(table, results)).collect(Collectors.joining()));
        }
    }

    private static Map<String, RunResult> byName(Collection<RunResult> results) {
        return results.stream()
                .collect(Collectors.toMap(result -> result.getParams().getBenchmark(), result -> result));
    }

    private static String conditions(Map<String, RunResult> results) {
        var run = results.values().iterator().next().getParams();
        return String.format(
                Locale.ROOT,
                "Measured on %s with Java %s, %d processors; forks %d, measurements in each %d of %s.%n",
                LocalDate.now(ZoneOffset.UTC),
                Runtime.version().feature(),
                Runtime.getRuntime().availableProcessors(),
                run.getForks(),
                run.getMeasurement().getCount(),
                run.getMeasurement().getTime());
    }

    private static String text(Table table, Map<String, RunResult> results) {
        RunResult first = result(table, table.rows().get(0), results);
        return table.rows().stream()
                .map(row -> text(row, result(table, row, results), first))
                .collect(Collectors.joining(
                        "",
                        "\n| " + table.title()
                                + " | time | within | times the first | allocated |\n|---|---:|---:|---:|---:|\n",
                        ""));
    }

    private static RunResult result(Table table, Row row, Map<String, RunResult> results) {
        return results.get(table.benchmarks().getName() + "." + row.method());
    }

    private static String text(Row row, RunResult result, RunResult first) {
        Result<?> time = result.getPrimaryResult();
        return String.format(
                Locale.ROOT,
                "| %s | %s | ±%.0f %% | %s | %s |%n",
                row.words(),
                time(time.getScore()),
                100 * time.getScoreError() / time.getScore(),
                digits(time.getScore() / first.getPrimaryResult().getScore()),
                bytes(result.getSecondaryResults().get("gc.alloc.rate.norm").getScore()));
    }

    private static String time(double nanoseconds) {
        return nanoseconds < 1e3
                ? digits(nanoseconds) + " ns"
                : nanoseconds < 1e6 ? digits(nanoseconds / 1e3) + " µs" : digits(nanoseconds / 1e6) + " ms";
    }

    private static String bytes(double bytes) {
        return bytes < 1
                ? "nothing"
                : bytes < 10_000 ? String.format(Locale.ROOT, "%.0f B", bytes) : digits(bytes / 1000) + " kB";
    }

    private static String digits(double value) {
        return String.format(Locale.ROOT, value < 1 ? "%.2f" : value < 10 ? "%.1f" : "%.0f", value);
    }

    private static void write(String measured) throws IOException {
        String page = Files.readString(PAGE);
        int from = page.indexOf(BEGIN) + BEGIN.length();
        int to = page.indexOf(END);
        Files.writeString(PAGE, page.substring(0, from) + measured + page.substring(to));
    }
}
