// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.season;

import dev.infiltration.plan.ExpectedRate;
import dev.infiltration.units.InfiltrationRate;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What a plan was asked for. */
final class PlanOptions {

    static final String USAGE = "season [BOOK.json|BOOK.jsonl|BOOK.csv|-] --plan SURFACE [--expected RATE[,RATE,RATE]]"
            + " [--set-up MINUTES] [--zones FILE] [--seed NUMBER] [--rain FILE]... [--json] [--today DATE]"
            + " [--method FILE]... [--mapping FILE] [--out DIR]";

    private static final long SEED = 1;
    private static final long LONGEST_MINUTES = 24 * 60;

    private @Nullable String first;
    private @Nullable String surface;
    private @Nullable ExpectedRate expected;
    private Duration setUp = Duration.ZERO;
    private @Nullable Path zones;
    private long seed = SEED;
    private final List<Path> rain = new ArrayList<>();

    void take(String option, String value) throws Arguments.UsageException {
        first = option;
        try {
            switch (option) {
                case "--plan" -> surface = value;
                case "--expected" -> expected = rates(value);
                case "--set-up" -> setUp = minutes(value);
                case "--zones" -> zones = Path.of(value);
                case "--rain" -> rain.add(Path.of(value));
                default -> seed = Long.parseLong(value);
            }
        } catch (InvalidPathException noPath) {
            throw new Arguments.UsageException("no path: " + value);
        } catch (IllegalArgumentException cannotStand) {
            throw new Arguments.UsageException(option + ": cannot take " + value);
        }
    }

    private static Duration minutes(String value) {
        long minutes = Long.parseLong(value);
        if (minutes < 0 || minutes > LONGEST_MINUTES) {
            throw new IllegalArgumentException("minutes: expected 0 to a day");
        }
        return Duration.ofMinutes(minutes);
    }

    /** One rate, or the lowest, the likely and the highest, in mm/h. */
    private static ExpectedRate rates(String value) {
        InfiltrationRate[] rates = Stream.of(value.split(",", -1))
                .map(Double::parseDouble)
                .map(InfiltrationRate::new)
                .toArray(InfiltrationRate[]::new);
        if (rates.length == 1) {
            return ExpectedRate.of(rates[0]);
        }
        if (rates.length != 3) {
            throw new IllegalArgumentException("rates: expected one or three");
        }
        return new ExpectedRate(rates[0], rates[1], rates[2]);
    }

    void check(boolean strict) throws Arguments.UsageException {
        if (first != null && surface == null) {
            throw new Arguments.UsageException(first + " goes with --plan");
        }
        if (surface != null && strict) {
            throw new Arguments.UsageException("--strict speaks of a review, not of a plan");
        }
    }

    boolean isAskedFor() {
        return surface != null;
    }

    String surface() {
        return surface == null ? "" : surface;
    }

    Optional<ExpectedRate> expected() {
        return Optional.ofNullable(expected);
    }

    Duration setUp() {
        return setUp;
    }

    Optional<Path> zones() {
        return Optional.ofNullable(zones);
    }

    /** Records of rain, each later than the one before. */
    List<Path> rain() {
        return rain;
    }

    long seed() {
        return seed;
    }
}
