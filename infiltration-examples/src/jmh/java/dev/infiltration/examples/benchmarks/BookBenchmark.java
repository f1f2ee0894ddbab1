// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.benchmarks;

import dev.infiltration.check.Checker;
import dev.infiltration.check.Finding;
import dev.infiltration.exchange.FieldBookJson;
import dev.infiltration.exchange.ReviewJson;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.ReadBook;
import dev.infiltration.review.Review;
import java.io.IOException;
import java.io.StringWriter;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** What reading, checking, reviewing and writing a large book come to, per test. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class BookBenchmark {

    private static final int TESTS = 9_000;

    private FieldBook book;
    private String json;
    private Review review;
    private Checker checker;

    /** Writes the book once. */
    @Setup
    public void prepare() throws IOException {
        book = DemoVisit.repeated(TESTS / 3);
        json = written();
        review = Review.of(book);
        checker = Checker.withDefaults();
    }

    @Benchmark
    @OperationsPerInvocation(TESTS)
    public ReadBook read() {
        return FieldBookJson.withDefaults().read(json);
    }

    @Benchmark
    @OperationsPerInvocation(TESTS)
    public String written() throws IOException {
        StringWriter out = new StringWriter();
        FieldBookJson.withDefaults().write(book, out);
        return out.toString();
    }

    @Benchmark
    @OperationsPerInvocation(TESTS)
    public List<Finding> checked() {
        return checker.check(book).findings();
    }

    @Benchmark
    @OperationsPerInvocation(TESTS)
    public Review reviewed() {
        return Review.of(book);
    }

    @Benchmark
    @OperationsPerInvocation(TESTS)
    public String reviewWritten() {
        return ReviewJson.text(review);
    }
}
