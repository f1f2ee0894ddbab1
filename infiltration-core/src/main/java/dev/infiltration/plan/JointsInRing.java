// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import static dev.infiltration.plan.JointPattern.millimetres;

import dev.infiltration.field.Laying;
import dev.infiltration.field.Ring;
import dev.infiltration.plan.OffsetSearch.Point;
import dev.infiltration.units.Reading;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import javax.measure.quantity.Length;

/**
 * The joints and voids of a pattern that lie inside a ring, by exact areas of circle and polygon.
 *
 * <p>The share of openings inside the ring, averaged over all places of the ring, is the pattern's own share; at one place
 * it may be far off, the more so the larger the units. That a ring should hold about the pattern's own share is read out
 * of ASTM C1781/C1781M (memory, weak): the licensed edition governs.
 *
 * <p>Where more than {@value #MOST_FACES} units and voids may reach into the ring, nothing is told, for it would take minutes:
 * a ring of 300 mm takes square units of 15 mm, not of 10 mm.
 *
 * <pre>{@code
 * JointsInRing joints = JointsInRing.of(pattern, Reading.of("300", FieldUnit.MILLIMETRE)).orElseThrow();
 * joints.at(new RingOffset(0, 0, 0)).mismatch();                     // ring on the middle of a unit
 * joints.best(Reading.of("10", FieldUnit.MILLIMETRE)).get(0).offset();
 * joints.worst().mismatch();                                         // at the worst position
 * }</pre>
 */
public final class JointsInRing {

    /** How many units and voids, at most, may reach into a ring. */
    public static final int MOST_FACES = 500;

    private static final double LONGEST = 10_000;

    /** Directions in which a ring may slip while it is set. */
    private static final int SLIPS = 8;

    /** Lows are taken as equally good within this. */
    private static final double EQUAL = 1e-6;

    /** By whole micrometres, so that rounding does not choose between places equally near. */
    private static final Comparator<RingPlacement> NEAREST_FIRST = Comparator.comparingLong(
                    (RingPlacement place) -> micrometres(
                            StrictMath.hypot(place.offset().x(), place.offset().y())))
            .thenComparingLong(place -> micrometres(-place.offset().x()))
            .thenComparingLong(place -> micrometres(-place.offset().y()));

    private final JointPattern pattern;
    private final Tiling tiling;
    private final double radius;

    private JointsInRing(JointPattern pattern, Tiling tiling, double radius) {
        this.pattern = pattern;
        this.tiling = tiling;
        this.radius = radius;
    }

    private static Optional<JointsInRing> of(JointPattern pattern, double radius) {
        return Optional.of(pattern)
                .filter(each -> each.faces() <= MOST_FACES)
                .map(Tiling::of)
                .filter(tiling -> tiling.facesNear(radius) <= MOST_FACES)
                .map(tiling -> new JointsInRing(pattern, tiling, radius));
    }

    /**
     * The joints of a pattern in a ring.
     *
     * @param pattern        the pattern
     * @param insideDiameter inside diameter of the ring, above 0 and at most 10 m
     * @return them; empty where more than {@value #MOST_FACES} units and voids may reach into the ring
     * @throws IllegalArgumentException if the diameter is out of its range
     */
    public static Optional<JointsInRing> of(JointPattern pattern, Reading<Length> insideDiameter) {
        double diameter = millimetres(insideDiameter);
        if (!(diameter > 0 && diameter <= LONGEST)) {
            throw new IllegalArgumentException("insideDiameter: expected above 0 to 10 m, got " + insideDiameter);
        }
        return of(pattern, diameter / 2);
    }

