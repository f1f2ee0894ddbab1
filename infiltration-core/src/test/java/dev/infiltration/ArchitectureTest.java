// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_USE_JAVA_UTIL_LOGGING;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.lang.annotation.Annotation;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The order of the packages: each uses only those above it, and only the edge reaches other people's formats. */
class ArchitectureTest {

    /** Ground floor first. */
    private static final List<String> FLOORS = List.of(
            "units",
            "field",
            "rule",
            "method",
            "statistics",
            "rate",
            "check",
            "summary",
            "compare",
            "trend",
            "plan",
            "review",
            "report",
            "exchange",
            "validation");

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("dev.infiltration");

    @TestFactory
    Stream<DynamicTest> packageUsesOnlyThoseAboveIt() {
        return IntStream.range(0, FLOORS.size() - 1)
                .mapToObj(floor -> dynamicTest(
                        FLOORS.get(floor),
                        () -> holds(noClasses()
                                .that()
                                .resideInAPackage(tree(FLOORS.get(floor)))
                                .should()
                                .dependOnClassesThat()
                                .resideInAnyPackage(trees(FLOORS.subList(floor + 1, FLOORS.size())))
                                .as(FLOORS.get(floor) + " uses a later package"))));
    }

    @Test
    void everyPackageHasItsFloor() {
        Set<String> met = CLASSES.stream()
                .map(JavaClass::getPackageName)
                .map(name -> name.split("\\.", 4)[2])
                .collect(Collectors.toCollection(TreeSet::new));
        met.removeAll(FLOORS);
        assertEquals(Set.of(), met);
    }

    @Test
    void packagesHaveNoCycle() {
        holds(slices().matching("dev.infiltration.(**)").should().beFreeOfCycles());
    }

    @Test
    void onlyExchangeReachesJackson() {
        holds(noClasses()
                .that()
                .resideOutsideOfPackage(tree("exchange"))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("tools.jackson..", "com.fasterxml.jackson.."));
    }

    @Test
    void onlyFieldAndValidationReachJakartaValidation() {
        holds(noClasses()
                .that()
                .resideOutsideOfPackages(tree("field"), tree("validation"))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("jakarta.validation..", "org.hibernate.validator.."));
    }

    @Test
    void fieldReachesNothingOfJakartaValidationButAnnotations() {
        holds(noClasses()
                .that()
                .resideInAPackage(tree("field"))
                .and()
                .haveNameNotMatching(".*\\.NamesRing(\\$.*)?") // a constraint of its own: loaded by a provider alone
                .should()
                .dependOnClassesThat(resideInAnyPackage("jakarta.validation..", "org.hibernate.validator..")
                        .and(assignableTo(Annotation.class).negate())));
    }

    @Test
    void coreNeverReachesTheExamples() {
        holds(noClasses().should().dependOnClassesThat(resideInAPackage("dev.infiltration.examples..")));
    }

    @Test
    void nothingIsPrintedOrLogged() {
        holds(NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS);
        holds(NO_CLASSES_SHOULD_USE_JAVA_UTIL_LOGGING);
        holds(noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.util.logging..", "org.slf4j..", "org.jboss.logging.."));
    }

    private static void holds(ArchRule rule) {
        rule.allowEmptyShould(true).check(CLASSES);
    }

    private static String tree(String floor) {
        return "dev.infiltration." + floor + "..";
    }

    private static String[] trees(List<String> floors) {
        return floors.stream().map(ArchitectureTest::tree).toArray(String[]::new);
    }
}
