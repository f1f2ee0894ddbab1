// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.util.List;
import java.util.OptionalDouble;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Time;

/**
 * A table of rain intensity by duration and return period, as an authority or a designer gives it.
 *
 * <p>Between its entries the logarithm of the intensity is taken as straight in the logarithms of duration and return period
 * (common practice); on an entry the entry itself comes out. Outside the table there is no answer: nothing is extrapolated.
 *
 * <pre>{@code
 * IntensityTable table = IntensityTable.of(
 *         List.of(Reading.of("10", FieldUnit.MINUTE), Reading.of("60", FieldUnit.MINUTE)), List.of(2.0, 10.0),
 *         List.of(row("80", "120"), row("30", "46")));
 * table.millimetresPerHour(Reading.of("30", FieldUnit.MINUTE), 5);     // OptionalDouble[55.65…]
 * table.millimetresPerHour(Reading.of("5", FieldUnit.MINUTE), 5);      // empty
 * }</pre>
 */
public final class IntensityTable {

    private final double[] durations;
    private final double[] periods;
    private final double[][] intensities;

    private IntensityTable(double[] durations, double[] periods, double[][] intensities) {
        this.durations = durations;
        this.periods = periods;
        this.intensities = intensities;
    }

    /**
     * {@return a table}
     *
     * @param durations     durations, ascending, above 0
     * @param returnPeriods return periods in years, ascending, above 0
     * @param intensities   for each duration the intensities by return period, above 0
     * @throws IllegalArgumentException if the axes do not ascend from above 0, or an entry is missing or not above 0
     */
    public static IntensityTable of(
            List<Reading<Time>> durations, List<Double> returnPeriods, List<List<Reading<Speed>>> intensities) {
        double[] seconds = durations.stream()
                .mapToDouble(time -> time.in(FieldUnit.SECOND))
                .toArray();
        double[] years = returnPeriods.stream().mapToDouble(Double::doubleValue).toArray();
        require(ascends(seconds), "durations");
        require(ascends(years), "returnPeriods");
        double[][] rows = intensities.stream().map(IntensityTable::row).toArray(double[][]::new);
        require(rows.length == seconds.length, "intensities");
        for (double[] row : rows) {
            require(row.length == years.length && isPositive(row), "intensities");
        }
        return new IntensityTable(seconds, years, rows);
    }

    private static double[] row(List<Reading<Speed>> row) {
        return row.stream()
                .mapToDouble(intensity -> intensity.in(FieldUnit.MILLIMETRE_PER_HOUR))
                .toArray();
    }

    private static boolean ascends(double... axis) {
        boolean ascends = axis.length > 0 && isPositive(axis);
        for (int i = 1; i < axis.length; i++) {
            ascends &= axis[i - 1] < axis[i];
        }
        return ascends;
    }

    private static boolean isPositive(double... values) {
        boolean positive = true;
        for (double value : values) {
            positive &= value > 0 && Double.isFinite(value);
        }
        return positive;
    }

    private static void require(boolean holds, String name) {
        if (!holds) {
            throw new IllegalArgumentException(
                    name + ": expected finite numbers above 0, axes ascending, one entry each");
        }
    }

    /**
     * {@return the intensity in mm/h, or empty outside the table}
     *
     * @param duration     how long it rains
     * @param returnPeriod how rare the rain is, in years
     */
    public OptionalDouble millimetresPerHour(Reading<Time> duration, double returnPeriod) {
        double seconds = duration.in(FieldUnit.SECOND);
        if (!covers(durations, seconds) || !covers(periods, returnPeriod)) {
            return OptionalDouble.empty();
        }
        int row = cell(durations, seconds);
        double low = along(intensities[row], returnPeriod);
        double high = along(intensities[Math.min(row + 1, durations.length - 1)], returnPeriod);
        return OptionalDouble.of(between(low, high, share(durations, row, seconds)));
    }

    private double along(double[] row, double returnPeriod) {
        int column = cell(periods, returnPeriod);
        double high = row[Math.min(column + 1, periods.length - 1)];
        return between(row[column], high, share(periods, column, returnPeriod));
    }

    private static boolean covers(double[] axis, double value) {
        return value >= axis[0] && value <= axis[axis.length - 1];
    }

    /** {@return the last entry at or below a value} */
    private static int cell(double[] axis, double value) {
        int cell = 0;
        while (cell + 1 < axis.length && axis[cell + 1] <= value) {
            cell++;
        }
        return cell;
    }

    /** {@return how far a value lies from one entry to the next, 0 to 1, by logarithms} */
    private static double share(double[] axis, int cell, double value) {
        return value == axis[cell] ? 0 : logarithm(value, axis[cell]) / logarithm(axis[cell + 1], axis[cell]);
    }

    /** {@return the logarithm of a ratio}, of one that is no double too */
    private static double logarithm(double above, double below) {
        double ratio = above / below;
        return Double.isInfinite(ratio) ? StrictMath.log(above) - StrictMath.log(below) : StrictMath.log(ratio);
    }

    private static double between(double low, double high, double share) {
        return StrictMath.pow(low, 1 - share) * StrictMath.pow(high, share);
    }
}
