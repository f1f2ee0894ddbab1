// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import dev.infiltration.method.Limit;
import dev.infiltration.field.Surface;
import dev.infiltration.method.Range;
import dev.infiltration.method.TestMethod;
import dev.infiltration.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
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
        List<String> items = new ArrayList<>(List.of(
                "ring, inside diameter " + method.limit(Limit.INSIDE_DIAMETER).in(system) + ", height "
                        + method.limit(Limit.RING_HEIGHT).in(system) + ", head marked at "
                        + method.limit(Limit.HEAD).in(system),
                "tape read to " + step(method.limit(Limit.DIAMETER_RESOLUTION).in(system)),
                "balance read to " + step(method.limit(Limit.MASS_RESOLUTION).in(system)),
                "stopwatch read to " + step(method.limit(Limit.TIME_RESOLUTION).in(system)),
                "potable water, "
                        + plan.waterInAll().map(Object::toString).orElse(plan.waterPerLocation() + " a location"),
                "vessels for " + plan.waterPerLocation() + ", two to a run",
                "sealing compound, broom, chalk, thermometer, camera, field form"));
        if (isJointed(plan.surface())) {
            items.add("joint filling of the kind and grading that the pavement has, never sand in its place");
        }
        return List.copyOf(items);
    }

    private static String step(Range<?> resolution) {
        return String.valueOf(resolution.highest());
    }

    static List<String> steps(VisitPlan plan) {
        TestMethod method = plan.method();
        UnitSystem system = plan.system();
        List<String> steps = new ArrayList<>(List.of(
                "See that no water stands, and that the last rain ended " + method.limit(Limit.DRY_TIME) + " ago.",
                "Place the ring " + method.limit(Limit.CLEAR_SPACING).in(system) + " clear of any location tested within "
                        + method.limit(Limit.SPACING_TIME).in(system).lowest() + "; broom off loose material."));
        steps.add(
                isJointed(plan.surface())
                        ? "Move the ring until units and joints in it stand for the pattern; seal it, and the joints that "
                                + "cross its wall."
                        : "Seal the ring to the surface.");
        steps.add("Prewet with " + method.limit(Limit.PREWET_MASS).in(system) + " at a head of "
                + method.limit(Limit.HEAD).in(system) + "; time it from first water to no free water.");
        method.massSteps()
                .forEach(step -> steps.add(run(step.below(), step.mass().in(system))));
        steps.add("Start the run " + method.limit(Limit.START_DELAY).in(system) + " after the prewetting ended, at the same head.");
        steps.add("A repeat that starts " + method.limit(Limit.REPEAT_DELAY).in(system) + " after the run before it ended needs no "
                + "prewetting; at most " + method.runsPerDay() + " runs at a location and day.");
        steps.add("Take the ring off; remove all of the sealing compound, which clogs the pavement"
                + (isJointed(plan.surface()) ? "; refill the joints" : "") + "; write down what is missing.");
        return List.copyOf(steps);
    }

    private static String run(@Nullable Object below, Range<?> mass) {
        String when = below == null ? "Otherwise" : "If the prewetting took less than " + below;
        return when + ", the run needs " + mass + ".";
    }

    static boolean isJointed(Surface surface) {
        return surface.type() == Surface.Type.PAVERS || surface.type() == Surface.Type.GRID;
    }
}
