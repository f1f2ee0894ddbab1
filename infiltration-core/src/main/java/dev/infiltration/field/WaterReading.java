// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.field;

import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import dev.infiltration.units.UnitSystem;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;

/**
 * An amount of water as it was written: weighed, or measured by volume.
 *
 * <p>A volume counts as the mass it has at 1000 kg/m³, exactly: 18.0 L is 18.0 kg. The system is that of the unit as
 * written, for gallons too.
 *
 * @param reading a reading of mass or of volume
 */
public record WaterReading(Reading<?> reading) {

    /**
     * Checks the kind of reading.
     *
     * @throws IllegalArgumentException if it is neither a mass nor a volume
     */
    public WaterReading {
        Class<?> kind = reading.unit().kind();
        if (kind != Mass.class && kind != Volume.class) {
            throw new IllegalArgumentException("reading: expected a mass or a volume, got " + reading);
        }
    }

    /**
     * {@return weighed water}
     *
     * @param mass the reading of the balance
     */
    public static WaterReading weighed(Reading<Mass> mass) {
        return new WaterReading(mass);
    }

    /**
     * {@return water measured by volume}
     *
     * @param volume the volume
     */
    public static WaterReading measured(Reading<Volume> volume) {
        return new WaterReading(volume);
    }

    /** {@return whether it was measured by volume} */
    public boolean isVolume() {
        return reading.unit().kind() == Volume.class;
    }

    /** The volume, where it was measured by volume. */
    Reading<Volume> volume() {
        return reading.as(Volume.class).orElseThrow();
    }

    /** {@return the system it was written in} */
    public UnitSystem system() {
        return reading.unit().system();
    }

    /** {@return whether it is above zero} */
    public boolean isPositive() {
        return reading.isPositive();
    }

    /** {@return the mass it counts for, exactly, with its stated resolution: a volume in kilograms} */
    public Reading<Mass> mass() {
        return reading.as(Mass.class).orElseGet(this::massOfVolume);
    }

    private Reading<Mass> massOfVolume() {
        Reading<Volume> volume = volume();
        Reading<Mass> mass = kilograms(volume);
        return volume.statedResolution()
                .map(stated -> mass.withResolution(kilograms(stated).value()))
                .orElse(mass);
    }

    /** A litre counts for a kilogram. */
    private static Reading<Mass> kilograms(Reading<Volume> volume) {
        return Reading.of(volume.exactIn(FieldUnit.LITRE), FieldUnit.KILOGRAM);
    }

    /** {@return the mass that one unit of the last digit written counts for} */
    public Reading<Mass> lastDigit() {
        return new WaterReading(reading.lastDigit()).mass();
    }

    /** {@return the mass it counts for, in kilograms} */
    public double kilograms() {
        return mass().in(FieldUnit.KILOGRAM);
    }

    /** {@return the reading for people} */
    @Override
    public String toString() {
        return reading.toString();
    }
}
