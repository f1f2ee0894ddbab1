// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleBinaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The lowest points of a function over one cell of a lattice: the best of a net of points, each then followed downhill.
 *
 * @param tiling   whose cell it is
 * @param function what is to be low, of x and y in mm; it repeats with the lattice
 */
record OffsetSearch(Tiling tiling, DoubleBinaryOperator function) {

    /** Points along each side of the cell: a cell of 200 mm is looked at every 6 mm. */
    private static final int NET = 32;

    /** The last step downhill, as a share of the cell's sides. */
    private static final double FINE = 1e-7;

    private static final int[][] WAYS = {{1, 0}, {0, 1}, {-1, 0}, {0, -1}, {1, 1}, {-1, 1}, {-1, -1}, {1, -1}};

    /**
     * A point of the cell.
     *
     * @param i     share of the first vector
     * @param j     share of the second vector
     * @param value the function there
     */
    record Point(double i, double j, double value) {}

    /** {@return the lows of the net's valleys, lowest first} */
    List<Point> lows() {
        Point[] net = IntStream.range(0, NET * NET)
                .mapToObj(k -> point(share(k / NET), share(k % NET)))
                .toArray(Point[]::new);
        return IntStream.range(0, NET * NET)
                .filter(k -> isValley(net, k))
                .mapToObj(k -> downhill(net[k]))
                .sorted(Comparator.comparingDouble(Point::value))
                .toList();
    }

    double x(Point point) {
        return point.i * tiling.ax() + point.j * tiling.bx();
    }

    double y(Point point) {
        return point.i * tiling.ay() + point.j * tiling.by();
    }

    private Point point(double i, double j) {
        Point place = new Point(i, j, 0);
        return new Point(i, j, function.applyAsDouble(x(place), y(place)));
    }

    private static double share(int step) {
        return step / (double) NET;
    }

    private static boolean isValley(Point[] net, int k) {
        int row = k / NET;
        int column = k % NET;
        return Stream.of(WAYS)
                .map(way -> net[wrapped(row + way[0]) * NET + wrapped(column + way[1])])
                .allMatch(neighbour -> net[k].value <= neighbour.value);
    }

    private static int wrapped(int index) {
        return Math.floorMod(index, NET);
    }

    private Point downhill(Point start) {
        Point low = start;
        for (double step = 0.5 / NET; step > FINE; ) {
            Point next = lowestAround(low, step);
            step = next.value < low.value ? step : step / 2;
            low = next.value < low.value ? next : low;
        }
        return low;
    }

    private Point lowestAround(Point from, double step) {
        return Stream.of(WAYS)
                .map(way -> point(from.i + way[0] * step, from.j + way[1] * step))
                .min(Comparator.comparingDouble(Point::value))
                .orElseThrow();
    }
}
