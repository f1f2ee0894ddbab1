// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.benchmarks;

import dev.infiltration.check.CheckedBook;
import dev.infiltration.check.Checker;
import dev.infiltration.check.Finding;
import dev.infiltration.check.TestAt;
import dev.infiltration.check.TestEditCheck;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Visit;
import dev.infiltration.review.Review;
import dev.infiltration.rule.Effect;
import dev.infiltration.validation.FollowsMethod;
import jakarta.validation.ConstraintViolation;
import jakarta.validation.Valid;
import jakarta.validation.Validation;
import jakarta.validation.Validator;
import java.io.IOException;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.hibernate.validator.messageinterpolation.ParameterMessageInterpolator;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** What it costs to check one visit of three locations, by itself and by a validation provider. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class VisitBenchmark {

    /** A host that asks for nothing but the parts that identify records. */
    public record Parts(@Valid FieldBook book) {}

    /** A host that asks for all, with what the book around the visit tells. */
    public record WholeBook(
            @FollowsMethod(effect = Effect.CAUTION) FieldBook book) {}

    /** A host that holds the visit alone. */
    public record VisitAlone(
            @FollowsMethod(effect = Effect.CAUTION) Visit visit) {}

    private FieldBook book;
    private Checker checker;
    private Validator validator;
    private TestEditCheck typing;
    private TestAt test;
    private LocationTest typed;

    /** Reads the demo, and makes what a host makes once. */
    @Setup
    public void prepare() throws IOException {
        book = DemoVisit.book();
        checker = Checker.withDefaults();
        validator = Validation.byDefaultProvider()
                .configure()
                .messageInterpolator(new ParameterMessageInterpolator())
                .buildValidatorFactory()
                .getValidator();
        CheckedBook checked = checker.check(book);
        typing = checked.typing();
        test = checked.visits().get(0).tests().get(1);
        typed = test.test().withNote("outline chalked");
    }

    @Benchmark
    public List<Finding> checked() {
        return checker.check(book).findings();
    }

    @Benchmark
    public Review reviewed() {
        return Review.of(book);
    }

    @Benchmark
    public List<Finding> oneTestWhileTyping() {
        return typing.findings(test, typed);
    }

    @Benchmark
    public Set<ConstraintViolation<Parts>> validatedForParts() {
        return validator.validate(new Parts(book));
    }

    @Benchmark
    public Set<ConstraintViolation<WholeBook>> validatedInItsBook() {
        return validator.validate(new WholeBook(book));
    }

    @Benchmark
    public Set<ConstraintViolation<VisitAlone>> validatedAlone() {
        return validator.validate(new VisitAlone(book.visits().get(0)));
    }
}
