// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import dev.infiltration.field.Location;
import dev.infiltration.field.Place;
import dev.infiltration.field.Position;
import dev.infiltration.method.TestMethod;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Objects;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;

/** A test that was made at a known location, with what tells its distance to others. */
final class Spaced {

    /** What a tape says of every other location. */
    enum Tape {
        /** The nearest other location is far enough. */
        FAR,
        /** The nearest other location is too near. */
        NEAR,
        /** Nothing was taped. */
        NONE
    }

    private static final BigDecimal POLE = BigDecimal.valueOf(90);
    private static final BigDecimal ANTIMERIDIAN = BigDecimal.valueOf(180);

    private final TestAt test;
    private final String locationId;
    private final Location location;
    private final TestMethod method;
    private final Tape tape;

    private Spaced(TestAt test, String locationId, Location location, TestMethod method) {
        this.test = test;
        this.locationId = locationId;
        this.location = location;
        this.method = method;
        this.tape = tape(test.test().clearSpacing(), method);
    }

    /** {@return the test, or null when it was not made, or its location is not known} */
    static @Nullable Spaced of(TestAt test, SurfaceAt surface) {
        Location location = test.locationOrNull();
        String id = Texts.given(test.test().location());
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
        return new Spaced(test, id, location, method);
    }

    private static Tape tape(@Nullable Reading<Length> clear, TestMethod method) {
        if (clear == null || !clear.isPositive()) {
            return Tape.NONE;
        }
        return method.clearSpacing().holds(clear) ? Tape.FAR : Tape.NEAR;
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
    Span start() {
        return test.firstStart();
    }

    @Nullable
    LocalDate date() {
        return test.visit().visit().date();
    }

    boolean hasLocalPosition() {
        return location.x() != null && location.y() != null;
    }

    Reading<Length> x() {
        return Objects.requireNonNull(location.x());
    }

    Reading<Length> y() {
        return Objects.requireNonNull(location.y());
    }

    /** Whether it has a position on the ellipsoid whose accuracy is stated. */
    boolean hasPosition() {
        Position position = location.position();
        return position != null
                && isWithin(position.latitude(), POLE)
                && isWithin(position.longitude(), ANTIMERIDIAN)
                && position.accuracy() != null
                && position.accuracy().value().signum() >= 0;
    }

    private static boolean isWithin(@Nullable BigDecimal degrees, BigDecimal most) {
        return degrees != null && degrees.abs().compareTo(most) <= 0;
    }

    double latitude() {
        return degrees(Objects.requireNonNull(location.position()).latitude());
    }

    double longitude() {
        return degrees(Objects.requireNonNull(location.position()).longitude());
    }

    private static double degrees(@Nullable BigDecimal degrees) {
        return Objects.requireNonNull(degrees).doubleValue();
    }

    double accuracy() {
        Position position = Objects.requireNonNull(location.position());
        return Objects.requireNonNull(position.accuracy()).in(FieldUnit.METRE);
    }

    /** The ring's mean diameter; the largest that the method allows where none is known. */
    @Nullable
    Reading<Length> diameter(dev.infiltration.units.UnitSystem system, TestMethod judging) {
        return test.ring()
                .filter(ring -> ring.isUsable())
                .map(RingRules::meanDiameter)
                .orElse(judging.insideDiameter().in(system).highest());
    }
}
