// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.method;

import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import dev.infiltration.units.UnitSystem;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Objects;
import java.util.OptionalLong;
import javax.measure.quantity.Area;
import org.jspecify.annotations.Nullable;

/**
 * Number of locations of a surface, by its area in the system in which the area is written.
 *
 * @param si        steps for areas in SI units, in order
 * @param inchPound steps for areas in inch-pound units, in order
 * @param basis     source of the rule
 */
public record LocationCount(List<Step> si, List<Step> inchPound, Basis basis) {

    /**
     * A part of the area and the number of locations that it adds.
     *
     * @param adds number of locations added
     * @param per  area or fraction of it for which they are added; null: once
     * @param upTo end of the part, as area of the surface; null in the last step
     */
    public record Step(
            int adds, @Nullable Reading<Area> per, @Nullable Reading<Area> upTo) {

        /** {@return the step for people: {@code 1 per 1000 m²}} */
        @Override
        public String toString() {
            String each = per == null ? String.valueOf(adds) : adds + " per " + per + " or fraction";
            return upTo == null ? each : each + " up to " + upTo;
        }

        private BigDecimal locations(BigDecimal area, BigDecimal from, FieldUnit<Area> unit) {
            if (per == null) {
                return BigDecimal.valueOf(adds);
            }
            BigDecimal end = upTo == null ? area : area.min(upTo.exactIn(unit));
            BigDecimal parts = end.subtract(from).divide(per.exactIn(unit), 0, RoundingMode.CEILING);
            return parts.multiply(BigDecimal.valueOf(adds));
        }
    }

    /** Copies the steps. */
    public LocationCount {
        si = List.copyOf(si);
        inchPound = List.copyOf(inchPound);
        Objects.requireNonNull(basis, "basis");
    }

    /**
     * {@return a number that does not depend on the area}
     *
     * @param count the number of locations
     * @param basis its source
     */
    public static LocationCount fixed(int count, Basis basis) {
        List<Step> once = List.of(new Step(count, null, null));
        return new LocationCount(once, once, basis);
    }

    /** {@return whether the number depends on the area} */
    public boolean needsArea() {
        return si.size() > 1 || inchPound.size() > 1 || si.stream().anyMatch(step -> step.per() != null);
    }

    /**
     * {@return the number of locations for a surface}, empty when it depends on an area that is not given or not positive
     *
     * @param area the area as written; null when it is not known
     */
    public OptionalLong of(@Nullable Reading<Area> area) {
        if (!needsArea()) {
            return OptionalLong.of(si.stream().mapToLong(Step::adds).sum());
        }
        return area == null || !area.isPositive() ? OptionalLong.empty() : OptionalLong.of(count(area));
    }

    private long count(Reading<Area> area) {
        List<Step> steps = area.unit().system() == UnitSystem.INCH_POUND ? inchPound : si;
        BigDecimal whole = area.exactIn(area.unit());
        BigDecimal from = BigDecimal.ZERO;
        BigDecimal count = BigDecimal.ZERO;
        for (Step step : steps) {
            if (whole.compareTo(from) <= 0) {
                break;
            }
            count = count.add(step.locations(whole, from, area.unit()));
            from = step.upTo() == null ? whole : step.upTo().exactIn(area.unit());
        }
        return count.min(BigDecimal.valueOf(Long.MAX_VALUE)).longValue();
    }
}
