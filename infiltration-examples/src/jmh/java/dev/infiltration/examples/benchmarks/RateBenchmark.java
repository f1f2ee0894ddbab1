// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.benchmarks;

import dev.infiltration.field.FieldBook;
import dev.infiltration.field.Ring;
import dev.infiltration.field.TestRun;
import dev.infiltration.rate.Distribution;
import dev.infiltration.rate.RateEquation;
import dev.infiltration.rate.RateOutcome;
import dev.infiltration.rate.RingTerm;
import dev.infiltration.rate.Term;
import dev.infiltration.rate.Uncertainty;
import dev.infiltration.rate.UncertaintyBudget;
import dev.infiltration.rate.Water;
import dev.infiltration.review.Review;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.InfiltrationRate;
import dev.infiltration.units.Reading;
import java.io.IOException;
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

/** What one rate costs: on bare numbers, on the records, with its uncertainty, and as a run's share of a review. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class RateBenchmark {

    private static final int RUNS = 4;

    private double kilograms = 18.00;
    private double millimetres = 300;
    private double seconds = 141.7;
    private FieldBook book;
    private Ring ring;
    private TestRun run;
    private RateEquation equation;
    private UncertaintyBudget budget;

    /** A rate with its relative standard uncertainty. */
    public record Sure(double millimetresPerHour, double relativeUncertainty) {}

    /** Reads the demo. */
    @Setup
    public void prepare() throws IOException {
        book = DemoVisit.book();
        ring = book.rings().get(0);
        run = book.visits().get(0).tests().get(0).runs().get(0);
        equation = RateEquation.asPublished();
        budget = fullBudget();
        int runs = Review.of(book).runs().size();
        if (runs != RUNS) {
            throw new IllegalStateException("expected " + RUNS + " runs in the demo's visit, got " + runs);
        }
    }

    /** A term of every kind; the deviations beyond reading are invented. */
    private UncertaintyBudget fullBudget() {
        double rate = RateEquation.millimetresPerHour(kilograms, millimetres, seconds);
        return UncertaintyBudget.of(new InfiltrationRate(rate), kilograms, millimetres, seconds)
                .withMass("before", Reading.of("20.42", FieldUnit.KILOGRAM))
                .withMass("after", Reading.of("2.42", FieldUnit.KILOGRAM))
                .with(RingTerm.MASS_ERROR, Term.of("balance", 0, Distribution.rectangular(0.01)))
                .withDiameters(
                        "ring",
                        List.of(Reading.of("300", FieldUnit.MILLIMETRE), Reading.of("301", FieldUnit.MILLIMETRE)))
                .withElapsed("watch", Reading.of("141.7", FieldUnit.SECOND))
                .with(RingTerm.REACTION, Term.of("reaction", 0, Distribution.normal(0.3)))
                .with(RingTerm.END_POINT, Term.of("end point", 0, Distribution.rectangular(2)))
                .withWater("water", Water.at(15), Water.at(25));
    }

    @Benchmark
    public double onNumbers() {
        return RateEquation.millimetresPerHour(kilograms, millimetres, seconds);
    }

    @Benchmark
    public Sure onNumbersWithFullBudget() {
        return new Sure(
                RateEquation.millimetresPerHour(kilograms, millimetres, seconds),
                budget.relativeStandardUncertainty(kilograms, millimetres, seconds));
    }

    @Benchmark
    public RateOutcome onRecords() {
        return equation.rate(ring, run);
    }

    @Benchmark
    public Sure onRecordsWithFullBudget() {
        double rate = equation.rate(ring, run).rate().orElseThrow().millimetresPerHour();
        return new Sure(rate, budget.relativeStandardUncertainty(kilograms, millimetres, seconds));
    }

    @Benchmark
    public Uncertainty termByTerm() {
        return budget.uncertainty();
    }

    @Benchmark
    public Uncertainty fromReadings() {
        return fullBudget().uncertainty();
    }

    @Benchmark
    @OperationsPerInvocation(RUNS)
    public Review inAReview() {
        return Review.of(book);
    }
}
