// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

import dev.infiltration.exchange.text.Digits;
import dev.infiltration.exchange.text.Stopwatch;
import dev.infiltration.field.WaterReading;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonToken;

/** Reads an amount: a number or a string of digits, its unit, and the resolution where it is stated. */
final class AmountReader implements ValueReader {

    private static final String NUMBER =
            "a number or a string of digits, at most 34 of them, zero or of magnitude 1e-15 to 1e15";

    private final List<FieldUnit<?>> units;
    private final List<Stopwatch> watches;
    private final String expectedUnit;
    private final Function<Reading<?>, Object> result;

    private AmountReader(
            String kind, List<FieldUnit<?>> units, List<Stopwatch> watches, Function<Reading<?>, Object> result) {
        this.units = units;
        this.watches = watches;
        this.expectedUnit = Stream.concat(
                        units.stream().map(FieldUnit::code), watches.stream().map(Stopwatch::unit))
                .collect(Collectors.joining(", ", "a unit of " + kind + " (", ")"));
        this.result = result;
    }

    /** {@return a reader of readings of one kind of quantity} */
    static AmountReader of(Class<?> kind) {
        return new AmountReader(name(kind), units(Set.of(kind)), List.of(), reading -> reading);
    }

    /** {@return a reader of times that may be written as a stopwatch shows them} */
    static AmountReader ofElapsed() {
        List<Stopwatch> watches = List.of(Stopwatch.values());
        return new AmountReader(name(Time.class), units(Set.of(Time.class)), watches, reading -> reading);
    }

    /** {@return a reader of readings of any kind} */
    static AmountReader ofAnyKind() {
        return new AmountReader("any kind", FieldUnit.all(), List.of(), reading -> reading);
    }

    /** {@return a reader of water, weighed or measured by volume} */
    static AmountReader ofWater() {
        List<FieldUnit<?>> units = units(Set.of(Mass.class, Volume.class));
        return new AmountReader("mass or volume", units, List.of(), WaterReading::new);
    }

    private static List<FieldUnit<?>> units(Set<Class<?>> kinds) {
        return FieldUnit.all().stream()
                .filter(unit -> kinds.contains(unit.kind()))
                .toList();
    }

    private static String name(Class<?> kind) {
        return kind.getSimpleName().toLowerCase(Locale.ROOT);
    }

    @Override
    public @Nullable Object read(BookReading pass, JsonToken token) {
        if (token != JsonToken.START_OBJECT) {
            return pass.refuse("an amount such as {\"value\": 40.00, \"unit\": \"[lb_av]\"}");
        }
        AmountParts parts = AmountParts.read(pass);
        return pass.tokens().ended() ? null : judge(parts);
    }

    private Object judge(AmountParts parts) {
        parts.reportMissing();
        @Nullable Stopwatch watch = watch(parts);
        @Nullable FieldUnit<?> unit = watch == null ? unit(parts) : FieldUnit.SECOND;
        @Nullable BigDecimal value = watch == null ? value(parts) : shown(parts, watch);
        @Nullable BigDecimal resolution = resolution(parts, watch);
        return unit == null || value == null || !parts.isReadable()
                ? UNREADABLE
                : result.apply(reading(value, unit, resolution));
    }

    private static <Q extends Quantity<Q>> Reading<Q> reading(
            BigDecimal value, FieldUnit<Q> unit, @Nullable BigDecimal resolution) {
        return new Reading<>(value, unit, resolution);
    }

    private @Nullable Stopwatch watch(AmountParts parts) {
        AmountParts.@Nullable Part unit = parts.unit();
        @Nullable String name = unit == null ? null : unit.string();
        return watches.stream()
                .filter(watch -> watch.unit().equals(name))
                .findFirst()
                .orElse(null);
    }

    private @Nullable FieldUnit<?> unit(AmountParts parts) {
        AmountParts.@Nullable Part part = parts.unit();
        if (part == null) {
            return null;
        }
        @Nullable String name = part.string();
        @Nullable
        FieldUnit<?> unit = name == null ? null : FieldUnit.parse(name).orElse(null);
        if (unit != null && units.contains(unit)) {
            return unit;
        }
        parts.report(part, expectedUnit);
        return null;
    }

    private @Nullable BigDecimal value(AmountParts parts) {
        AmountParts.@Nullable Part part = parts.value();
        if (part == null) {
            return null;
        }
        @Nullable BigDecimal number = part.number();
        if (number == null && (parts.isReadable() || watches.stream().noneMatch(watch -> shown(part, watch) != null))) {
            parts.report(part, NUMBER);
        }
        return number;
    }

    /** {@return the seconds that a watch showed, its digits kept} */
    private static @Nullable BigDecimal shown(AmountParts parts, Stopwatch watch) {
        AmountParts.@Nullable Part part = parts.value();
        @Nullable BigDecimal seconds = part == null ? null : shown(part, watch);
        if (part != null && seconds == null) {
            parts.report(part, "a string such as \"" + watch.example() + "\"");
        }
        return seconds;
    }

    private static @Nullable BigDecimal shown(AmountParts.Part part, Stopwatch watch) {
        @Nullable String text = part.string();
        @Nullable BigDecimal seconds = text == null ? null : watch.seconds(text);
        return seconds == null || !Digits.isAmount(seconds) ? null : seconds;
    }

    /** A resolution is in the unit of the value: beside what a watch shows, as a watch shows it or in seconds. */
    private static @Nullable BigDecimal resolution(AmountParts parts, @Nullable Stopwatch watch) {
        AmountParts.@Nullable Part part = parts.resolution();
        if (part == null) {
            return null;
        }
        @Nullable BigDecimal shown = watch == null ? null : shown(part, watch);
        @Nullable BigDecimal resolution = shown == null ? part.number() : shown;
        if (resolution == null) {
            parts.report(part, NUMBER);
        }
        return resolution;
    }
}