    /**
     * {@return the joints of a pattern in a ring of the field book; empty where its diameter is unknown or out of range, or more
     * than {@value #MOST_FACES} units and voids may reach into it}
     *
     * @param pattern the pattern
     * @param ring    the ring, of several diameters their mean
     */
    public static Optional<JointsInRing> of(JointPattern pattern, Ring ring) {
        double diameter = ring.diametersInUse().stream()
                .mapToDouble(JointPattern::millimetres)
                .average()
                .orElse(0);
        return ring.isUsable() && diameter <= LONGEST ? of(pattern, diameter / 2) : Optional.empty();
    }

    /**
     * {@return how a ring at an offset stands for the pattern}
     *
     * @param offset where the middle of the ring lies
     */
    public RingPlacement at(RingOffset offset) {
        double share = openShare(offset.alongX(axes()), offset.alongY(axes()));
        return new RingPlacement(offset, share, pattern.openShare());
    }

    /**
     * {@return the places in one repeat of the pattern at which the ring represents it best}, equally good ones all, those
     * nearest to the datum first
     *
     * <p>Many places hold just the pattern's share. The best is the one where it matters least if the ring slips: where the
     * largest mismatch within {@code slip} of it is smallest.
     *
     * @param slip how closely a ring can be set, 0 or more
     * @throws IllegalArgumentException if {@code slip} is negative
     */
    public List<RingPlacement> best(Reading<Length> slip) {
        if (slip.value().signum() < 0) {
            throw new IllegalArgumentException("slip: expected 0 or more, got " + slip);
        }
        double distance = millimetres(slip);
        OffsetSearch search = new OffsetSearch(tiling, (x, y) -> worstWithin(distance, x, y));
        List<Point> lows = search.lows();
        double best = lows.get(0).value() + EQUAL;
        return lows.stream()
                .filter(low -> low.value() <= best)
                .map(low -> placement(search, low))
                .sorted(NEAREST_FIRST)
                .toList();
    }

    /** {@return the place with the largest mismatch: what may come of placing the ring blindly} */
    public RingPlacement worst() {
        OffsetSearch search = new OffsetSearch(tiling, (x, y) -> -Math.abs(mismatch(x, y)));
        List<Point> lows = search.lows();
        double worst = lows.get(0).value() + EQUAL;
        return lows.stream()
                .filter(low -> low.value() <= worst)
                .map(low -> placement(search, low))
                .min(NEAREST_FIRST)
                .orElseThrow();
    }

    /**
     * {@return a drawing of the pattern and the ring, as SVG}
     *
     * @param offset where the middle of the ring lies
     */
    public String drawing(RingOffset offset) {
        return new PatternDrawing(tiling, axes(), radius, at(offset)).svg();
    }

    private double worstWithin(double distance, double x, double y) {
        DoubleStream slipped = IntStream.range(0, distance > 0 ? SLIPS : 0)
                .mapToDouble(i -> 2 * Math.PI * i / SLIPS)
                .map(way -> mismatch(x + distance * StrictMath.cos(way), y + distance * StrictMath.sin(way)));
        return DoubleStream.concat(DoubleStream.of(mismatch(x, y)), slipped)
                .map(Math::abs)
                .max()
                .orElseThrow();
    }

    private double mismatch(double x, double y) {
        return openShare(x, y) / pattern.openShare() - 1;
    }

    /** {@return the share inside the ring, its middle given along the sides of the units} */
    private double openShare(double x, double y) {
        return 1 - tiling.solid(x, y, radius) / (Math.PI * radius * radius);
    }

    private RingPlacement placement(OffsetSearch search, Point point) {
        double[] near = tiling.nearest(search.x(point), search.y(point));
        RingOffset alongUnits = new RingOffset(near[0], near[1], -axes());
        return at(new RingOffset(alongUnits.alongX(0), alongUnits.alongY(0), 0));
    }

    private static long micrometres(double millimetres) {
        return Math.round(1000 * millimetres);
    }

    /** {@return the angle from the length of the unit at the datum to the pattern's x axis, in degrees} */
    private double axes() {
        return pattern.laying() == Laying.HERRINGBONE_45 ? 45 : 0;
    }
}
