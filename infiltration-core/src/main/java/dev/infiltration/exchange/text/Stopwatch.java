// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.text;

import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads elapsed times as a stopwatch shows them, {@code 2:21.7} or {@code 1:02:21.7}, in seconds with the digits shown. */
public enum Stopwatch {
    /** Minutes and seconds, the seconds below 60. */
    MINUTES("min:s", "([0-9]{1,15}):([0-9]{1,2}(?:\\.[0-9]{1,34})?)", "2:21.7"),
    /** Hours, minutes and seconds, minutes and seconds below 60. */
    HOURS("h:min:s", "([0-9]{1,15}):([0-9]{1,2}):([0-9]{1,2}(?:\\.[0-9]{1,34})?)", "1:02:21.7");

    private static final BigDecimal SIXTY = BigDecimal.valueOf(60);

    private final String unit;
    private final Pattern pattern;
    private final String example;

    Stopwatch(String unit, String pattern, String example) {
        this.unit = unit;
        this.pattern = Pattern.compile(pattern);
        this.example = example;
    }

    /** {@return the text used in place of a unit} */
    public String unit() {
        return unit;
    }

    /** {@return the expected form} */
    public String example() {
        return example;
    }

    /** {@return the seconds shown, or null when {@code text} has another form} */
    public @Nullable BigDecimal seconds(String text) {
        Matcher parts = pattern.matcher(text);
        if (!parts.matches()) {
            return null;
        }
        BigDecimal seconds = new BigDecimal(parts.group(1));
        for (int part = 2; part <= parts.groupCount(); part++) {
            BigDecimal next = new BigDecimal(parts.group(part));
            if (next.compareTo(SIXTY) >= 0) {
                return null;
            }
            seconds = seconds.multiply(SIXTY).add(next);
        }
        return seconds;
    }
}
