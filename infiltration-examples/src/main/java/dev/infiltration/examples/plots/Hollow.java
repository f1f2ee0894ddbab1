// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.plots;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import org.knowm.xchart.style.markers.Marker;

/** An open mark: a place without a rate. */
final class Hollow extends Marker {

    @Override
    public void paint(Graphics2D graphics, double x, double y, int size) {
        graphics.setStroke(new BasicStroke(1.5f));
        graphics.draw(new Ellipse2D.Double(x - size / 2.0, y - size / 2.0, size, size));
    }
}
