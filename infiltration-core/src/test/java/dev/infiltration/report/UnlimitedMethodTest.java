// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import dev.infiltration.Amounts;
import dev.infiltration.Season;
import dev.infiltration.check.Checker;
import dev.infiltration.field.ReadBook;
import dev.infiltration.method.Band;
import dev.infiltration.method.Limit;
import dev.infiltration.method.Methods;
import dev.infiltration.method.TestMethod;
import dev.infiltration.plan.ExpectedRate;
import dev.infiltration.plan.VisitPlan;
import dev.infiltration.review.Review;
import dev.infiltration.units.InfiltrationRate;
import java.util.stream.Stream;
import javax.measure.Quantity;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A method that sets no limit is checked, planned and reported without one. */
class UnlimitedMethodTest {

    static Stream<Limit<?>> limits() {
        return Limit.all().stream();
    }

    @ParameterizedTest
    @MethodSource("limits")
    void limitThatIsAbsentIsNeitherCheckedNorPrintedAsNull(Limit<?> limit) {
        TestMethod method = without(limit, Methods.unitPavement());
        Methods methods = Methods.builtIn().with(method);
        Review review = Review.of(
                ReadBook.of(Season.si().book()),
                Checker.withDefaults().withMethods(methods).withToday(Season.TODAY));
        VisitReport.all(review).forEach(report -> assertNoNull(report.markdown()));
        assertNoNull(FieldForm.of(method).html());
        assertNoNull(VisitPlan.of(
                        method,
                        Season.si().book().sites().get(0).surfaces().get(0),
                        ExpectedRate.of(new InfiltrationRate(2540)))
                .withRing(Amounts.mm("300"))
                .text());
        assertEquals(Band.unlimited(), method.limit(limit));
    }

    private static <Q extends Quantity<Q>> TestMethod without(Limit<Q> limit, TestMethod method) {
        return method.with(limit, Band.unlimited());
    }

    private static void assertNoNull(String text) {
        assertFalse(text.contains("null"), text);
    }
}
