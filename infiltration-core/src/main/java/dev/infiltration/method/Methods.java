// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.method;

import dev.infiltration.field.Surface;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.UnitSystem;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The known test methods: the built-in ones and those of the user.
 *
 * <pre>{@code
 * Methods methods = Methods.builtIn().with(mine);
 * methods.find("C1781");                            // Optional[unit-pavement]
 * }</pre>
 */
public final class Methods {

    private static final Methods BUILT_IN = new Methods(
            List.of(RingMethods.PERVIOUS_CONCRETE, RingMethods.UNIT_PAVEMENT, RingMethods.UTILITY_PRACTICE));

    private final List<TestMethod> known;

    private Methods(List<TestMethod> known) {
        this.known = List.copyOf(known);
    }

    /** {@return the built-in methods: {@code pervious-concrete}, {@code unit-pavement}, {@code utility-practice}} */
    public static Methods builtIn() {
        return BUILT_IN;
    }

    /** {@return pervious concrete after ASTM C1701/C1701M} */
    public static TestMethod perviousConcrete() {
        return RingMethods.PERVIOUS_CONCRETE;
    }

    /** {@return permeable unit pavement after ASTM C1781/C1781M} */
    public static TestMethod unitPavement() {
        return RingMethods.UNIT_PAVEMENT;
    }

    /** {@return the practice of utilities: all types of surface by the same steps, two locations for each surface} */
    public static TestMethod utilityPractice() {
        return RingMethods.UTILITY_PRACTICE;
    }

    /**
     * {@return these methods and another one}, which replaces one with the same id
     *
     * @param method the method
     * @throws IllegalArgumentException if one of its names belongs to a method with another id
     */
    public Methods with(TestMethod method) {
        List<TestMethod> others =
                known.stream().filter(other -> !other.id().equals(method.id())).toList();
        Stream.concat(Stream.of(method.id()), method.aliases().stream())
                .filter(name -> others.stream().anyMatch(other -> other.isNamed(name)))
                .findFirst()
                .ifPresent(name -> {
                    throw new IllegalArgumentException("method: expected names that no other method has, got " + name
                            + ", a name of another method");
                });
        return new Methods(Stream.concat(Stream.of(method), others.stream()).toList());
    }

    /** {@return every known method, the latest first} */
    public List<TestMethod> all() {
        return known;
    }

    /**
     * {@return the method with a name; empty if there is none}
     *
     * @param name id or alias, in any case of letters
     */
    public Optional<TestMethod> find(String name) {
        return known.stream().filter(method -> method.isNamed(name)).findFirst();
    }

    /** {@return the longest time, in seconds, for which any method requires a clear distance between locations} */
    public BigDecimal longestSpacingTime() {
        return known.stream()
                .map(method ->
                        method.limit(Limit.SPACING_TIME).in(UnitSystem.NEITHER).lowest())
                .filter(Objects::nonNull)
                .map(time -> time.exactIn(FieldUnit.SECOND))
                .max(Comparator.naturalOrder())
                .orElse(BigDecimal.ZERO);
    }

    /**
     * {@return the method of a visit that names none}
     *
     * @param type type of the surface; null if it is not known
     */
    public TestMethod forSurface(Surface.@Nullable Type type) {
        TestMethod standard = type == Surface.Type.PERVIOUS_CONCRETE
                ? RingMethods.PERVIOUS_CONCRETE
                : type == Surface.Type.PAVERS || type == Surface.Type.GRID
                        ? RingMethods.UNIT_PAVEMENT
                        : RingMethods.UTILITY_PRACTICE;
        return find(standard.id()).orElse(standard);
    }
}
