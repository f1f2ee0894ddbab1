// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.exchange;

import dev.infiltration.summary.ActionTable;
import dev.infiltration.summary.ActionTable.Condition;
import dev.infiltration.summary.Criterion;
import dev.infiltration.summary.Decision.LiteralResult;
import dev.infiltration.summary.Specification;
import dev.infiltration.units.Reading;
import java.math.BigDecimal;
import java.time.Period;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.quantity.Speed;
import org.jspecify.annotations.Nullable;

/** The content of a file of criteria: conditions of actions refer to criteria by id. */
final class CriterionFile {

    /** The largest count that a criterion allows. */
    private static final int MOST_PLACES = 30;

    private final Whole content;
    private final Map<String, Criterion> criteria = new LinkedHashMap<>();

    private CriterionFile(Whole content) {
        this.content = content;
        content.criteria.forEach(entry -> criteria.put(entry.name(), entry.criterion()));
    }

    /**
     * The document.
     *
     * @param criteria     the criteria
     * @param actions      the actions in order
     * @param nextTestRisk the accepted probability of testing too late
     */
    public record Whole(
            List<Requirement> criteria,
            List<Action> actions,
            @Nullable BigDecimal nextTestRisk) {

        /** Refuses a document without criteria, with a duplicate id, or with a risk that is not a probability. */
        public Whole {
            require(Stream.of(
                    criteria.isEmpty() ? "it has no criteria" : "",
                    doubled(criteria).isEmpty() ? "" : "more than one criterion is called " + doubled(criteria),
                    nextTestRisk == null || isBetween(nextTestRisk, 0, 0.5)
                            ? ""
                            : "nextTestRisk is not above 0 and below 0.5"));
        }

        private static String doubled(List<Requirement> criteria) {
            Set<String> met = new HashSet<>();
            return criteria.stream()
                    .map(Requirement::name)
                    .filter(name -> !met.add(name))
                    .distinct()
                    .collect(Collectors.joining(", "));
        }
    }

    /** A criterion; see {@link Criterion}. Each member is optional unless the criterion requires it. */
    public record Requirement(
            @Nullable String id,
            Criterion.@Nullable Type type,
            Criterion.@Nullable Relation relation,
            @Nullable Reading<Speed> limit,
            Criterion.@Nullable Purpose purpose,
            @Nullable String method,
            @Nullable String source,
            @Nullable BigDecimal requiredShare,
            @Nullable BigDecimal level,
            @Nullable Reading<Speed> roundingIncrement,
            @Nullable String otherMethodJustification) {

        /** Refuses a criterion with a missing or invalid part. */
        public Requirement {
            require(Stream.of(
                    lack("type", type),
                    lack("relation", relation),
                    lack("limit", limit),
                    limit == null || limit.value().signum() > 0 ? "" : "its limit is not above 0",
                    lack("purpose", purpose),
                    lack("method", method),
                    lack("source", source),
                    type == Criterion.Type.SHARE_OF_LOCATIONS ? lack("requiredShare", requiredShare) : "",
                    requiredShare == null || type == Criterion.Type.SHARE_OF_LOCATIONS
                            ? ""
                            : "only the type share-of-locations has a requiredShare",
                    requiredShare == null || isShare(requiredShare)
                            ? ""
                            : "its requiredShare is not above 0 and at most 1",
                    level == null || type == Criterion.Type.CONFIDENCE_BOUND
                            ? ""
                            : "only the type confidence-bound has a level",
                    level == null || isBetween(level, 0.5, 1) ? "" : "its level is not above 0.5 and below 1",
                    increment(roundingIncrement, limit)));
        }

        private static String increment(@Nullable Reading<Speed> increment, @Nullable Reading<Speed> limit) {
            if (increment == null) {
                return "";
            }
            if (!increment.isPositive()) {
                return "its roundingIncrement is not above 0";
            }
            if (Math.abs(increment.value().scale()) > MOST_PLACES) {
                return "its roundingIncrement has more than " + MOST_PLACES + " places";
            }
            return limit == null || limit.unit().equals(increment.unit())
                    ? ""
                    : "its roundingIncrement is in " + increment.unit().code() + ", its limit in "
                            + limit.unit().code()
                            + ": write both in one unit";
        }

        private static boolean isShare(BigDecimal share) {
            return share.doubleValue() > 0 && share.compareTo(BigDecimal.ONE) <= 0;
        }

        /** The id, or the quantity of the criterion if no condition refers to it. */
        private String name() {
            return id == null ? type + " " + relation + " " + limit + " " + method + " " + purpose : id;
        }

        private Criterion criterion() {
            Criterion plain = Criterion.of(
                            Objects.requireNonNull(type),
                            Objects.requireNonNull(relation),
                            Objects.requireNonNull(limit),
                            Objects.requireNonNull(method),
                            Objects.requireNonNull(source))
                    .withPurpose(Objects.requireNonNull(purpose));
            Criterion shared = requiredShare == null ? plain : plain.withRequiredShare(requiredShare.doubleValue());
            Criterion sided = level == null ? shared : shared.withLevel(level.doubleValue());
            Criterion rounded = roundingIncrement == null ? sided : sided.withRounding(roundingIncrement);
            return otherMethodJustification == null ? rounded : rounded.forOtherMethods(otherMethodJustification);
        }
    }

