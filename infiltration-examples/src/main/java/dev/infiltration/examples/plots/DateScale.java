// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.plots;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** A scale of days, marked by years, by parts of years where there are few, or by the day alone. */
final class DateScale {

    private static final int MOST_TICKS = 6;
    private static final int[] MONTHS = {1, 3, 6, 12, 24, 60, 120, 240, 600, 1200, 2400, 12_000};
    private static final LocalDate NO_DAY = LocalDate.EPOCH;

    private DateScale() {}

    static Scale of(List<LocalDate> days) {
        LocalDate first = days.stream().min(Comparator.naturalOrder()).orElse(NO_DAY);
        LocalDate last = days.stream().max(Comparator.naturalOrder()).orElse(NO_DAY);
        double margin = Math.max(20, 0.06 * ChronoUnit.DAYS.between(first, last));
        double low = first.toEpochDay() - margin;
        double high = last.toEpochDay() + margin;
        return new Scale(Scale.Kind.EVEN, low, high, ticks(low, high));
    }

    private static List<Scale.Tick> ticks(double low, double high) {
        double months = (high - low) / 30.5;
        int step = MONTHS[MONTHS.length - 1];
        for (int i = MONTHS.length - 1; i >= 0 && months / MONTHS[i] <= MOST_TICKS; i--) {
            step = MONTHS[i];
        }
        return ticks(low, high, step);
    }

    private static List<Scale.Tick> ticks(double low, double high, int step) {
        List<Scale.Tick> ticks = new ArrayList<>();
        YearMonth month = YearMonth.from(LocalDate.ofEpochDay((long) low));
        month = month.minusMonths(Math.floorMod(month.getYear() * 12L + month.getMonthValue() - 1, (long) step));
        while (month.atDay(1).toEpochDay() <= high) {
            if (month.atDay(1).toEpochDay() >= low) {
                String name = step % 12 == 0 ? String.valueOf(month.getYear()) : month.toString();
                ticks.add(new Scale.Tick(month.atDay(1).toEpochDay(), name));
            }
            month = month.plusMonths(step);
        }
        return ticks;
    }
}
