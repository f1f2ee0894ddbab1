// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.season;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** What the command was asked for. */
final class Arguments {

    static final String USAGE = "usage: season [BOOK.json|BOOK.jsonl|BOOK.csv|-] [--json] [--strict] [--today DATE]"
            + " [--method FILE]... [--criterion FILE]... [--mapping FILE] [--out DIR]\n       season --reference FILE [--json] [--strict]\n       "
            + PlanOptions.USAGE;

    private @Nullable String book;
    private boolean json;
    private boolean strict;
    private boolean help;
    private @Nullable LocalDate today;
    private final List<Path> methods = new ArrayList<>();
    private final List<Path> criteria = new ArrayList<>();
    private @Nullable Path mapping;
    private @Nullable Path out;
    private @Nullable Path reference;

    private final PlanOptions plan = new PlanOptions();

    private Arguments() {}

    /** Asked for something that the command does not do. */
    static final class UsageException extends Exception {

        private static final long serialVersionUID = 1L;

        UsageException(String message) {
            super(message);
        }
    }

    static Arguments of(String... args) throws UsageException {
        Arguments arguments = new Arguments();
        Deque<String> words = new ArrayDeque<>(List.of(args));
        while (!words.isEmpty()) {
            arguments.take(words.removeFirst(), words);
        }
        arguments.plan.check(arguments.strict);
        if (arguments.reference != null && arguments.isReview()) {
            throw new UsageException("--reference goes with --json and --strict alone");
        }
        if (arguments.mapping != null && !arguments.isTable()) {
            throw new UsageException("--mapping goes with a table of runs: BOOK.csv");
        }
        return arguments;
    }

    private void take(String word, Deque<String> rest) throws UsageException {
        switch (word) {
            case "--json" -> json = true;
            case "--strict" -> strict = true;
            case "--help", "-h" -> help = true;
            case "--today" -> today = date(value(word, rest));
            case "--method" -> methods.add(path(value(word, rest)));
            case "--criterion" -> criteria.add(path(value(word, rest)));
            case "--mapping" -> mapping = path(value(word, rest));
            case "--out" -> out = path(value(word, rest));
            case "--reference" -> reference = path(value(word, rest));
            case "--plan", "--expected", "--set-up", "--zones", "--seed", "--rain" ->
                plan.take(word, value(word, rest));
            default -> takeBook(word);
        }
    }

    private boolean isReview() {
        boolean hasFiles = !methods.isEmpty() || !criteria.isEmpty() || mapping != null;
        return book != null || today != null || out != null || hasFiles || plan.isAskedFor();
    }

    private void takeBook(String word) throws UsageException {
        if (word.startsWith("-") && !word.equals("-")) {
            throw new UsageException("no such option: " + word);
        }
        if (book != null) {
            throw new UsageException("one book at a time, got " + book + " and " + word);
        }
        book = word;
    }

    private static String value(String option, Deque<String> rest) throws UsageException {
        if (rest.isEmpty()) {
            throw new UsageException(option + " needs a value");
        }
        return rest.removeFirst();
    }

    private static LocalDate date(String text) throws UsageException {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeException notDate) {
            throw new UsageException("--today: expected yyyy-MM-dd, got " + text);
        }
    }

    private static Path path(String text) throws UsageException {
        try {
            return Path.of(text);
        } catch (InvalidPathException notPath) {
            throw new UsageException("no path: " + text);
        }
    }

    /** The book's file; {@code -} for standard input; null for the demo season. */
    @Nullable
    String book() {
        return book;
    }

    /** Whether the book is a table of runs. */
    boolean isTable() {
        return book != null && book.toLowerCase(Locale.ROOT).endsWith(".csv");
    }

    /** What the headers of the table stand for; null without a mapping. */
    @Nullable
    Path mapping() {
        return mapping;
    }

    boolean json() {
        return json;
    }

    boolean strict() {
        return strict;
    }

    boolean help() {
        return help;
    }

    @Nullable
    LocalDate today() {
        return today;
    }

    List<Path> methods() {
        return methods;
    }

    List<Path> criteria() {
        return criteria;
    }

    @Nullable
    Path out() {
        return out;
    }

    /** Cases to check the rate against in place of a review; null for a review. */
    @Nullable
    Path reference() {
        return reference;
    }

    PlanOptions plan() {
        return plan;
    }
}
