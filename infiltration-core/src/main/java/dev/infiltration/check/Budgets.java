// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import dev.infiltration.field.Instrument;
import dev.infiltration.rate.Instruments;
import dev.infiltration.rate.RateConstant.Source;
import dev.infiltration.rate.UncertaintyBudget;
import dev.infiltration.units.Reading;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;

/**
 * Uncertainty budgets of prewettings and runs, from the instruments that their visits name.
 *
 * <p>A ring's diameter is one error wherever the ring was used: its tapes are those of all visits that used it.
 */
final class Budgets {

    private final Map<String, Set<Instrument>> tapes;

    private Budgets(Map<String, Set<Instrument>> tapes) {
        this.tapes = tapes;
    }

    static Budgets of(List<VisitAt> visits) {
        Map<String, Set<Instrument>> tapes = new TreeMap<>();
        for (VisitAt visit : visits) {
            List<Instrument> named =
                    Resolutions.named(visit).filter(Budgets::isTape).toList();
            for (TestAt test : named.isEmpty() ? List.<TestAt>of() : visit.tests()) {
                String ring = SubjectText.given(test.test().ring());
                if (ring != null) {
                    tapes.computeIfAbsent(ring, key -> new LinkedHashSet<>()).addAll(named);
                }
            }
        }
        return new Budgets(tapes);
    }

    private static boolean isTape(Instrument instrument) {
        return instrument.kind() == Instrument.Kind.TAPE;
    }

    Optional<UncertaintyBudget> of(PouringAt pouring) {
        TestAt test = pouring.test();
        Instruments instruments = instruments(test);
        return test.ring()
                .flatMap(ring ->
                        instruments.budget(pouring.place().toString(), test.equation(), ring, pouring.pouring()))
                .map(budget -> withWater(budget, instruments, pouring))
                .map(budget -> withEndPoint(budget, test.visit()));
    }

    /** One crew judges the end of every run of a visit: the error is taken to be the same in all of them. */
    private static UncertaintyBudget withEndPoint(UncertaintyBudget budget, VisitAt visit) {
        @Nullable Reading<Time> within = visit.visit().endPointWithin();
        return within == null ? budget : budget.withEndPoint(visit.place() + ", end point", within);
    }

    private Instruments instruments(TestAt test) {
        List<Instrument> instruments =
                new ArrayList<>(Resolutions.named(test.visit()).toList());
        String ring = SubjectText.given(test.test().ring());
        instruments.addAll(ring == null ? Set.of() : tapes.getOrDefault(ring, Set.of()));
        return new Instruments(instruments, test.visit().methodOrNull());
    }

    /** Where water was weighed and its density is that of the recorded temperature, the temperature's reading makes it uncertain. */
    private static UncertaintyBudget withWater(UncertaintyBudget budget, Instruments instruments, PouringAt pouring) {
        @Nullable Reading<Temperature> recorded = pouring.test().test().waterTemperature();
        boolean counts = pouring.constant()
                        .filter(constant -> constant.source() == Source.WATER_TEMPERATURE)
                        .isPresent()
                && pouring.pouring()
                        .pouredWater()
                        .filter(water -> !water.isVolume())
                        .isPresent();
        return recorded == null || !counts
                ? budget
                : instruments.withWater(budget, pouring.test().place() + ", water temperature", recorded);
    }
}
