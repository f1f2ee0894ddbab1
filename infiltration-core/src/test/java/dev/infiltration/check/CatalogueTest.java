// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Ids are never renamed or reused, and their order is that of findings at one place. */
class CatalogueTest {

    /** Every id that was ever given out, in order, with the effect and bias it has unless a record says otherwise. */
    private static final String CATALOGUE = """
            data.required OMISSION NONE
            data.reference NO_RATE NONE
            data.duplicate CAUTION NONE
            data.clock DEVIATION EITHER
            data.unreadable OMISSION EITHER
            data.future CAUTION NONE
            ring.unusable NO_RATE NONE
            ring.inside-diameter DEVIATION NONE
            ring.height DEVIATION NONE
            ring.out-of-round CAUTION EITHER
            ring.resolution DEVIATION EITHER
            ring.resolution-unshown CAUTION EITHER
            visit.method-unrecorded CAUTION NONE
            visit.method-unknown OMISSION NONE
            visit.surface-type CAUTION NONE
            visit.unswept DEVIATION LOWERS
            visit.water-not-potable DEVIATION LOWERS
            visit.standing-water DEVIATION LOWERS
            visit.standing-water-unrecorded OMISSION LOWERS
            visit.rain DEVIATION LOWERS
            visit.rain-unshown CAUTION LOWERS
            visit.rain-during DEVIATION LOWERS
            visit.rain-unrecorded OMISSION LOWERS
            visit.hot-surface CAUTION RAISES
            visit.freezing CAUTION LOWERS
            visit.location-count DEVIATION NONE
            visit.area-unrecorded OMISSION NONE
            visit.spacing DEVIATION LOWERS
            visit.spacing-unknown CAUTION LOWERS
            visit.mixed-units CAUTION NONE
            visit.resolution DEVIATION EITHER
            visit.resolution-unshown CAUTION EITHER
            instrument.check-overdue CAUTION EITHER
            test.not-tested CAUTION NONE
            test.empty OMISSION NONE
            prewet.absent DEVIATION RAISES
            prewet.mass DEVIATION EITHER
            prewet.head DEVIATION EITHER
            prewet.discontinued CAUTION NONE
            prewet.end-unrecorded NO_RATE NONE
            prewet.standing DEVIATION LOWERS
            run.unusable NO_RATE NONE
            run.mass DEVIATION NONE
            run.water-by-volume DEVIATION EITHER
            run.pours-disagree DEVIATION EITHER
            run.start-delay DEVIATION RAISES
            run.start-delay-unshown CAUTION RAISES
            run.repeat-delay DEVIATION RAISES
            run.repeat-delay-unshown CAUTION RAISES
            run.too-many DEVIATION EITHER
            run.head DEVIATION EITHER
            run.discontinued CAUTION RAISES
            run.void CAUTION NONE
            run.end-unrecorded OMISSION RAISES
            run.event CAUTION EITHER
            run.slope-uncovered CAUTION LOWERS
            run.pair-spread CAUTION EITHER
            run.prewet-ratio CAUTION EITHER
            run.implausible CAUTION EITHER
            rate.water-temperature-unrecorded OMISSION LOWERS
            rate.water-temperature-range CAUTION LOWERS
            report.missing OMISSION NONE
            """;

    @Test
    void idsEffectsAndBiasesStandAsTheyWereGivenOut() {
        List<String> entries = Arrays.stream(BuiltInRule.values())
                .map(entry -> entry.id() + " " + entry.effect() + " " + entry.bias())
                .toList();
        assertEquals(CATALOGUE.lines().toList(), entries);
    }

    @ParameterizedTest
    @EnumSource(BuiltInRule.class)
    void everyRuleSaysWhatHoldsWhatIsWrongAndWhatCanBeDone(BuiltInRule entry) {
        List<String> texts = List.of(entry.holds(), entry.wrong(), entry.remedy());
        assertFalse(texts.stream().anyMatch(String::isBlank));
        assertTrue(entry.id().matches("[a-z]+\\.[a-z-]+"));
    }

    @Test
    void aRuleOfAUserComesLast() {
        assertTrue(BuiltInRule.order("mine.own") > BuiltInRule.order("report.missing"));
    }
}
