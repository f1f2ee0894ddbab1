// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.review;

import dev.infiltration.check.Finding;
import dev.infiltration.check.TestAt;
import dev.infiltration.check.VisitAt;
import dev.infiltration.field.Place;
import dev.infiltration.field.Visit;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Which findings bear on a run, a test, a visit. */
final class Bearing {

    private Bearing() {}

    static boolean isOn(RunRate run, Finding finding) {
        Place test = run.where().outer().outer();
        boolean isOfOtherRun = finding.where().isWithin(test.member("runs"))
                && !finding.where().isWithin(run.where());
        return !isOfOtherRun && isOn(run.run().test(), test, finding);
    }

    static boolean isOn(TestAt at, Place test, Finding finding) {
        Place visit = test.outer().outer();
        Place where = finding.where();
        boolean isOfOtherTest = where.isWithin(visit.member("tests")) && !where.isWithin(test);
        return where.isWithin(visit) ? !isOfOtherTest : isOfWhatItNames(at, finding);
    }

    static boolean isOn(VisitAt at, Place visit, Finding finding) {
        Place where = finding.where();
        return where.isWithin(visit)
                ? !where.isWithin(visit.member("tests"))
                : isOf("surface", at.visit().surface(), finding);
    }

    /** A ring, a location or a surface that the test names stands elsewhere in the book; findings there name it by id. */
    private static boolean isOfWhatItNames(TestAt at, Finding finding) {
        return isOf("ring", at.test().ring(), finding)
                || isOf("surface", at.visit().visit().surface(), finding)
                || isOf("location", at.test().location(), finding);
    }

    private static boolean isOf(String kind, @Nullable String id, Finding finding) {
        return id != null && finding.subject().equals(kind + " " + id);
    }

    /** {@return findings by the visit that they stand in; by the book where they stand in none} */
    static Map<Place, List<Finding>> byVisit(List<Finding> findings) {
        return Map.copyOf(findings.stream().collect(Collectors.groupingBy(finding -> visitOf(finding.where()))));
    }

    private static Place visitOf(Place where) {
        Place place = where;
        while (!place.isBook() && !place.isEntryOf(Visit.class)) {
            place = place.outer();
        }
        return place;
    }
}
