// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.infiltration.field.ClockTime;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import javax.measure.quantity.Time;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InstantRangeTest {

    private static final ZoneId ZONE = ZoneId.of("America/Chicago");

    /** Offsets: UTC-6, in summer UTC-5; 2026-03-08 02:00 to 03:00 is left out, 2026-11-01 01:00 to 02:00 comes twice. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            # written (source: time zone database, America/Chicago, 2026) | earliest         | latest
            2026-06-03T09:10:15          | 2026-06-03T14:10:15Z | 2026-06-03T14:10:15Z
            2026-06-03T09:10             | 2026-06-03T14:10:00Z | 2026-06-03T14:11:00Z
            2026-06-03T09:10:15+02:00    | 2026-06-03T07:10:15Z | 2026-06-03T07:10:15Z
            2026-11-01T01:30             | 2026-11-01T06:30:00Z | 2026-11-01T07:31:00Z
            2026-11-01T01:30:00          | 2026-11-01T06:30:00Z | 2026-11-01T07:30:00Z
            2026-03-08T02:30:00          | 2026-03-08T07:30:00Z | 2026-03-08T08:30:00Z
            """)
    void writtenTimeIsAnyInstantItMayBe(String written, Instant earliest, Instant latest) {
        assertEquals(new InstantRange(earliest, latest), InstantRange.of(ClockTime.parse(written), ZONE));
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({
        "141.7, s, PT2M21.7S",
        "2, min, PT2M",
        "0.0000000019, s, PT0.000000001S",
        "1e999, s, PT277777H46M40S",
    })
    void timesAreCutDownToWhatDurationsHold(String digits, String unit, Duration expected) {
        assertEquals(
                expected,
                InstantRange.duration(
                        Reading.of(digits, FieldUnit.parse(unit, Time.class).orElseThrow())));
    }
}
