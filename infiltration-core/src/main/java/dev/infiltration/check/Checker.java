// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import dev.infiltration.field.FieldBook;
import dev.infiltration.field.ReadBook;
import dev.infiltration.method.Methods;
import dev.infiltration.method.TestMethod;
import dev.infiltration.rate.RateEquation;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Checks a field book: tells what was not followed, not recorded, or is worth knowing.
 *
 * <p>It never throws at a record and changes none; the same book gives the same findings, in the same order.
 */
public final class Checker {

    /** Where a date begins first. */
    private static final ZoneOffset EARLIEST = ZoneOffset.ofHours(14);

    private final Methods methods;
    private final EquationChoice equation;
    private final Policy policy;
    private final List<Rule> rules;
    private final @Nullable LocalDate today;

    private Checker(
            Methods methods, EquationChoice equation, Policy policy, List<Rule> rules, @Nullable LocalDate today) {
        this.methods = methods;
        this.equation = equation;
        this.policy = policy;
        this.rules = List.copyOf(rules);
        this.today = today;
    }

    /** {@return a checker with the built-in methods, the published equation and the catalogue as it is written} */
    public static Checker withDefaults() {
        return new Checker(Methods.builtIn(), EquationChoice.AS_PUBLISHED, Policy.asWritten(), List.of(), null);
    }

    /**
     * {@return this checker knowing other methods}
     *
     * @param methods the methods that visits may name
     */
    public Checker withMethods(Methods methods) {
        return new Checker(Objects.requireNonNull(methods, "methods"), equation, policy, rules, today);
    }

    /**
     * {@return this checker rating by another equation}
     *
     * @param equation the equation
     */
    public Checker withEquation(RateEquation equation) {
        EquationChoice fixed = new EquationChoice(Objects.requireNonNull(equation, "equation"));
        return new Checker(methods, fixed, policy, rules, today);
    }

    /**
     * {@return this checker rating each test with the density of its water as the temperature was recorded}
     *
     * <p>A test without a recorded temperature, or with one outside 0 to 60 °C, is rated by the published constant, with the
     * finding {@code rate.water-temperature-unrecorded} or {@code rate.water-temperature-range}. Water is judged by no other
     * checker.
     */
    public Checker withRecordedWater() {
        return new Checker(methods, EquationChoice.RECORDED_WATER, policy, rules, today);
    }

    /**
     * {@return this checker with a policy of the user's own}
     *
     * @param policy rules switched off, effects changed, limits set
     * @throws IllegalArgumentException if it switches off a rule of the user that withholds rates
     */
    public Checker withPolicy(Policy policy) {
        Objects.requireNonNull(policy, "policy");
        rules.forEach(rule -> refuseOff(policy, rule));
        return new Checker(methods, equation, policy, rules, today);
    }

    /**
     * {@return this checker with one more rule}
     *
     * @param rule a rule of the user's own
     * @throws IllegalArgumentException if there is one of that id already, or it withholds rates and the policy switches it off
     */
    public Checker withRule(Rule rule) {
        refuseOff(policy, rule);
        if (rules.stream().anyMatch(other -> other.id().equals(rule.id()))) {
            throw new IllegalArgumentException("rule: there is a rule " + rule.id() + " already");
        }
        List<Rule> more = new ArrayList<>(rules);
        more.add(rule);
        return new Checker(methods, equation, policy, more, today);
    }

    private static void refuseOff(Policy policy, Rule rule) {
        if (rule.isWithholding() && policy.isOff(rule.id())) {
            throw new IllegalArgumentException("rule: " + rule.id() + " withholds rates and cannot be switched off");
        }
    }

    /**
     * {@return this checker on a given day}: no visit may be dated later
     *
     * @param today the day; without one, the day that has begun somewhere on earth
     */
    public Checker withToday(LocalDate today) {
        return new Checker(methods, equation, policy, rules, Objects.requireNonNull(today, "today"));
    }

    /**
     * {@return a book with its findings and outcomes}
     *
     * @param book the book
     */
    public CheckedBook check(FieldBook book) {
        return check(Objects.requireNonNull(book, "book"), UnreadableValues.none());
    }

    /**
     * {@return what was read of a document, with its findings and outcomes}; findings point to places of the document, and
     * each value that could not be read has its finding
     *
     * @param read what was read; where nothing was readable, an empty book is checked
     */
    public CheckedBook check(ReadBook read) {
        return check(read.readPart().orElse(FieldBook.empty()), UnreadableValues.of(read));
    }

    private CheckedBook check(FieldBook book, UnreadableValues unreadable) {
        BookIndex index = BookIndex.of(new BookLookup(book, unreadable, methods, equation));
        Findings findings = new Findings(policy);
        DataRules.judge(index, findings);
        ClockRules.maintenance(index, findings);
        RingRules.judge(index, policy.limits(), findings);
        CountRules.judge(index, findings);
        SpacingRules.judge(index, findings);
        index.spots().values().forEach(tests -> ClockRules.order(tests, findings));
        index.visits().stream().filter(visit -> !visit.isLaterDouble()).forEach(visit -> judge(visit, findings));
        FindingKeys keys = FindingKeys.inBook(index);
        List<Finding> sorted = findings.sorted().stream().map(keys::keyed).toList();
        index.withhold(sorted);
        return new CheckedBook(this, index, inDocument(index, sorted));
    }

