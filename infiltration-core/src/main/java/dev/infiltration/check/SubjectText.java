// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.jspecify.annotations.Nullable;

/** Words of findings. */
final class SubjectText {

    private SubjectText() {}

    /** {@return the text, or null when it says nothing} */
    static @Nullable String given(@Nullable String text) {
        return text == null || text.isEmpty() ? null : text;
    }

    static String orPosition(@Nullable String id, String kind, int index) {
        return id == null || id.isEmpty() ? kind + " " + (index + 1) : id;
    }

    /** {@return seconds for people: {@code 134.5 s}} */
    static String seconds(BigDecimal seconds) {
        BigDecimal rounded = seconds.setScale(1, RoundingMode.HALF_EVEN).stripTrailingZeros();
        return (rounded.scale() < 0 ? rounded.setScale(0) : rounded).toPlainString() + " s";
    }

    /** {@return hours for people} */
    static String hours(BigDecimal seconds) {
        return seconds.divide(BigDecimal.valueOf(3600), 2, RoundingMode.HALF_EVEN)
                        .toPlainString() + " h";
    }
}
