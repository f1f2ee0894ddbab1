// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.verification;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A figure of this library beside the one that somebody else found.
 *
 * @param what      the figure
 * @param source    where the expected figure stands, with its marks
 * @param expected  the value in the source
 * @param got       what the library finds, to the digits of what is expected and ten at most
 * @param tolerance how far they may lie apart
 * @param holds     whether they do not lie farther apart
 */
public record Check(String what, String source, String expected, String got, String tolerance, boolean holds) {

    /** A double that went through some tens of roundings is good for so many digits on any machine. */
    private static final MathContext SOUND = new MathContext(13);

    private static final int MOST_DIGITS = 10;

    private static final List<String> MARKS =
            List.of("published", "seen", "secondary", "memory", "common practice", "recomputed", "derived");

    /** Marks are in brackets; a recomputed value is also named outside them. */
    private static final Pattern MARKED = Pattern.compile("\\(([^)]*)\\)|\\b(recomputed|derived)\\b");

    /** {@return a figure that may be off by {@code tolerance}} */
    public static Check within(double tolerance, String what, String source, String expected, double got) {
        double value = Double.parseDouble(expected.replace(" ", ""));
        boolean holds = value == got || Math.abs(value - got) <= tolerance;
        return new Check(
                what,
                source,
                expected,
                text(expected, tolerance, got),
                tolerance == 0 ? "none" : "±" + plain(tolerance),
                holds);
    }

    /** {@return a figure that may be off by {@code part} of it} */
    public static Check relative(double part, String what, String source, String expected, double got) {
        double tolerance = part * Math.abs(Double.parseDouble(expected.replace(" ", "")));
        Check check = within(tolerance, what, source, expected, got);
        return new Check(what, source, expected, check.got, plain(part) + " of it", check.holds);
    }

    /** {@return a figure that must be the same} */
    public static Check exact(String what, String source, Object expected, Object got) {
        return new Check(
                what,
                source,
                expected.toString(),
                got.toString(),
                "none",
                expected.toString().equals(got.toString()));
    }

    /** {@return how the expected figure came here: every mark that its source is given with} */
    public String marks() {
        String marked = MARKED.matcher(source)
                .results()
                .map(MatchResult::group)
                .map(text -> text.replaceAll("\\bexact\\b", "recomputed"))
                .collect(Collectors.joining(" "));
        return MARKS.stream().filter(marked::contains).collect(Collectors.joining(", "));
    }

    /** Noise of the last digits is cut off first, then what neither the expected figure nor the tolerance speaks of. */
    private static String text(String expected, double tolerance, double got) {
        if (!Double.isFinite(got)) {
            return String.valueOf(got);
        }
        BigDecimal value = new BigDecimal(expected.replace(" ", ""));
        BigDecimal found = new BigDecimal(got).round(SOUND);
        int digits = Math.min(value.precision(), MOST_DIGITS);
        int places = value.signum() == 0 ? 0 : value.scale() - value.precision() + digits;
        if (tolerance > 0 && value.signum() == 0) {
            places = Math.max(
                    0, new BigDecimal(tolerance).round(new MathContext(1)).scale());
        }
        BigDecimal rounded = found.setScale(places, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0
                ? "0"
                : expected.toLowerCase(Locale.ROOT).contains("e") || Math.abs(places) > 18
                        ? rounded.toString()
                        : rounded.toPlainString();
    }

    private static String plain(double tolerance) {
        BigDecimal decimal = new BigDecimal(tolerance).round(new MathContext(2)).stripTrailingZeros();
        return decimal.precision() - decimal.scale() > -3 ? decimal.toPlainString() : decimal.toString();
    }
}
