// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

import dev.infiltration.field.JsonName;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Describes a user's tables: the meaning of the headers, values that have no column, and the order of dates.
 *
 * <pre>{@code
 * TableMapping mapping = TableMapping.none()
 *         .withHeader("Wt of H2O, 2 buckets", "water [lb]")
 *         .withHeader("Supervisor", "")
 *         .withConstant("method", "pervious-concrete");
 * }</pre>
 *
 * @param headers   for each header in the file, the name of the column with its unit; empty to ignore the column
 * @param constants for each name of a column, the value of rows without such a cell
 * @param dates     the order of day, month and year; absent: year, month, day
 */
public record TableMapping(
        Map<String, String> headers,
        Map<String, String> constants,
        @Nullable DateOrder dates) {

    /** Copies the maps; absent ones become empty. */
    public TableMapping {
        headers = copy(headers);
        constants = copy(constants);
    }

    private static Map<String, String> copy(@Nullable Map<String, String> map) {
        return map == null ? Map.of() : Collections.unmodifiableMap(new LinkedHashMap<>(map));
    }

    /** {@return the empty mapping} */
    public static TableMapping none() {
        return new TableMapping(Map.of(), Map.of(), null);
    }

    /**
     * {@return this mapping with one more header}
     *
     * @param header the header in the file
     * @param column the name of the column, with its unit; empty to ignore it
     */
    public TableMapping withHeader(String header, String column) {
        return new TableMapping(with(headers, header, column), constants, dates);
    }

    /**
     * {@return this mapping with one more constant}
     *
     * @param column the name of a column, with its unit
     * @param value  the value of rows without such a cell
     */
    public TableMapping withConstant(String column, String value) {
        return new TableMapping(headers, with(constants, column, value), dates);
    }

    /**
     * {@return this mapping with another order of dates}
     *
     * @param dates the order of day, month and year
     */
    public TableMapping withDates(DateOrder dates) {
        return new TableMapping(headers, constants, dates);
    }

    private static Map<String, String> with(Map<String, String> map, String key, String value) {
        Map<String, String> more = new LinkedHashMap<>(map);
        more.put(key, value);
        return more;
    }

    /** The order of the parts of a date; the year always has four digits, and points, hyphens or slashes separate the parts. */
    public enum DateOrder implements JsonName {
        /** 2026-06-03. */
        YEAR_MONTH_DAY,
        /** 6/3/2026. */
        MONTH_DAY_YEAR,
        /** 3.6.2026. */
        DAY_MONTH_YEAR
    }
}
