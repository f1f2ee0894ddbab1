// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * A drawing of a pattern with a ring in it, as SVG: units light on dark joints, the ring a circle, its middle a cross.
 *
 * @param tiling    the pattern
 * @param axes      the angle from the units' length to the pattern's x axis, in degrees
 * @param radius    inside radius of the ring, in mm
 * @param placement where the ring lies and what it holds
 */
record PatternDrawing(Tiling tiling, double axes, double radius, RingPlacement placement) {

    /** How far the drawing reaches beyond the ring. */
    private static final double MARGIN = 1.3;

    String svg() {
        double reach = MARGIN * radius;
        RingOffset middle = placement.offset();
        return format(
                """
                <svg xmlns="http://www.w3.org/2000/svg" role="img" aria-labelledby="title desc" \
                viewBox="%.1f %.1f %.1f %.1f">
                <title id="title">Ring on a joint pattern</title>
                <desc id="desc">%s</desc>
                <rect x="%.1f" y="%.1f" width="%.1f" height="%.1f" fill="#4a4238"/>
                <g fill="#e4ddd0" transform="scale(1 -1) rotate(%.3f) translate(%.3f %.3f)">
                %s
                </g>
                <circle r="%.1f" fill="#1f6f8b" fill-opacity="0.25" stroke="#0b3c4d" stroke-width="%.2f"/>
                <path d="M-6 0H6M0 -6V6" stroke="#0b3c4d" stroke-width="%.2f"/>
                </svg>
                """,
                -reach,
                -reach,
                2 * reach,
                2 * reach,
                description(),
                -reach,
                -reach,
                2 * reach,
                2 * reach,
                -axes,
                -middle.alongX(axes),
                -middle.alongY(axes),
                faces(reach * StrictMath.sqrt(2)),
                radius,
                radius / 60,
                radius / 100);
    }

    private String description() {
        return format(
                "The middle of a ring of %.0f mm lies %.0f mm along x and %.0f mm along y from the datum, axes turned by "
                        + "%.0f degrees. Openings take up %.2f %% of the ring and %.2f %% of the pattern: %+.1f %%.",
                2 * radius,
                placement.offset().x(),
                placement.offset().y(),
                placement.offset().turn(),
                100 * placement.openShare(),
                100 * placement.patternShare(),
                100 * placement.mismatch());
    }

    /** {@return the faces, voids in the joints' colour} */
    private String faces(double reach) {
        RingOffset middle = placement.offset();
        return tiling.facesNear(middle.alongX(axes), middle.alongY(axes), reach)
                .map(face -> "<polygon points=\"" + corners(face) + (isVoid(face) ? "\" fill=\"#4a4238\"/>" : "\"/>"))
                .collect(Collectors.joining("\n"));
    }

    private static boolean isVoid(double[] face) {
        return CirclePolygon.signedArea(face) < 0;
    }

    private static String corners(double[] face) {
        return IntStream.iterate(0, i -> i < face.length, i -> i + 2)
                .mapToObj(i -> format("%.2f,%.2f", face[i], face[i + 1]))
                .collect(Collectors.joining(" "));
    }

    private static String format(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }
}
