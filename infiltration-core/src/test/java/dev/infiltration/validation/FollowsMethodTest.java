// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.validation;

import static dev.infiltration.Amounts.at;
import static dev.infiltration.Amounts.kg;
import static dev.infiltration.Amounts.min;
import static dev.infiltration.Amounts.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.Season;
import dev.infiltration.check.Checker;
import dev.infiltration.check.Finding;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Visit;
import dev.infiltration.method.Methods;
import dev.infiltration.rule.Effect;
import jakarta.validation.ConstraintDeclarationException;
import jakarta.validation.ConstraintViolation;
import jakarta.validation.Valid;
import jakarta.validation.Validator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hibernate.validator.HibernateValidator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class FollowsMethodTest {

    record Inspection(@FollowsMethod FieldBook book) {}

    record Everything(
            @FollowsMethod(effect = Effect.CAUTION) FieldBook book) {}

    record Walk(@FollowsMethod Visit visit) {}

    record Walks(List<@FollowsMethod Visit> visits) {}

    record Spot(@FollowsMethod LocationTest test) {}

    private static Visit visit(Season season) {
        return season.book().visits().get(0);
    }

    private static LocationTest test(Season season, int index) {
        return visit(season).tests().get(index);
    }

    private static Map<String, String> messages(Object host) {
        return Validators.messages(Validators.DEFAULT.validate(host));
    }

    private static Set<String> paths(Object host) {
        return messages(host).keySet();
    }

    @Test
    void cleanRecordsAreValid() {
        assertEquals(Map.of(), messages(new Everything(Season.si().book())));
        assertEquals(Map.of(), messages(new Walk(visit(Season.si()))));
        assertEquals(Map.of(), messages(new Walks(List.of(visit(Season.si())))));
        assertEquals(Map.of(), messages(new Spot(test(Season.si(), 0))));
    }

    @Test
    void nullIsValid() {
        assertEquals(Map.of(), messages(new Inspection(null)));
        assertEquals(Map.of(), messages(new Walk(null)));
        assertEquals(Map.of(), messages(new Spot(null)));
    }

    static Stream<Arguments> places() {
        return Stream.of(
                place("book.visits[0]", season -> season.visit(visit -> visit.withSwept(false))),
                place("book.visits[0].surface", season -> season.visit(visit -> visit.withSurface(""))),
                place("book.visits[0].weather", season -> season.weather(weather -> weather.withRainFrom(at("07:00")))),
                place("book.visits[0].tests[2]", season -> season.test(2, test -> test.withPreWet(null))),
                place("book.visits[0].tests[1].ring", season -> season.test(1, test -> test.withRing("R9"))),
                place("book.visits[0].tests[1].preWet.water", FollowsMethodTest::heavyPreWet),
                place("book.visits[0].tests[2].runs[1]", season -> season.run(2, 1, run -> run.withDelay(min("6")))),
                place("book.visits[0].tests[0].runs[1].water", season -> season.run(0, 1, r -> r.withWater(kg("17")))),
                place("book.rings[0]", season -> season.ring(ring -> ring.withInsideDiameter(mm("280")))),
                place("book.instruments[1].id", season -> season.instrument(1, watch -> watch.withId(""))),
                place("book.visits[0].instruments[1].<list element>", FollowsMethodTest::unknownWatch));
    }

    private static Arguments place(String path, UnaryOperator<Season> change) {
        return Arguments.of(path, change.apply(Season.si()).book());
    }

    private static Season heavyPreWet(Season season) {
        return season.preWet(1, wet -> wet.withWater(kg("3.70")));
    }

    private static Season unknownWatch(Season season) {
        return season.visit(visit -> visit.withInstruments(List.of("B1", "W9", "L1", "W1")));
    }

    private static Season unswept() {
        return Season.si().visit(visit -> visit.withSwept(false));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("places")
    void violationStandsAtTheProperty(String path, FieldBook book) {
        Set<String> paths = paths(new Everything(book));
        assertTrue(paths.contains(path), paths::toString);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("places")
    void everyFindingIsAViolationOfItsOwn(String path, FieldBook book) {
        Set<ConstraintViolation<Everything>> violations = Validators.DEFAULT.validate(new Everything(book));
        List<Finding> findings = Checker.withDefaults().check(book).findings();
        assertEquals(
                findings.stream()
                        .map(finding -> finding.where() + " " + finding.message())
                        .sorted()
                        .toList(),
                violations.stream()
                        .map(violation ->
                                Validators.pointer(violation.getPropertyPath()) + " " + violation.getMessage())
                        .sorted()
                        .toList());
        assertEquals(
                Set.copyOf(findings),
                violations.stream().map(Validators::finding).collect(Collectors.toSet()));
    }

    record Cascading(
            @Valid @FollowsMethod(effect = Effect.OMISSION) FieldBook book) {}

    @Test
    void pathsAreThoseOfTheProvidersOwnCascade() {
        FieldBook book = Season.si()
                .visit(visit -> visit.withDate(null))
                .test(1, test -> test.withRing("").withLocation(""))
                .book();
        Map<Boolean, Set<Object>> byOrigin = Validators.DEFAULT.validate(new Cascading(book)).stream()
                .filter(violation -> Validators.finding(violation) == null
                        || Validators.finding(violation).rule().equals("data.required"))
                .collect(Collectors.partitioningBy(
                        violation -> Validators.finding(violation) == null,
                        Collectors.mapping(ConstraintViolation::getPropertyPath, Collectors.toSet())));
        assertEquals(3, byOrigin.get(true).size());
        assertEquals(byOrigin.get(true), byOrigin.get(false));
    }

    @Test
    void visitAndTestStandAlone() {
        Season season = heavyPreWet(Season.si()).test(2, test -> test.withPreWet(null));
        Visit visit = visit(season);
        assertEquals(Set.of("visit.tests[1].preWet.water", "visit.tests[2]"), paths(new Walk(visit)));
        assertEquals(
                Set.of("visits[0].<list element>.tests[1].preWet.water", "visits[0].<list element>.tests[2]"),
                paths(new Walks(List.of(visit))));
        assertEquals(Set.of("test.preWet.water"), paths(new Spot(test(season, 1))));
        assertEquals(Set.of("test"), paths(new Spot(test(season, 2))));
    }

    interface Desk {
        void take(@FollowsMethod LocationTest test);
    }

    @Test
    void standsOnParameters() throws NoSuchMethodException {
        Desk desk = test -> {};
        LocationTest unwetted = test(Season.si(), 0).withPreWet(null);
        var violations = Validators.DEFAULT
                .forExecutables()
                .validateParameters(
                        desk, Desk.class.getDeclaredMethod("take", LocationTest.class), new Object[] {unwetted});
        assertEquals(1, violations.size());
    }

    record Weighed(
            @FollowsMethod(effect = Effect.NO_RATE) FieldBook book,

            @FollowsMethod FieldBook same) {}

    @Test
    void onlyWhatWeighsEnoughIsAViolation() {
        FieldBook book = heavyPreWet(Season.si()).book();
        assertEquals(Set.of("same.visits[0].tests[1].preWet.water"), paths(new Weighed(book, book)));
    }

    interface Submitted {}

    record Draft(
            @FollowsMethod(effect = Effect.NO_RATE) @FollowsMethod(groups = Submitted.class)
            FieldBook book) {}

    @Test
    void severalStandForDifferentGroups() {
        Draft draft = new Draft(unswept().book());
        assertEquals(Set.of(), Validators.DEFAULT.validate(draft));
        assertEquals(1, Validators.DEFAULT.validate(draft, Submitted.class).size());
    }

    record Named(
            @FollowsMethod(method = "C1701", effect = Effect.CAUTION)
            FieldBook book) {}

    @Test
    void methodOfTheConstraintWinsOverThatOfTheVisit() {
        String told = messages(new Named(Season.si().book())).get("book.visits[0]");
        assertTrue(told.contains("pavers"), told);
    }

    record Unknown(
            @FollowsMethod(method = "pervious-concreet") Visit visit) {}

    @Test
    void unknownMethodIsAMistakeInTheDeclaration() {
        var thrown = assertThrows(
                ConstraintDeclarationException.class,
                () -> Validators.DEFAULT.validate(new Unknown(visit(Season.si()))));
        assertTrue(thrown.getMessage().contains("pervious-concreet"), thrown.getMessage());
    }

    record National(
            @FollowsMethod(method = "harbour", effect = Effect.CAUTION)
            Visit visit) {}

    @Test
    void hostHandsInItsOwnChecker() {
        Methods methods = Methods.builtIn()
                .with(Methods.utilityPractice().withId("harbour").withRunsPerDay(1));
        Validator validator = Validators.by(Checker.withDefaults().withMethods(methods));
        assertEquals(
                Set.of("visit.tests[0].runs[1]", "visit.tests[1].runs[1]", "visit.tests[2].runs[1]"),
                Validators.messages(validator.validate(new National(visit(Season.si()))))
                        .keySet());
        assertEquals(Set.of(), validator.validate(new Spot(test(Season.si(), 0))));
    }

    record Labelled(
            @FollowsMethod(message = "{rule} - {finding} ({max})")
            Visit visit) {}

    @Test
    void messageMayNameTheRule() {
        Labelled labelled = new Labelled(visit(unswept()));
        assertEquals(
                "visit.unswept - loose material was not broomed off: not swept (required: swept) ({max})",
                messages(labelled).get("visit"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "${7*7}",
                "{rule}",
                "{finding}",
                "{jakarta.validation.constraints.NotNull.message}",
                "\\",
                "\\\\{",
                "}$\\{",
                "\\}"
            })
    void textOfARecordIsNeverInterpolated(String id) {
        FieldBook book = Season.si().visit(visit -> visit.withSurface(id)).book();
        assertEquals(
                "names a record that is not in the book: no surface " + id,
                messages(new Inspection(book)).get("book.visits[0].surface"));
    }

    @Test
    void noExpressionLanguageIsThere() {
        assertThrows(ClassNotFoundException.class, () -> Class.forName("jakarta.el.ExpressionFactory"));
    }

    /** The build runs these tests under two providers and says which. */
    @Test
    void providerIsTheOneMeant() {
        String version = HibernateValidator.class.getPackage().getImplementationVersion();
        assertEquals(System.getProperty("validator.version"), version);
    }
}
