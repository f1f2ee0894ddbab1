// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

/**
 * The area that a circle and a simple polygon share, exact but for rounding.
 *
 * <p>Along each edge the part inside the circle cuts off a triangle with the centre, the parts outside cut off sectors
 * (Green's theorem; elementary plane geometry). A polygon is a list of x0, y0, x1, y1, …; run clockwise, its area is
 * negative, which is how a hole is told from a solid.
 */
final class CirclePolygon {

    private CirclePolygon() {}

    /** {@return the shared area, in the square of the unit of the lengths} */
    static double area(double[] polygon, double centreX, double centreY, double radius) {
        if (holds(polygon, centreX, centreY, radius)) {
            return signedArea(polygon);
        }
        double twice = 0;
        double fromX = polygon[polygon.length - 2] - centreX;
        double fromY = polygon[polygon.length - 1] - centreY;
        for (int i = 0; i < polygon.length; i += 2) {
            double toX = polygon[i] - centreX;
            double toY = polygon[i + 1] - centreY;
            twice += edge(fromX, fromY, toX, toY, radius * radius);
            fromX = toX;
            fromY = toY;
        }
        return twice / 2;
    }

    /** {@return whether all corners, and so the whole polygon, lie in the circle}: most do where a ring holds many units */
    private static boolean holds(double[] polygon, double centreX, double centreY, double radius) {
        for (int i = 0; i < polygon.length; i += 2) {
            double x = polygon[i] - centreX;
            double y = polygon[i + 1] - centreY;
            if (x * x + y * y > radius * radius) {
                return false;
            }
        }
        return true;
    }

    /** {@return the whole polygon's area, negative where it runs clockwise} */
    static double signedArea(double[] polygon) {
        double twice = 0;
        int last = polygon.length - 2;
        for (int i = 0; i < polygon.length; last = i, i += 2) {
            twice += polygon[last] * polygon[i + 1] - polygon[last + 1] * polygon[i];
        }
        return twice / 2;
    }

    /** {@return twice the area between the centre and an edge, within a circle of {@code square} = radius squared} */
    private static double edge(double fromX, double fromY, double toX, double toY, double square) {
        double stepX = toX - fromX;
        double stepY = toY - fromY;
        double length = stepX * stepX + stepY * stepY;
        double cross = fromX * toY - fromY * toX;
        double foot = -(fromX * stepX + fromY * stepY) / length;
        double half = StrictMath.sqrt(Math.max(0, square - cross * cross / length) / length);
        double enter = Math.max(0, foot - half);
        double leave = Math.min(1, foot + half);
        if (!(enter < leave)) {
            return sector(fromX, fromY, toX, toY, square);
        }
        return sector(fromX, fromY, fromX + enter * stepX, fromY + enter * stepY, square)
                + cross * (leave - enter)
                + sector(fromX + leave * stepX, fromY + leave * stepY, toX, toY, square);
    }

    private static double sector(double fromX, double fromY, double toX, double toY, double square) {
        return square * StrictMath.atan2(fromX * toY - fromY * toX, fromX * toX + fromY * toY);
    }
}
