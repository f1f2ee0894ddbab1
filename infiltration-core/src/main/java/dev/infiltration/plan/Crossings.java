// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import java.util.ArrayList;
import java.util.List;

/** Edges of polygons that cross where they must not. */
final class Crossings {

    /** A corner, the next one, and which ring they belong to. */
    private record Edge(int ring, double fromX, double fromY, double toX, double toY) {

        /** {@return whether both share a corner as neighbours do} */
        boolean follows(Edge other) {
            return ring == other.ring
                    && (isAt(toX, toY, other.fromX, other.fromY) || isAt(fromX, fromY, other.toX, other.toY));
        }

        boolean crosses(Edge other) {
            return side(other.fromX, other.fromY) * side(other.toX, other.toY) <= 0
                    && other.side(fromX, fromY) * other.side(toX, toY) <= 0
                    && spans(fromX, toX, other.fromX, other.toX)
                    && spans(fromY, toY, other.fromY, other.toY);
        }

        private double side(double x, double y) {
            return Math.signum((toX - fromX) * (y - fromY) - (toY - fromY) * (x - fromX));
        }
    }

    private Crossings() {}

    /**
     * Refuses polygons of which two edges meet anywhere but at the corner they share.
     *
     * @throws IllegalArgumentException if two do
     */
    static void refuse(List<double[]> rings) {
        List<Edge> edges = new ArrayList<>();
        for (int i = 0; i < rings.size(); i++) {
            edges.addAll(edges(i, rings.get(i)));
        }
        for (int i = 0; i < edges.size(); i++) {
            for (Edge other : edges.subList(0, i)) {
                if (!edges.get(i).follows(other) && edges.get(i).crosses(other)) {
                    throw new IllegalArgumentException("corners: edges cross: " + edges.get(i) + ", " + other);
                }
            }
        }
    }

    private static List<Edge> edges(int ring, double[] corners) {
        List<Edge> edges = new ArrayList<>();
        int last = corners.length - 2;
        for (int i = 0; i < corners.length; last = i, i += 2) {
            edges.add(new Edge(ring, corners[last], corners[last + 1], corners[i], corners[i + 1]));
        }
        return edges;
    }

    private static boolean isAt(double x, double y, double otherX, double otherY) {
        return x == otherX && y == otherY;
    }

    /** {@return whether two intervals meet} */
    private static boolean spans(double from, double to, double otherFrom, double otherTo) {
        return Math.max(from, to) >= Math.min(otherFrom, otherTo) && Math.max(otherFrom, otherTo) >= Math.min(from, to);
    }
}
