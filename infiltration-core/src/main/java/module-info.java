// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

/**
 * Surface infiltration tests of permeable pavements: what was written down, what it comes to, what was not followed.
 *
 * <p>Plain JSON in and out needs {@code tools.jackson.core} alone. Jackson's databind, CSV, Jakarta Validation and its
 * provider are for hosts that use them.
 */
module dev.infiltration.core {
    requires static jakarta.validation;
    requires static org.hibernate.validator;
    requires static tools.jackson.databind;
    requires static tools.jackson.dataformat.csv;
    requires transitive dev.infiltration.units;
    requires transitive org.jspecify;
    requires org.apache.commons.statistics.distribution;
    requires tools.jackson.core;

    exports dev.infiltration.field;
    exports dev.infiltration.rule;
    exports dev.infiltration.method;
    exports dev.infiltration.statistics;
    exports dev.infiltration.rate;
    exports dev.infiltration.check;
    exports dev.infiltration.summary;
    exports dev.infiltration.compare;
    exports dev.infiltration.trend;
    exports dev.infiltration.plan;
    exports dev.infiltration.review;
    exports dev.infiltration.report;
    exports dev.infiltration.exchange;
    exports dev.infiltration.exchange.csv;
    exports dev.infiltration.exchange.geojson;
    exports dev.infiltration.exchange.schema;
    exports dev.infiltration.validation;

    opens dev.infiltration.field to
            org.hibernate.validator;
}
