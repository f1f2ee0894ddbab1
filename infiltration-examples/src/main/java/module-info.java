// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

/** The main job as a command, charts, and a host that embeds the library. Not published. */
@SuppressWarnings("requires-automatic") // the chart libraries have no module names of their own
module dev.infiltration.examples {
    requires static org.jspecify;
    requires dev.infiltration.core;
    requires java.desktop;
    requires jakarta.validation;
    requires org.hibernate.validator;
    requires tools.jackson.databind;
    requires tools.jackson.dataformat.csv;
    requires VectorGraphics2D;
    requires xchart;

    opens dev.infiltration.examples.assets to
            org.hibernate.validator,
            tools.jackson.databind;
}