    /**
     * An action.
     *
     * @param action  what is required
     * @param dueDays the number of days after the test; absent where no day is required
     * @param none    true for an action that requires nothing
     * @param when    the conditions that must be met
     */
    public record Action(
            @Nullable String action,
            @Nullable Integer dueDays,
            @Nullable Boolean none,
            List<When> when) {

        /** Refuses an action without a text, with a due date before the test, or with a due date but no requirement. */
        public Action {
            require(Stream.of(
                    lack("action", action),
                    dueDays == null || dueDays >= 0 ? "" : "its dueDays are below 0",
                    dueDays == null || !isTrue(none) ? "" : "it requires nothing (none: true) and has dueDays"));
        }

        private static boolean isTrue(@Nullable Boolean flag) {
            return flag != null && flag;
        }

        private boolean isNone() {
            return isTrue(none);
        }
    }

    /**
     * A condition.
     *
     * @param criterion id of a criterion
     * @param is        the required result
     */
    public record When(
            @Nullable IdReference criterion, @Nullable LiteralResult is) {

        /** Refuses an incomplete condition. */
        public When {
            require(Stream.of(lack("criterion", criterion), lack("is", is)));
        }
    }

    private static String lack(String part, @Nullable Object value) {
        return value == null ? "it has no " + part : "";
    }

    /** Compares doubles, as the calculation does: a value that rounds to a bound is not within it. */
    private static boolean isBetween(BigDecimal value, double low, double high) {
        return value.doubleValue() > low && value.doubleValue() < high;
    }

    private static void require(Stream<String> faults) {
        String all = faults.filter(fault -> !fault.isEmpty()).collect(Collectors.joining("; "));
        if (!all.isEmpty()) {
            throw new IllegalArgumentException(all);
        }
    }

    static CriterionFile of(Whole content) {
        return new CriterionFile(content);
    }

    /** {@return the faults of conditions that refer to no criterion} */
    List<ReadFault> faults() {
        List<ReadFault> faults = new ArrayList<>();
        content.actions.stream()
                .flatMap(action -> action.when.stream())
                .map(when -> Objects.requireNonNull(when.criterion))
                .filter(name -> !criteria.containsKey(name.id()))
                .forEach(name -> faults.add(name.leadsNowhere(criteria.keySet())));
        return faults;
    }

    Specification specification() {
        List<ActionTable.Row> rows = content.actions.stream().map(this::row).toList();
        BigDecimal risk = content.nextTestRisk;
        return new Specification(
                List.copyOf(criteria.values()), new ActionTable(rows), risk == null ? null : risk.doubleValue());
    }

    private ActionTable.Row row(Action action) {
        return new ActionTable.Row(
                Objects.requireNonNull(action.action),
                action.dueDays == null ? null : Period.ofDays(action.dueDays),
                action.when.stream().map(this::condition).toList(),
                action.isNone());
    }

    private Condition condition(When when) {
        String id = Objects.requireNonNull(when.criterion).id();
        return new Condition(Objects.requireNonNull(criteria.get(id)), Objects.requireNonNull(when.is));
    }
}
