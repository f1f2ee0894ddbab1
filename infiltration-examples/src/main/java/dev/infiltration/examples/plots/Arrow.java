// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.plots;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import org.knowm.xchart.style.markers.Marker;

/** An arrowhead that points to where a bounded rate may lie. */
final class Arrow extends Marker {

    private static final int NARROW = 2;

    private final int towardsX;
    private final int towardsY;

    private Arrow(int towardsX, int towardsY) {
        this.towardsX = towardsX;
        this.towardsY = towardsY;
    }

    static Arrow left() {
        return new Arrow(-1, 0);
    }

    static Arrow right() {
        return new Arrow(1, 0);
    }

    static Arrow up() {
        return new Arrow(0, -1);
    }

    static Arrow down() {
        return new Arrow(0, 1);
    }

    /** The bound itself lies at the flat side. */
    @Override
    public void paint(Graphics2D graphics, double x, double y, int size) {
        double wide = size / (double) NARROW + 1;
        Path2D head = new Path2D.Double();
        head.moveTo(x + towardsY * wide, y + towardsX * wide);
        head.lineTo(x - towardsY * wide, y - towardsX * wide);
        head.lineTo(x + towardsX * (size + 2), y + towardsY * (size + 2));
        head.closePath();
        graphics.setStroke(new BasicStroke(1));
        graphics.fill(head);
    }
}
