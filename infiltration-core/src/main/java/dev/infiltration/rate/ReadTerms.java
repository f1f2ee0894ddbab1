// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import dev.infiltration.method.Basis;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;

/** Terms that come from readings alone: to what the instrument was read, and how far several readings differ. */
final class ReadTerms {

    static final Basis STATED = new Basis("resolution stated with the reading", "", Basis.Trust.USER);
    static final Basis WRITTEN = new Basis("last digit written", "", Basis.Trust.DERIVED);
    private static final Basis LIMITS = new Basis("JCGM 100:2008", "4.3.7", Basis.Trust.DERIVED);
    private static final Basis SCATTER = new Basis("JCGM 100:2008", "4.2.3", Basis.Trust.DERIVED);

    private static final int FEW = 4;

    private ReadTerms() {}

    /** {@return the term of one reading among {@code count} whose mean counts} */
    static <Q extends Quantity<Q>> Term reading(String name, Reading<Q> reading, FieldUnit<Q> unit, int count) {
        double step = reading.statedResolution().orElseGet(reading::lastDigit).in(unit);
        Basis basis = reading.statedResolution().isPresent() ? STATED : WRITTEN;
        return new Term(name, 0, Distribution.resolution(step / count), basis);
    }

    /** {@return a term for each diameter} */
    static List<Term> diameters(String ring, List<Reading<Length>> diameters) {
        return IntStream.range(0, diameters.size())
                .mapToObj(i -> reading(
                        ring + ", diameter " + (i + 1), diameters.get(i), FieldUnit.MILLIMETRE, diameters.size()))
                .toList();
    }

    /**
     * {@return the term of two or more diameters that differ}: of four or more, the standard deviation of their mean; of two
     * or three, half their range to either side, for the t-distribution of so few has no standard deviation
     */
    static Term roundness(String ring, List<Reading<Length>> diameters) {
        return repeats(ring + ", roundness", millimetres(diameters));
    }

    /** {@return the term of two or more values that differ}, as {@link #roundness} takes diameters */
    static Term repeats(String name, double[] values) {
        return values.length < FEW
                ? new Term(name, 0, Distribution.rectangular(range(values) / 2), LIMITS)
                : new Term(name, 0, Distribution.student(scatter(values), values.length - 1.0), SCATTER);
    }

    static double[] millimetres(List<Reading<Length>> diameters) {
        return diameters.stream()
                .mapToDouble(diameter -> diameter.in(FieldUnit.MILLIMETRE))
                .toArray();
    }

    private static double range(double[] values) {
        DoubleSummaryStatistics range = DoubleStream.of(values).summaryStatistics();
        return range.getMax() - range.getMin();
    }

    /** {@return the standard deviation of the mean}, not finite where the values differ beyond all measure */
    static double scatter(double[] values) {
        double mean = DoubleStream.of(values).sum() / values.length;
        double squares = DoubleStream.of(values)
                .map(value -> (value - mean) * (value - mean))
                .sum();
        return StrictMath.sqrt(squares / (values.length - 1.0) / values.length);
    }
}
