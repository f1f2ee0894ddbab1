// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import dev.infiltration.rate.RingTerm.Goes;
import dev.infiltration.units.InfiltrationRate;
import java.util.List;

/** The amounts of one ring test, and its rate as a function of how far they are off. */
record RunAmounts(InfiltrationRate rate, double kilograms, double millimetres, double seconds) {

    RunAmounts {
        requirePositive("kilograms", kilograms);
        requirePositive("millimetres", millimetres);
        requirePositive("seconds", seconds);
    }

    /** {@return whether all three are above 0 and finite} */
    static boolean areUsable(double kilograms, double millimetres, double seconds) {
        return isUsable(kilograms) && isUsable(millimetres) && isUsable(seconds);
    }

    private static boolean isUsable(double value) {
        return value > 0 && !Double.isInfinite(value);
    }

    static void requirePositive(String name, double value) {
        if (!isUsable(value)) {
            throw new IllegalArgumentException(name + ": allowed above 0 and finite, found " + value);
        }
    }

    private double amount(Goes goes) {
        return switch (goes) {
            case WITH_MASS -> kilograms;
            case WITH_DIAMETER -> millimetres;
            case WITH_TIME -> seconds;
            case WITH_VOLUME -> 1;
        };
    }

    /** {@return by what share of itself the rate changes for a unit of a term} */
    double relativeSensitivity(RingTerm kind) {
        return kind.sensitivity() / amount(kind.goes());
    }

    /** {@return the rate in mm/h with each term off by so much}; infinite when nothing is left of diameter or time */
    double rate(List<RingTerm> kinds, double[] deviations) {
        double diameter = Math.max(0, share(Goes.WITH_DIAMETER, kinds, deviations));
        double time = Math.max(0, share(Goes.WITH_TIME, kinds, deviations));
        double volume = share(Goes.WITH_MASS, kinds, deviations) * share(Goes.WITH_VOLUME, kinds, deviations);
        return rate.millimetresPerHour() * volume / (diameter * diameter * time);
    }

    /** What an amount is, as a share of what it was taken for. */
    private double share(Goes goes, List<RingTerm> kinds, double[] deviations) {
        double sum = 0;
        for (int i = 0; i < deviations.length; i++) {
            sum += kinds.get(i).goes() == goes ? deviations[i] : 0;
        }
        return 1 + sum / amount(goes);
    }
}
