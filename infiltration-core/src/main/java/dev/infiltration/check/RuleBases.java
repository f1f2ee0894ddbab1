// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import dev.infiltration.method.Basis;
import dev.infiltration.method.Basis.Trust;

/** RuleBases of rules whose limit is no part of a method. */
final class RuleBases {

    static final Basis COMMON_PRACTICE = Basis.commonPractice();
    static final Basis SCOPE = Basis.clause("ASTM C1701/C1701M and C1781/C1781M", "scope 1.2", Trust.PUBLISHED);
    static final Basis BROOMED = Basis.clause("ASTM C1701/C1701M", "8.1", Trust.MEMORY);
    static final Basis POTABLE = Basis.clause("ASTM C1701/C1701M", "6.6", Trust.MEMORY);
    static final Basis NO_STANDING_WATER = Basis.clause("ASTM C1701/C1701M", "7.3", Trust.MEMORY);
    static final Basis PREWETTING = Basis.clause("ASTM C1701/C1701M", "8.2", Trust.MEMORY);
    static final Basis RUNS_A_DAY = Basis.clause("ASTM C1701/C1701M", "8.4", Trust.MEMORY);
    static final Basis DRAINED = Basis.clause("ASTM C1701/C1701M", "8.2, 8.3", Trust.SECONDARY);
    static final Basis WEIGHED = Basis.clause("ASTM C1701/C1701M", "6.2", Trust.MEMORY);
    static final Basis REPORT = Basis.clause("ASTM C1701/C1701M", "10.1", Trust.MEMORY);
    static final Basis DERIVED = new Basis("arithmetic on the method's head", "", Trust.DERIVED);

    static final Basis SURFACES = Basis.clause("ASTM C1701/C1701M and C1781/C1781M", "scope", Trust.PUBLISHED);
    static final Basis WATER = Basis.clause("IAPWS SR6-08", "density of water", Basis.Trust.SECONDARY);
    static final Basis USER = new Basis("the user", "", Trust.USER);

    private RuleBases() {}
}
