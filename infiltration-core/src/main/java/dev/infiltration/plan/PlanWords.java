// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import dev.infiltration.field.Surface;
import dev.infiltration.method.Band;
import dev.infiltration.method.Limit;
import dev.infiltration.method.Range;
import dev.infiltration.method.TestMethod;
import dev.infiltration.units.Reading;
import dev.infiltration.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Length;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;

/** What a plan says in words, its numbers taken from the method. All of it common practice unless the method says more. */
final class PlanWords {

    private PlanWords() {}

    static List<String> cautions(VisitPlan plan) {
        return List.of(
                "Traffic: close the bays, set up traffic control by local rules, wear high-visibility clothing, and mind "
                        + "reversing vehicles: a kneeling person is not seen in a mirror.",
                "Do not work alone where vehicles move; agree who watches while the other reads.",
                "By night: light the work so that the crew is seen and the head marks are read.",
                "Lightning: stop at the first thunder and go into a building or a closed vehicle, never under a tree; wait "
                        + "30 min after the last thunder.",
                "Heat: shade, drinking water and breaks; kneel on a board or pads, a dark surface burns.",
                "Dust from brooming can contain silica: stand upwind, wear a dust mask by local rules, and do not wet the "
                        + "surface. Pick the sweepings up: left on the surface they clog the pavement.",
                "Lifting: " + plan.heaviestRun()
                        + " of water for one run, and the bucket: split it over two vessels, and mind the "
                        + "total load of the vehicle"
                        + plan.waterInAll()
                                .map(all -> ", " + all + " of water alone")
                                .orElse("") + ".",
                "Trips: keep hoses, vessels and the ring off walkways.",
                "Small children drown in buckets: never leave water unattended, and empty the buckets after use.",
                "Ice: do not pour water near or below freezing: it freezes, and people slip. Wait for a thaw. Do not spread "
                        + "grit or sand: it clogs a permeable pavement. Keep people off ice until it has melted.",
                "Never hurry in traffic to keep a time limit: if you miss it, prewet again.",
                "Local codes, the latest licensed edition of the standard and the engineer of record govern.");
    }

    static List<String> equipment(VisitPlan plan) {
        TestMethod method = plan.method();
        UnitSystem system = plan.system();
        List<String> items = new ArrayList<>(List.of("ring"
                + phrase(", inside diameter ", method.limit(Limit.INSIDE_DIAMETER), system)
                + phrase(", height ", method.limit(Limit.RING_HEIGHT), system)
                + phrase(", head marked at ", method.limit(Limit.HEAD), system)));
        items.add("tape" + readTo(method.limit(Limit.DIAMETER_RESOLUTION), system));
        items.add("balance" + readTo(method.limit(Limit.MASS_RESOLUTION), system));
        items.add("stopwatch" + readTo(method.limit(Limit.TIME_RESOLUTION), system));
        items.add("potable water, "
                + plan.waterInAll().map(Object::toString).orElse(plan.waterPerLocation() + " a location"));
        items.add("vessels for " + plan.waterPerLocation() + ", two for each run");
        items.add("sealing compound, broom, chalk, thermometer, camera, field form");
        if (isJointed(plan.surface())) {
            items.add("joint filling of the kind and grading that the pavement has, never sand in its place");
        }
        return List.copyOf(items);
    }

    /** {@return words and the range of a limit; nothing where the method sets no limit} */
    private static String phrase(String words, Band<?> band, UnitSystem system) {
        Range<?> range = band.in(system);
        return range.isUnlimited() ? "" : words + range;
    }

    private static String readTo(Band<?> resolution, UnitSystem system) {
        @Nullable Reading<?> step = resolution.in(system).highest();
        return step == null ? "" : " read to " + step;
    }

    static List<String> steps(VisitPlan plan) {
        TestMethod method = plan.method();
        UnitSystem system = plan.system();
        List<String> steps = new ArrayList<>();
        Band<Time> dry = method.limit(Limit.DRY_TIME);
        steps.add("Make sure that no water stands on the surface"
                + (dry.isUnlimited() ? "" : " and that the last rain ended " + dry + " ago") + ".");
        steps.add(spacing(method, system) + "Broom off loose material.");
        steps.add(
                isJointed(plan.surface())
                        ? "Move the ring until the open joint area inside it is representative of the pattern; seal the ring "
                                + "and the joints that cross its wall."
                        : "Seal the ring to the surface.");
        steps.add("Prewet" + phrase(" with ", method.limit(Limit.PREWET_MASS), system)
                + phrase(" at a head of ", method.limit(Limit.HEAD), system)
                + "; time it from first water to no free water.");
        method.massSteps()
                .forEach(step -> steps.add(run(step.below(), step.mass().in(system))));
        steps.add("Start the run" + phrase(" ", method.limit(Limit.START_DELAY), system)
                + " after the prewetting ended, at the same head.");
        steps.add("A repeat that starts" + phrase(" ", method.limit(Limit.REPEAT_DELAY), system)
                + " after the end of the run before it needs no prewetting; at most " + method.runsPerDay()
                + " runs at a location on a day.");
        steps.add("Take the ring off; remove all of the sealing compound, which clogs the pavement"
                + (isJointed(plan.surface()) ? "; refill the joints" : "") + "; write down what is missing.");
        return List.copyOf(steps);
    }

    private static String spacing(TestMethod method, UnitSystem system) {
        Range<Length> clear = method.limit(Limit.CLEAR_SPACING).in(system);
        @Nullable
        Reading<Time> within = method.limit(Limit.SPACING_TIME).in(system).lowest();
        return clear.isUnlimited() || within == null
                ? "Place the ring. "
                : "Place the ring " + clear + " clear of any location tested within " + within + ". ";
    }

    private static String run(@Nullable Object below, Range<?> mass) {
        String when = below == null ? "Otherwise" : "If the prewetting took less than " + below;
        return when + ", the run needs " + mass + ".";
    }

    static boolean isJointed(Surface surface) {
        return surface.type() == Surface.Type.PAVERS || surface.type() == Surface.Type.GRID;
    }
}
