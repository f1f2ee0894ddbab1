// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import dev.infiltration.field.Place;
import dev.infiltration.method.Basis;
import dev.infiltration.rule.Bias;
import dev.infiltration.rule.Effect;
import dev.infiltration.rule.RuleId;
import java.util.List;
import java.util.Objects;

/**
 * A requirement that was not met, something that was not recorded, or a note on something that may matter.
 *
 * <p>Findings are immutable and are made by a {@link Checker}. Callers branch on {@link #rule} and {@link #effect}; texts may
 * be reworded.
 */
public final class Finding {

    private final RuleId ruleId;
    private final Effect effect;
    private final Bias bias;
    private final Place where;
    private final String subject;
    private final String observed;
    private final String allowed;
    private final String message;
    private final String remedy;
    private final Basis basis;
    private final String part;
    private final String key;

    private Finding(
            RuleId ruleId,
            Effect effect,
            Bias bias,
            Place where,
            String subject,
            String observed,
            String allowed,
            String message,
            String remedy,
            Basis basis,
            String part,
            String key) {
        this.ruleId = ruleId;
        this.effect = effect;
        this.bias = bias;
        this.where = where;
        this.subject = subject;
        this.observed = observed;
        this.allowed = allowed;
        this.message = message;
        this.remedy = remedy;
        this.basis = basis;
        this.part = part;
        this.key = key;
    }

    static Finding of(
            RuleId rule, Effect effect, Bias bias, Place where, String subject, RuleResult result, Basis basis) {
        return new Finding(
                rule,
                effect,
                bias,
                where,
                subject,
                result.observed(),
                result.allowed(),
                result.message(),
                result.remedy(),
                basis,
                "",
                "");
    }

    /** {@return the stable id of the rule, for example {@code run.mass}} */
    public String rule() {
        return ruleId.id();
    }

    /** {@return the rule} */
    public RuleId ruleId() {
        return ruleId;
    }

    /** {@return the effect, after the policy was applied} */
    public Effect effect() {
        return effect;
    }

    /** {@return the direction in which this finding may bias the rate} */
    public Bias bias() {
        return bias;
    }

    /** {@return the place in the book or document, printed as a JSON Pointer} */
    public Place where() {
        return where;
    }

    /** {@return the ids in words: {@code V1, A1, run 2}} */
    public String subject() {
        return subject;
    }

    /** {@return what was found, with units} */
    public String observed() {
        return observed;
    }

    /** {@return what is required or recommended, with units; empty if nothing can be named} */
    public String allowed() {
        return allowed;
    }

    /** {@return the finding in a sentence} */
    public String message() {
        return message;
    }

    /** {@return what can still be done, in the field where possible} */
    public String remedy() {
        return remedy;
    }

    /** {@return the standard and clause, or common practice, and the quality of that source} */
    public Basis basis() {
        return basis;
    }

    /**
     * {@return the identity of this finding}, unique in a checked book
     *
     * <p>It is made of the rule and the ids of the records at its place. It stays the same if visits, tests or runs before it
     * are added or removed, and if texts are reworded. A run is named by its start, or by its number if the start is not
     * recorded; a record without an id, and a duplicate, by an ordinal. Compare keys as a whole: the form may change.
     */
    public String key() {
        return key;
    }

    /**
     * {@return this finding with another effect}
     *
     * @param effect the effect
     */
    public Finding withEffect(Effect effect) {
        return new Finding(ruleId, effect, bias, where, subject, observed, allowed, message, remedy, basis, part, key);
    }

    /**
     * {@return this finding at another place}
     *
     * @param where the place
     */
    public Finding withWhere(Place where) {
        return new Finding(ruleId, effect, bias, where, subject, observed, allowed, message, remedy, basis, part, key);
    }

    /**
     * {@return this finding with another observation, also in its message}
     *
     * @param observed what was found, with units
     */
    public Finding withObserved(String observed) {
        String other = message.replace(this.observed, observed);
        return new Finding(ruleId, effect, bias, where, subject, observed, allowed, other, remedy, basis, part, key);
    }

    Finding withRemedy(String other) {
        return new Finding(ruleId, effect, bias, where, subject, observed, allowed, message, other, basis, part, key);
    }

    /** {@return this finding about one of several records at its place} */
    Finding withPart(String id) {
        return new Finding(ruleId, effect, bias, where, subject, observed, allowed, message, remedy, basis, id, key);
    }

    Finding withKey(String other) {
        return new Finding(
                ruleId, effect, bias, where, subject, observed, allowed, message, remedy, basis, part, other);
    }

    /** {@return the id of the record it is about, if several findings of the rule may be at one place; else empty} */
    String part() {
        return part;
    }

    private List<Object> parts() {
        return List.of(ruleId, effect, bias, where, subject, observed, allowed, message, remedy, basis, part, key);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Finding finding && parts().equals(finding.parts());
    }

    @Override
    public int hashCode() {
        return Objects.hash(ruleId, where, subject, observed);
    }

    /** {@return the finding in one line} */
    @Override
    public String toString() {
        return ruleId + " " + where + " (" + subject + "): " + message;
    }
}
