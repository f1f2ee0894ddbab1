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
 * <p>Never hurry: a missed time costs one prewetting. Traffic and safety always come first.
 */
public sealed interface NextStep {

    /** {@return the step for people, in a sentence} */
    String text();

    /**
     * Prewet the location, in a new test of the record.
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
                case START_MISSED -> "Too late to start the run: prewet again with " + water + ". Do not hurry.";
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
     * Stop waiting: the rate is below the user's limit. Stopping is no deviation; the result is an upper bound.
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
     * Correct what the record states is not as the method requires, and write it down, before any pouring.
     *
     * @param lack what to correct
     */
    record MakeReady(Lack lack) implements NextStep {

        /** What the record states as missing. */
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
     * Write down what is missing: without it there is no next step.
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
            /** All runs that the method uses in a day were made. */
            RUNS_MADE,
            /** The last pouring was stopped with water left, or water stood on the surface before. */
            WATER_STANDS,
            /** It rains. */
            RAIN,
            /** Another location was tested closer and more recently than the method allows. */
            TOO_NEAR,
            /** The record says why no test is made. */
            NOT_TESTED,
            /** The day of the visit is over, or has not begun. */
            OTHER_DAY
        }

        @Override
        public String text() {
            return switch (reason) {
                case RUNS_MADE -> "Stop here for today: all runs are made.";
                case WATER_STANDS -> "Stop here for today: water stands on the surface.";
                case RAIN -> "Stop here for today: rain. A pouring during rain is void.";
                case TOO_NEAR -> "Stop here for today: another location nearby was tested too recently.";
                case NOT_TESTED -> "No test here: the record states the reason.";
                case OTHER_DAY -> "No test now: today is not the day of the visit.";
            };
        }
    }

    private static String left(Optional<Duration> within) {
        return within.map(time -> " within " + time.toSeconds() + " s").orElse("");
    }
}
