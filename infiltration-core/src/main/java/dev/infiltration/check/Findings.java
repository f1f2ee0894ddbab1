// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import dev.infiltration.field.Place;
import dev.infiltration.method.Band;
import dev.infiltration.method.Basis;
import dev.infiltration.rule.Bias;
import dev.infiltration.rule.Effect;
import dev.infiltration.units.Reading;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.measure.Quantity;

/** Findings as they are made: one for a rule and place. */
final class Findings {

    private static final String UNSHOWN = "-unshown";

    private final Policy policy;
    private final List<Finding> found = new ArrayList<>();

    Findings(Policy policy) {
        this.policy = policy;
    }

    /** Adds a finding with the texts of its rule. */
    void add(BuiltInRule entry, Place where, String subject, String observed, String allowed, Basis basis) {
        add(entry, entry.effect(), entry.bias(), where, subject, observed, allowed, basis);
    }

    /** Adds a finding whose basis is common practice. */
    void add(BuiltInRule entry, Place where, String subject, String observed) {
        add(entry, where, subject, observed, "", Basis.commonPractice());
    }

    void add(BuiltInRule entry, Effect effect, Place where, String subject, String observed) {
        add(entry, effect, entry.bias(), where, subject, observed, "", Basis.commonPractice());
    }

    void add(
            BuiltInRule entry,
            Effect effect,
            Bias bias,
            Place where,
            String subject,
            String observed,
            String allowed,
            Basis basis) {
        add(made(entry, effect, bias, where, subject, observed, allowed, basis));
    }

    /** Adds a finding about one of several records that its place names. */
    void addPart(BuiltInRule entry, Place where, String subject, String part, String observed, String allowed) {
        add(made(entry, entry.effect(), entry.bias(), where, subject, observed, allowed, RuleBases.COMMON_PRACTICE)
                .withPart(part));
    }

    private static Finding made(
            BuiltInRule entry,
            Effect effect,
            Bias bias,
            Place where,
            String subject,
            String observed,
            String allowed,
            Basis basis) {
        String message = entry.wrong()
                + (observed.isEmpty() ? "" : ": " + observed)
                + (allowed.isEmpty() ? "" : required(effect) + allowed + ")");
        RuleResult result = new RuleResult(observed, allowed, message, entry.remedy());
        return Finding.of(entry.ruleId(), effect, bias, where, subject, result, basis);
    }

    private static String required(Effect effect) {
        return effect == Effect.CAUTION ? " (recommended: " : " (required: ";
    }

    /** A finding whose remedy names a likely entry error as something to check, where there is one. */
    void add(
            BuiltInRule entry,
            Place where,
            String subject,
            String observed,
            String allowed,
            Basis basis,
            Optional<String> entryError) {
        int before = found.size();
        add(entry, where, subject, observed, allowed, basis);
        entryError.filter(error -> found.size() > before).ifPresent(error -> {
            Finding made = found.remove(before);
            found.add(made.withRemedy(made.remedy() + "; likely entry error to check: " + error));
        });
    }

    /** A finding for a reading outside its band. */
    <Q extends Quantity<Q>> void judge(
            BuiltInRule entry, Band<Q> band, Reading<Q> reading, Place where, String subject) {
        if (!band.holds(reading)) {
            String allowed = band.in(reading.unit().system()).toString();
            add(entry, where, subject, reading.toString(), allowed, band.basis());
        }
    }

    /** Adds a finding that the policy was applied to. */
    void addAsIs(Finding finding) {
        found.add(finding);
    }

    void add(Finding finding) {
        policy.apply(finding).ifPresent(found::add);
    }

    /**
     * {@return the findings, one for each rule and place, sorted by place and then in the order of the rules}
     *
     * <p>For a duplicate record only {@code data.duplicate} is reported, and for a ring also {@code ring.unusable}. A limit that
     * was exceeded is not reported as not shown to be kept.
     */
    List<Finding> sorted() {
        Set<Place> doubled = new HashSet<>();
        for (Finding finding : found) {
            if (finding.rule().equals(BuiltInRule.DATA_DUPLICATE.id())) {
                doubled.add(finding.where());
            }
        }
        Map<Key, Finding> single = new HashMap<>();
        for (Finding finding : found) {
            if (doubled.isEmpty() || isTold(finding, doubled)) {
                single.merge(key(finding.rule(), finding), finding, Findings::graver);
            }
        }
        return single.values().stream()
                .filter(finding -> !single.containsKey(broken(finding)))
                .sorted(Comparator.comparing(Finding::where)
                        .thenComparingInt(finding -> BuiltInRule.order(finding.rule()))
                        .thenComparing(Finding::rule)
                        .thenComparing(Finding::subject))
                .toList();
    }

    private record Key(String rule, Place where, String part) {}

    /** One for a rule and place; a visit has one for each instrument whose check was overdue. */
    private static Key key(String rule, Finding finding) {
        return new Key(rule, finding.where(), finding.part());
    }

    /** The key of the exceeded limit at the same place; for a rule without such a counterpart, a key that matches nothing. */
    private static Key broken(Finding finding) {
        boolean isUnshown = finding.rule().endsWith(UNSHOWN);
        String rule = isUnshown ? finding.rule().substring(0, finding.rule().length() - UNSHOWN.length()) : "";
        return key(rule, finding);
    }

    private static Finding graver(Finding one, Finding other) {
        return other.effect().compareTo(one.effect()) < 0 ? other : one;
    }

    private static boolean isTold(Finding finding, Set<Place> doubled) {
        return finding.rule().equals(BuiltInRule.DATA_DUPLICATE.id())
                || finding.rule().equals(BuiltInRule.DATA_UNREADABLE.id())
                || finding.rule().equals(BuiltInRule.RING_UNUSABLE.id())
                || !isWithin(finding.where(), doubled);
    }

    private static boolean isWithin(Place where, Set<Place> records) {
        Place place = where;
        while (!place.isBook() && !records.contains(place)) {
            place = place.outer();
        }
        return !place.isBook();
    }
}
