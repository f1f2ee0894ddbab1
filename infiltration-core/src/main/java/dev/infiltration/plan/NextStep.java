// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import dev.infiltration.field.JsonName;
import dev.infiltration.method.Range;
import dev.infiltration.units.InfiltrationRate;
import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.Optional;
import javax.measure.quantity.Mass;

/**
 * What to do next at a location.
 *
 * <p>No step hurries anyone: a time that is missed costs one prewetting. Traffic and safety come first, always.
 */
public sealed interface NextStep {

    /** {@return the step for people, in a sentence} */
    String text();

    /**
     * Prewet the spot, in a new test of the record.
     *
     * @param water the mass of water
     * @param occasion why now
     */
    record PreWet(Range<Mass> water, Occasion occasion) implements NextStep {

        /** Occasion a prewetting is due. */
        public enum Occasion implements JsonName {
            /** Nothing has been poured here yet. */
            FIRST,
            /** The first run was not started in time after the prewetting. */
            START_MISSED,
            /** The time for a repeat without prewetting is over; another run is allowed, not required. */
            REPEAT_MISSED,
            /** What was poured last is void. */
            VOID
        }

        @Override
        public String text() {
            String prewet = "Prewet with " + water + ".";
            return switch (occasion) {
                case FIRST -> prewet;
                case START_MISSED ->
                    prewet + " The time to start is over: it costs one prewetting, no more; do not hurry.";
                case REPEAT_MISSED -> "If another run is wanted: " + prewet + " Do not hurry.";
                case VOID -> prewet + " What was poured last is void.";
            };
        }
    }

    /**
     * Start the first run of the test.
     *
     * @param water  the mass of water
     * @param within the time left to start in; empty where the method sets none
     */
    record Start(Range<Mass> water, Optional<Duration> within) implements NextStep {

        @Override
        public String text() {
            return "Start the run with " + water + left(within) + ". If it is missed, prewet again: do not hurry.";
        }
    }

    /**
     * Start another run without prewetting, if one is wanted.
     *
     * @param water  the mass of water
     * @param within the time left to start in; empty where the method sets none
     */
    record Repeat(Range<Mass> water, Optional<Duration> within) implements NextStep {

        @Override
        public String text() {
            return "The run may be repeated without prewetting, with " + water + left(within)
                    + ". If it is missed, prewet again: do not hurry.";
        }
    }

    /**
     * Keep the head and watch until no free water is left.
     *
     * @param atMost what the rate is at most, so far; empty where ring or water is not known, nothing has passed, or what
     *               happened meanwhile (the ring moved, the head was lost or never reached) leaves no such bound
     */
    record Watch(Optional<InfiltrationRate> atMost) implements NextStep {

        @Override
        public String text() {
            return "Watch until no free water is left, and stop the watch."
                    + atMost.map(rate -> " So far the rate is at most " + rate + ".")
                            .orElse("");
        }
    }

    /**
     * Stop waiting: the rate is surely below the user's limit. Stopping is no deviation; the rate is told as at most so much.
     *
     * @param atMost what the rate is at most, so far
     */
    record StopWaiting(InfiltrationRate atMost) implements NextStep {

        @Override
        public String text() {
            return "Waiting may stop: the rate is at most " + atMost
                    + ", below the limit. Write down the time watched, the depth left, and that it was stopped.";
        }
    }

    /**
     * Make good what the record says is not as the method asks, and write it down, before anything is poured.
     *
     * @param lack what is not
     */
    record MakeReady(Lack lack) implements NextStep {

        /** What the record says is lacking. */
        public enum Lack implements JsonName {
            /** The surface was not swept. */
            SWEEPING,
            /** The water at hand is not potable. */
            POTABLE_WATER
        }

        @Override
        public String text() {
            return switch (lack) {
                case SWEEPING -> "Pour nothing yet: broom off loose material, and write down that it is swept.";
                case POTABLE_WATER -> "Pour nothing yet: get potable water, and write down that it is.";
            };
        }
    }

    /**
     * Wait: it has not been dry long enough.
     *
     * @param until when the first prewetting may start, by the clock of the site
     */
    record NotYet(ZonedDateTime until) implements NextStep {

        @Override
        public String text() {
            return "Wait until " + until.toLocalDate() + " " + until.toLocalTime() + " (" + until.getZone()
                    + "): the last rain is not long enough ago.";
        }
    }

    /**
     * Write down what is missing: without it the next step cannot be told.
     *
     * @param member the member of the record that is missing, {@code start} or {@code elapsed}
     */
    record WriteDown(String member) implements NextStep {

        @Override
        public String text() {
            return "Write down the " + member + " of what was poured last.";
        }
    }

    /**
     * Nothing more is done at this location today.
     *
     * @param reason why not
     */
    record Done(Reason reason) implements NextStep {

        /** Reason a location is done. */
        public enum Reason implements JsonName {
            /** As many runs as the method counts in a day were made. */
            RUNS_MADE,
            /** What was poured last was given up and its water stands, or water stood before. */
            WATER_STANDS,
            /** It rains. */
            RAIN,
            /** Another location was tested nearer, and more shortly before, than the method allows. */
            TOO_NEAR,
            /** The record says why no test is made. */
            NOT_TESTED,
            /** The day of the visit is over, or has not begun. */
            OTHER_DAY
        }

        @Override
        public String text() {
            return switch (reason) {
                case RUNS_MADE -> "Done here for the day: the runs are made.";
                case WATER_STANDS -> "Done here for the day: water stands.";
                case RAIN -> "Done here for the day: rain. What it falls on while it is poured is void.";
                case TOO_NEAR -> "Done here for the day: another location was tested too near, too shortly before.";
                case NOT_TESTED -> "Done here: the record says why no test is made.";
                case OTHER_DAY -> "Done here: it is not the day of the visit.";
            };
        }
    }

    private static String left(Optional<Duration> within) {
        return within.map(time -> " within " + time.toSeconds() + " s").orElse("");
    }
}
