// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import dev.infiltration.check.PouringAt;
import dev.infiltration.check.TestAt;
import dev.infiltration.check.VisitAt;
import dev.infiltration.field.Ring;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What a report of a ring test states of each test beside the items of its method's data: prewetting time, mass, inside
 * diameter, time, rate, and the number of tests at the location.
 *
 * <p>Source: ASTM C1701/C1701M clause 10.1 and C1781/C1781M (memory).
 */
final class TestFigures {

    private static final List<String> HEADS =
            List.of("Test", "Prewetting time", "Mass", "Inside diameter", "Time", "Rate", "Tests at the location");

    private final RateWords words;
    private final List<TestAt> tests;
    private final Map<@Nullable String, AtLocation> byLocation = new HashMap<>();
    private final List<List<Phrase>> rows = new ArrayList<>();
    private final List<Phrase> missing = new ArrayList<>();

    TestFigures(VisitAt visit, RateWords words) {
        this.words = words;
        this.tests = visit.tests().stream().filter(test -> test.test().isMade()).toList();
        Map<@Nullable String, List<TestAt>> grouped = new HashMap<>();
        tests.forEach(test -> grouped.computeIfAbsent(test.test().location(), key -> new ArrayList<>())
                .add(test));
        grouped.forEach((location, made) -> byLocation.put(location, AtLocation.of(made)));
        tests.forEach(this::add);
    }

    /**
     * What the tests of one location have in common.
     *
     * @param preWet the first prewetting that is not void
     * @param number the number of tests: runs that are not void, or without one the discontinued prewettings
     */
    private record AtLocation(Optional<PouringAt> preWet, long number) {

        static AtLocation of(List<TestAt> tests) {
            long runs = tests.stream()
                    .flatMap(test -> counting(test.runs().stream()))
                    .count();
            Optional<PouringAt> preWet = tests.stream()
                    .flatMap(test -> counting(test.preWet().stream()))
                    .findFirst();
            return new AtLocation(preWet, runs > 0 ? runs : discontinued(tests));
        }

        private static long discontinued(List<TestAt> tests) {
            return tests.stream()
                    .flatMap(test -> test.preWet().stream())
                    .filter(TestFigures::isTest)
                    .count();
        }
    }

    private AtLocation at(TestAt test) {
        return Objects.requireNonNull(byLocation.get(test.test().location()));
    }

    /** {@return the figures, a row for each run; empty where no test was made} */
    Optional<Block> table() {
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(Block.Table.of("Figures of the tests, as a report states them", HEADS, rows));
    }

    /** {@return what is missing of them, each with its test} */
    List<Phrase> missing() {
        return tests.isEmpty() ? List.of(Phrase.of("every figure of a test, for none was made")) : missing;
    }

    private void add(TestAt test) {
        Phrase name = name(test);
        Phrase preWetting = stated(
                preWet(test).map(preWet -> preWet.pouring().elapsed()).map(Phrase::written), "prewetting time", name);
        Phrase diameter =
                stated(test.ring().filter(Ring::isUsable).map(ProvenanceSection::diameter), "inside diameter", name);
        Phrase number = Phrase.of(String.valueOf(at(test).number()));
        for (PouringAt pouring : pourings(test)) {
            Phrase which = name.and(which(pouring));
            rows.add(List.of(
                    which,
                    preWetting,
                    stated(ProvenanceSection.mass(pouring.pouring()), "mass", which),
                    diameter,
                    stated(Optional.ofNullable(pouring.pouring().elapsed()).map(Phrase::written), "time", which),
                    rate(pouring, which),
                    number));
        }
    }

    private Phrase stated(Optional<Phrase> value, String what, Phrase where) {
        if (value.isEmpty()) {
            missing.add(Phrase.of(what + " of ").and(where));
        }
        return value.orElse(Phrase.NOT_RECORDED);
    }

    /** A prewetting that drained is no test: without a run there is no rate. */
    private Phrase rate(PouringAt pouring, Phrase where) {
        boolean isTest = isTest(pouring);
        if (!isTest || pouring.outcome().figure().isEmpty()) {
            missing.add(Phrase.of("rate of ").and(where));
        }
        return Phrase.of(isTest ? words.text(pouring.outcome()) : "no rate: no run was made");
    }

    private static boolean isTest(PouringAt pouring) {
        return pouring.isRun() || pouring.pouring().isStopped();
    }

    private static Phrase name(TestAt test) {
        String id = test.test().id();
        Phrase location = Phrase.written(test.test().location());
        return id == null ? location : location.and(", test ").and(Phrase.written(id));
    }

    private static String which(PouringAt pouring) {
        return pouring.isRun() ? ", run " + (pouring.test().runs().indexOf(pouring) + 1) : ", prewetting";
    }

    /** Its runs that are not void, else all it has: a prewetting stands for a test without a run. */
    private static List<PouringAt> pourings(TestAt test) {
        List<PouringAt> runs = counting(test.runs().stream()).toList();
        List<PouringAt> all = test.runs().isEmpty() ? test.preWet().stream().toList() : test.runs();
        return runs.isEmpty() ? all : runs;
    }

    private static Stream<PouringAt> counting(Stream<PouringAt> pourings) {
        return pourings.filter(pouring -> !pouring.pouring().isVoid());
    }

    /** Its own prewetting, else that of another test of the location. */
    private Optional<PouringAt> preWet(TestAt test) {
        return counting(test.preWet().stream()).findFirst().or(() -> at(test).preWet());
    }
}
