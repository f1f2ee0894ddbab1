// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import dev.infiltration.check.Grid.Point;
import dev.infiltration.field.Location;
import dev.infiltration.field.Place;
import dev.infiltration.field.Position;
import dev.infiltration.field.Ring;
import dev.infiltration.method.Band;
import dev.infiltration.method.Limit;
import dev.infiltration.method.Range;
import dev.infiltration.method.TestMethod;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;

/** A test that was made at a known location, with what tells its distance to others. */
final class LocatedTest {

    /** What a tape says of every other location. */
    enum Tape {
        /** The nearest other location is far enough. */
        FAR,
        /** The nearest other location is too near. */
        NEAR,
        /** Nothing was taped. */
        NONE
    }

    private final TestAt test;
    private final String locationId;
    private final Location location;
    private final TestMethod method;
    private final Tape tape;
    private final @Nullable TimeRange start;
    private final @Nullable Point onSurface;
    private final @Nullable Point onEllipsoid;
    private final double accuracy;
    private final double diameter;
    private final double largestDiameter;
    private final double clear;

    private LocatedTest(TestAt test, String locationId, Location location, TestMethod method) {
        this.test = test;
        this.locationId = locationId;
        this.location = location;
        this.method = method;
        this.tape = tape(test.test().clearSpacing(), method);
        this.start = test.firstStart();
        this.onSurface = location.x() != null && location.y() != null ? Grid.local(location.x(), location.y()) : null;
        this.onEllipsoid = isOnEarth(location.position())
                ? Grid.onEllipsoid(degrees(location, Position::latitude), degrees(location, Position::longitude))
                : null;
        this.accuracy = onEllipsoid == null ? 0 : accuracyOf(location.position());
        this.largestDiameter = most(method.limit(Limit.INSIDE_DIAMETER), Range::highest);
        this.diameter = test.ring()
                .filter(Ring::isUsable)
                .map(ring -> RingRules.meanDiameter(ring).in(FieldUnit.METRE))
                .orElse(Double.NaN);
        this.clear = most(method.limit(Limit.CLEAR_SPACING), Range::lowest);
    }

    /** The bound of a limit, in metres: the wider of both systems. */
    private static double most(Band<Length> band, Function<Range<Length>, @Nullable Reading<Length>> bound) {
        return Stream.of(band.si(), band.inchPound())
                .map(bound)
                .filter(Objects::nonNull)
                .mapToDouble(reading -> reading.in(FieldUnit.METRE))
                .max()
                .orElse(0);
    }

    /** The largest diameter that its ring may have, in metres. */
    double mostDiameter() {
        return Math.max(largestDiameter, Double.isNaN(diameter) ? 0 : diameter);
    }

    /** The clear distance that its method asks for, in metres: the wider of both systems. */
    double clear() {
        return clear;
    }

    /** {@return the distance from centre to centre, in metres, beyond which an earlier test lies surely apart} */
    double reach(LocatedTest earlier) {
        double itsDiameter = Double.isNaN(earlier.diameter) ? largestDiameter : earlier.diameter;
        double own = Double.isNaN(diameter) ? largestDiameter : diameter;
        return clear + (itsDiameter + own) / 2;
    }

    /** {@return the test, or null when it was not made, or its location is not known} */
    static @Nullable LocatedTest of(TestAt test, SurfaceAt surface) {
        Location location = test.locationOrNull();
        String id = SubjectText.given(test.test().location());
        if (location == null || id == null || !test.test().isMade()) {
            return null;
        }
        TestMethod known = test.visit().methodOrNull();
        TestMethod method = known == null
                ? test.visit()
                        .book()
                        .register()
                        .methods()
                        .forSurface(surface.surface().type())
                : known;
        return new LocatedTest(test, id, location, method);
    }

    private static Tape tape(@Nullable Reading<Length> clear, TestMethod method) {
        if (clear == null || !clear.isPositive()) {
            return Tape.NONE;
        }
        return method.limit(Limit.CLEAR_SPACING).holds(clear) ? Tape.FAR : Tape.NEAR;
    }

    TestAt test() {
        return test;
    }

    Place place() {
        return test.place();
    }

    String locationId() {
        return locationId;
    }

    TestMethod method() {
        return method;
    }

    Tape tape() {
        return tape;
    }

    @Nullable
    TimeRange start() {
        return start;
    }

    @Nullable
    LocalDate date() {
        return test.visit().visit().date();
    }

    boolean hasLocalPosition() {
        return onSurface != null;
    }

    /** Where it lies by x and y. */
    Point onSurface() {
        return Objects.requireNonNull(onSurface);
    }

    /** What tests share that lie as far from any other by x and y. */
    Object localLikeness() {
        return List.of(x(), y(), ringId());
    }

    /** What tests share that lie as far from any other by position. */
    Object likeness() {
        return List.of(onEllipsoid(), accuracy, ringId());
    }

    private String ringId() {
        return test.ring().filter(Ring::isUsable).map(Ring::id).orElse("");
    }

    Reading<Length> x() {
        return Objects.requireNonNull(location.x());
    }

    Reading<Length> y() {
        return Objects.requireNonNull(location.y());
    }

    /** Whether it has a position on the ellipsoid whose accuracy is stated. */
    boolean hasPosition() {
        return onEllipsoid != null;
    }

    /** Where it lies by its position, in earth-centred coordinates. */
    Point onEllipsoid() {
        return Objects.requireNonNull(onEllipsoid);
    }

    private static boolean isOnEarth(@Nullable Position position) {
        return position != null
                && position.isOnEarth()
                && position.accuracy() != null
                && position.accuracy().value().signum() >= 0;
    }

    /** {@return the distance to another position in metres}: both lie on the ellipsoid */
    double metresTo(LocatedTest other) {
        return Objects.requireNonNull(location.position())
                .metresTo(Objects.requireNonNull(other.location.position()))
                .orElseThrow();
    }

    private static double degrees(Location location, Function<Position, @Nullable BigDecimal> part) {
        Position position = Objects.requireNonNull(location.position());
        return Objects.requireNonNull(part.apply(position)).doubleValue();
    }

    /** How far the position may be off, in metres; 0 without one. */
    double accuracy() {
        return accuracy;
    }

    private static double accuracyOf(@Nullable Position position) {
        return position == null || position.accuracy() == null
                ? 0
                : position.accuracy().in(FieldUnit.METRE);
    }

    /** The ring's mean diameter; the largest that the method allows where none is known. */
    @Nullable
    Reading<Length> diameter(dev.infiltration.units.UnitSystem system, TestMethod judging) {
        return test.ring()
                .filter(Ring::isUsable)
                .map(RingRules::meanDiameter)
                .orElse(judging.limit(Limit.INSIDE_DIAMETER).in(system).highest());
    }
}
