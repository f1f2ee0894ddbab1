// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.review;

import dev.infiltration.check.Finding;
import dev.infiltration.check.PouringAt;
import dev.infiltration.field.Place;

/** Which findings bear on a run. */
final class Bearing {

    private Bearing() {}

    static boolean isOn(RunRate run, Finding finding) {
        Place test = run.where().outer().outer();
        Place visit = test.outer().outer();
        Place where = finding.where();
        if (where.isWithin(visit)) {
            boolean isOfOtherTest = where.isWithin(visit.member("tests")) && !where.isWithin(test);
            boolean isOfOtherRun = where.isWithin(test.member("runs")) && !where.isWithin(run.where());
            return !isOfOtherTest && !isOfOtherRun;
        }
        return isOfWhatItNames(run.run(), finding);
    }

    /** A ring, a location or a surface that the run names stands elsewhere in the book; findings there name it by id. */
    private static boolean isOfWhatItNames(PouringAt run, Finding finding) {
        String ring = run.test().test().ring();
        boolean isRing = ring != null && finding.subject().equals("ring " + ring);
        String surface = run.test().visit().visit().surface();
        boolean isSurface = surface != null && finding.subject().equals("surface " + surface);
        String location = run.test().test().location();
        return isRing || isSurface || (location != null && finding.subject().equals("location " + location));
    }
}