    /** Findings at the places of the document, with those at values that could not be read. */
    private List<Finding> inDocument(BookIndex index, List<Finding> findings) {
        UnreadableValues unreadable = index.register().unreadable();
        if (unreadable.all().isEmpty() && unreadable.gaps().isEmpty()) {
            return findings;
        }
        Findings all = new Findings(policy);
        UnreadableRules.judge(index, all);
        findings.forEach(
                finding -> all.addAsIs(finding.withWhere(finding.where().in(unreadable.gaps()))));
        FindingKeys keys = FindingKeys.inDocument(index);
        return all.sorted().stream()
                .map(finding -> finding.key().isEmpty() ? keys.keyed(finding) : finding)
                .toList();
    }

    /** {@return the methods that visits may name} */
    public Methods methods() {
        return methods;
    }

    Policy policy() {
        return policy;
    }

    /** What is otherwise than catalogue and publication have it, a line each. */
    List<String> changes() {
        List<String> changes = new ArrayList<>(equation.changes());
        changes.addAll(policy.changes());
        rules.forEach(rule -> changes.add(rule.id() + ": " + rule.says(policy.limits())));
        return changes;
    }

    /** What is found at a test, by itself and beside its neighbours. */
    List<Finding> check(BookIndex neighbours, TestAt test, boolean isLaterDouble) {
        Findings findings = new Findings(policy);
        if (isLaterDouble) {
            DataRules.doubled(test, findings);
        }
        ClockRules.order(neighbours.spots().getOrDefault(BookIndex.spot(test), List.of()), findings);
        SpacingRules.judge(neighbours, findings);
        judge(test, findings);
        FindingKeys keys = FindingKeys.inBook(neighbours);
        return findings.sorted().stream()
                .filter(finding -> finding.where().isWithin(test.place()))
                .map(keys::keyed)
                .toList();
    }

    private void judge(VisitAt visit, Findings findings) {
        DataRules.judge(visit, findings);
        ClockRules.future(visit, today == null ? LocalDate.ofInstant(Instant.now(), EARLIEST) : today, findings);
        ClockRules.placed(visit, findings);
        ClockRules.existsOnce(visit, findings);
        VisitRules.method(visit, findings);
        VisitRules.freezing(visit, findings);
        VisitRules.mixedUnits(visit, findings);
        VisitRules.checkOverdue(visit, findings);
        visit.method().ifPresent(method -> judge(visit, method, findings));
        rules.forEach(rule -> rule.judge(visit, findings));
        visit.tests().forEach(test -> judge(test, findings));
    }

    private static void judge(VisitAt visit, TestMethod method, Findings findings) {
        VisitRules.surfaceType(visit, method, findings);
        VisitRules.conditions(visit, findings);
        VisitRules.rain(visit, method, findings);
        VisitRules.rainDuring(visit, findings);
        Resolutions.judge(visit, findings);
        ReportRules.judge(visit, method, findings);
    }

    private void judge(TestAt test, Findings findings) {
        if (test.isLost()) {
            return;
        }
        DataRules.judge(test, findings);
        TestRules.made(test, findings);
        TestRules.freezing(test, findings);
        equation.judge(test, findings);
        TestMethod method = test.visit().methodOrNull();
        if (method != null) {
            TestRules.hotSurface(test, method, findings);
            TestRules.preWetAbsent(test, findings);
            TestRules.slope(test, method, findings);
        }
        PouringAt preWet = test.countingPreWet();
        if (preWet != null) {
            judgePreWet(preWet, method, findings);
        }
        test.runs().forEach(run -> judgeRun(run, method, findings));
        rules.forEach(rule -> rule.judge(test, policy.limits(), findings));
    }

    private void judgePreWet(PouringAt preWet, @Nullable TestMethod method, Findings findings) {
        ClockRules.judge(preWet, findings);
        PouringRules.discontinued(preWet, findings);
        PouringRules.preWetEndUnrecorded(preWet, findings);
        rules.forEach(rule -> rule.judge(preWet, findings));
        if (method != null) {
            VisitRules.rainDuring(preWet, findings);
            PouringRules.preWetMass(preWet, method, findings);
            PouringRules.head(preWet, method, findings);
        }
    }

    private void judgeRun(PouringAt run, @Nullable TestMethod method, Findings findings) {
        if (run.isLost()) {
            return;
        }
        if (run.pouring().isVoid()) {
            PouringRules.isVoid(run, findings);
            return;
        }
        ClockRules.judge(run, findings);
        PouringRules.standing(run, findings);
        PouringRules.unusable(run, findings);
        PouringRules.waterByVolume(run, findings);
        PouringRules.discontinued(run, findings);
        PouringRules.endUnrecorded(run, findings);
        PouringRules.event(run, findings);
        rules.forEach(rule -> rule.judge(run, findings));
        RatioRules.judge(run, policy.limits(), findings);
        if (method != null) {
            VisitRules.rainDuring(run, findings);
            PouringRules.mass(run, method, findings);
            PouringRules.poursDisagree(run, method, findings);
            DelayRules.judge(run, method, findings);
            PouringRules.tooMany(run, method, findings);
            PouringRules.head(run, method, findings);
        }
    }
}
