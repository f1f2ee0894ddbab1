// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import dev.infiltration.rate.Uncertainty.Contribution;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;

/** Effective degrees of freedom after Welch and Satterthwaite (JCGM 100, G.4.1), correlated terms taken as one. */
final class WelchSatterthwaite {

    private WelchSatterthwaite() {}

    static double degreesOfFreedom(List<Contribution> contributions, Correlation correlation) {
        return correlation.isNone() ? independent(contributions) : tied(contributions, correlation);
    }

    private static double independent(List<Contribution> contributions) {
        double variance = 0;
        double sum = 0;
        for (Contribution each : contributions) {
            double share = each.amount() * each.amount();
            variance += share;
            sum += share * share / each.term().spread().degreesOfFreedom();
        }
        return sum == 0 ? Double.POSITIVE_INFINITY : variance * variance / sum;
    }

    private static double tied(List<Contribution> contributions, Correlation correlation) {
        List<Contribution> left = new ArrayList<>(contributions);
        double variance = 0;
        double sum = 0;
        while (!left.isEmpty()) {
            List<Contribution> group = takeTied(left, correlation);
            double share = correlation.covariance(group, group);
            variance += share;
            sum += share * share / fewest(group);
        }
        return sum == 0 ? Double.POSITIVE_INFINITY : variance * variance / sum;
    }

    private static double fewest(List<Contribution> group) {
        return group.stream()
                .mapToDouble(contribution -> contribution.term().spread().degreesOfFreedom())
                .min()
                .orElseThrow();
    }

    /** Takes out the first one, all that are correlated with it, and all that are correlated with those. */
    private static List<Contribution> takeTied(List<Contribution> left, Correlation correlation) {
        List<Contribution> group = new ArrayList<>(List.of(left.remove(0)));
        for (int member = 0; member < group.size(); member++) {
            String name = group.get(member).term().name();
            for (Iterator<Contribution> others = left.iterator(); others.hasNext(); ) {
                Contribution other = others.next();
                if (correlation.between(name, other.term().name()) != 0) {
                    group.add(other);
                    others.remove();
                }
            }
        }
        return group;
    }
}
