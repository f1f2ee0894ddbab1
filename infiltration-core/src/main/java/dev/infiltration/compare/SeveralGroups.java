// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.compare;

import dev.infiltration.statistics.Conclusion;
import dev.infiltration.statistics.KruskalWallis;
import dev.infiltration.statistics.PValueAdjustment;
import dev.infiltration.statistics.RankSum;
import dev.infiltration.statistics.TextTable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * Several independent groups of locations: do they lie at the same height, and which pairs differ.
 *
 * <p>All together by Kruskal and Wallis, pairs by the exact rank sum with probabilities adjusted by Holm's steps (1979):
 * all pairs count, also those whose groups are too small to show anything. Ranks of the rates are those of their
 * logarithms; a rate of zero counts as the lowest.
 */
public final class SeveralGroups {

    private final Map<String, double[]> groups;

    private SeveralGroups(Map<String, double[]> groups) {
        this.groups = groups;
    }

    /**
     * Two of the groups.
     *
     * @param first      name of the one
     * @param second     name of the other
     * @param comparison the two compared as if they were alone
     * @param adjustedPValue  two-sided probability after Holm
     * @param smallestPValue     the least that it could have been with so many values in every pair
     */
    public record Pair(
            String first, String second, GroupComparison comparison, double adjustedPValue, double smallestPValue) {

        /** {@return the conclusion at a risk of 5 % for all pairs together} */
        public Conclusion conclusion() {
            Conclusion alone =
                    smallestPValue > Conclusion.RISK ? Conclusion.INSUFFICIENT_DATA : comparison.conclusion();
            return alone == Conclusion.INSUFFICIENT_DATA || adjustedPValue <= Conclusion.RISK
                    ? alone
                    : Conclusion.NOT_SIGNIFICANT;
        }
    }

    /**
     * {@return the comparison of several groups}
     *
     * @param groups rates of each group by its name, in the order in which they are to be told
     * @throws IllegalArgumentException for fewer than two groups, an empty one, or a rate that is negative or not finite
     */
    public static SeveralGroups of(Map<String, double[]> groups) {
        Map<String, double[]> copy = new LinkedHashMap<>();
        groups.forEach((name, rates) -> copy.put(name, rates.clone()));
        SeveralGroups several = new SeveralGroups(copy);
        several.together();
        return several;
    }

    /**
     * {@return the comparison of several groups, which keep the order of the arguments; {@code Map.of} has no order}
     *
     * @param groups name and rates of each group: {@code Map.entry("north", rates)}
     * @throws IllegalArgumentException for a name that is used twice, fewer than two groups, an empty one, or a rate that is
     *     negative or not finite
     */
    @SafeVarargs
    public static SeveralGroups inOrder(Map.Entry<String, double[]>... groups) {
        Map<String, double[]> named = new LinkedHashMap<>();
        for (Map.Entry<String, double[]> group : groups) {
            if (named.put(group.getKey(), group.getValue()) != null) {
                throw new IllegalArgumentException(
                        "groups: expected different names, got " + group.getKey() + " twice");
            }
        }
        return of(named);
    }

    /** {@return the test of all groups together} */
    public KruskalWallis together() {
        double[][] logs = groups.entrySet().stream()
                .map(group -> Logs.of(group.getValue(), group.getKey()))
                .toArray(double[][]::new);
        return KruskalWallis.ofLogs(logs);
    }

    /** {@return the probability for all groups together, absent where it could not reach 0.05} */
    public OptionalDouble pValue() {
        KruskalWallis test = together();
        return test.conclusion() == Conclusion.INSUFFICIENT_DATA
                ? OptionalDouble.empty()
                : OptionalDouble.of(test.pValue());
    }

    /** {@return all pairs of groups, in order} */
    public List<Pair> pairs() {
        List<String> names = List.copyOf(groups.keySet());
        List<Pair> alone = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            for (int j = i + 1; j < names.size(); j++) {
                alone.add(pair(names.get(i), names.get(j)));
            }
        }
        double[] adjusted = PValueAdjustment.holm(
                alone.stream().mapToDouble(Pair::adjustedPValue).toArray());
        double[] least = PValueAdjustment.holm(
                alone.stream().mapToDouble(Pair::smallestPValue).toArray());
        return IntStream.range(0, adjusted.length)
                .mapToObj(i -> adjusted(alone.get(i), adjusted[i], least[i]))
                .toList();
    }

    private Pair pair(String first, String second) {
        GroupComparison comparison = GroupComparison.of(rates(first), rates(second));
        RankSum test = comparison.rankSum();
        return new Pair(first, second, comparison, test.pValue(), test.smallestPValue());
    }

    private double[] rates(String name) {
        return groups.getOrDefault(name, new double[0]);
    }

    private static Pair adjusted(Pair pair, double p, double smallestPValue) {
        return new Pair(pair.first(), pair.second(), pair.comparison(), p, smallestPValue);
    }

    /** {@return the test in words} */
    public String test() {
        return "Kruskal–Wallis test of " + groups.size() + " groups, "
                + together().n() + " values in total";
    }

    /** {@return the conclusion as a sentence} */
    public String conclusionText() {
        return ConclusionText.of(
                together().conclusion(), "", "", pValue(), "more values per group are needed for p < 0.05");
    }

    /** {@return the comparison as a small table} */
    @Override
    public String toString() {
        TextTable table = TextTable.titled(String.join(", ", groups.keySet()))
                .with(
                        "locations",
                        Arrays.toString(groups.values().stream()
                                .mapToInt(rates -> rates.length)
                                .toArray()))
                .with("test", test())
                .with("conclusion", conclusionText());
        for (Pair pair : pairs()) {
            table = table.with(pair.second() + " / " + pair.first(), row(pair));
        }
        return table.toString();
    }

    private static String row(Pair pair) {
        Conclusion conclusion = pair.conclusion();
        return conclusion == Conclusion.INSUFFICIENT_DATA
                ? conclusion.toString()
                : conclusion + " (adjusted p = " + TextTable.number(pair.adjustedPValue()) + ")";
    }
}
