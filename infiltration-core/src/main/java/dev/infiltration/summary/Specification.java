// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.summary;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What the user's surfaces must come up to, and what is done when they do or do not. None is shipped.
 *
 * @param criteria     the criteria
 * @param actions      the actions in order; its conditions may name further criteria
 * @param nextTestRisk the chance one is ready to take of testing too late, above 0 and below 0.5; null: no next test is named
 */
public record Specification(
        List<Criterion> criteria,
        ActionTable actions,
        @Nullable Double nextTestRisk) {

    private static final Specification NONE = new Specification(List.of(), new ActionTable(List.of()), null);

    private static final double EVEN = 0.5;

    /**
     * Copies the criteria.
     *
     * @throws IllegalArgumentException if the risk is not above 0 and below 0.5
     */
    public Specification {
        criteria = List.copyOf(criteria);
        if (nextTestRisk != null && !(nextTestRisk > 0 && nextTestRisk < EVEN)) {
            throw new IllegalArgumentException("nextTestRisk: expected above 0, below 0.5, got " + nextTestRisk);
        }
    }

    /** {@return a specification that asks for nothing} */
    public static Specification none() {
        return NONE;
    }

    /**
     * {@return a specification of criteria alone}
     *
     * @param criteria the criteria
     */
    public static Specification of(Criterion... criteria) {
        return new Specification(List.of(criteria), NONE.actions, null);
    }

    /**
     * {@return this specification with another table of actions}
     *
     * @param actions the actions in order
     */
    public Specification withActions(ActionTable actions) {
        return new Specification(criteria, actions, nextTestRisk);
    }

    /**
     * {@return this specification with another risk of testing too late}
     *
     * @param risk above 0 and below 0.5
     */
    public Specification withNextTestRisk(double risk) {
        return new Specification(criteria, actions, risk);
    }

    /**
     * {@return both specifications: this one's criteria and actions first, the risk of the later one that has one}
     *
     * @param later what is asked for besides
     */
    public Specification and(Specification later) {
        List<ActionTable.Row> rows = Stream.concat(actions.rows().stream(), later.actions.rows().stream())
                .toList();
        return new Specification(
                Stream.concat(criteria.stream(), later.criteria.stream()).toList(),
                new ActionTable(rows),
                later.nextTestRisk == null ? nextTestRisk : later.nextTestRisk);
    }

    /** {@return the chance one is ready to take of testing too late, where it is named} */
    public Optional<Double> risk() {
        return Optional.ofNullable(nextTestRisk);
    }
}
