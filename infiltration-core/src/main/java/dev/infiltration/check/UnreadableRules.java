// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import dev.infiltration.field.Place;
import dev.infiltration.field.UnreadableValue;
import dev.infiltration.method.Basis;
import dev.infiltration.rule.Bias;
import dev.infiltration.rule.Effect;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/** {@code data.unreadable}: whether every value of the document could be read. */
final class UnreadableRules {

    private static final Set<String> LOWERS = Set.of(
            "swept",
            "standingWater",
            "potableWater",
            "weather",
            "lastRainEnd",
            "noRainSince",
            "rainFrom",
            "air",
            "clearSpacing",
            "x",
            "y",
            "position",
            "latitude",
            "longitude",
            "accuracy",
            "slope");
    private static final Set<String> NONE = Set.of(
            "id",
            "name",
            "description",
            "externalIds",
            "area",
            "placedOn",
            "thickness",
            "thicknessIs",
            "zone",
            "zones",
            "selection",
            "purpose",
            "campaign",
            "requestedLocations",
            "crew",
            "initials",
            "role",
            "source",
            "lastRainDepth",
            "photos",
            "file",
            "sha256",
            "note",
            "amendments",
            "technique",
            "passes",
            "wet",
            "jointsRefilled",
            "extra",
            "voidReason",
            "vessel",
            "checkedOn",
            "checkDue",
            "endPointWithin",
            "on",
            "references",
            "preparedBy",
            "reviewedBy",
            "notTested",
            "by",
            "was",
            "now",
            "why",
            "joints");
    private static final int LONGEST = 100;
    private static final Pattern PRE_WET = Pattern.compile("/visits/\\d+/tests/\\d+/preWet(/.*)?");

    private final BookIndex index;
    private final UnreadableValues values;
    private final Map<String, String> subjects = new HashMap<>();
    private final Map<String, TestAt> tests = new HashMap<>();

    private UnreadableRules(BookIndex index) {
        this.index = index;
        this.values = index.register().unreadable();
    }

    /** Finds every value that could not be read, at its place in the document. */
    static void judge(BookIndex index, Findings findings) {
        if (!index.register().unreadable().all().isEmpty()) {
            new UnreadableRules(index).judge(findings);
        }
    }

    private void judge(Findings findings) {
        index.visits().forEach(this::addSubjects);
        for (UnreadableValue value : values.all()) {
            findings.add(
                    BuiltInRule.DATA_UNREADABLE,
                    effect(value),
                    bias(value),
                    value.place(),
                    subject(value.lost()),
                    shortened(value.original()),
                    "",
                    Basis.commonPractice());
        }
    }

    /** The start of a long text: the whole of it is in the document. */
    private static String shortened(String original) {
        return original.codePointCount(0, original.length()) <= LONGEST
                ? original
                : original.substring(0, original.offsetByCodePoints(0, LONGEST)) + "…";
    }

    private void addSubjects(VisitAt visit) {
        subjects.put(pointer(visit.place()), visit.subject());
        for (TestAt test : visit.tests()) {
            subjects.put(pointer(test.place()), test.subject());
            tests.put(pointer(test.place()), test);
            test.pourings().forEach(pouring -> subjects.put(pointer(pouring.place()), pouring.subject()));
        }
    }

    private String pointer(Place place) {
        return place.in(values.gaps()).toString();
    }

    /** The prewetting is part of a rate only where no run that is not void follows it. */
    private Effect effect(UnreadableValue value) {
        if (!value.isPartOfRate()) {
            return Effect.OMISSION;
        }
        if (!PRE_WET.matcher(value.lost()).matches()) {
            return Effect.NO_RATE;
        }
        String pointer = value.lost().substring(0, value.lost().indexOf("/preWet"));
        TestAt test = tests.get(pointer);
        boolean isFollowed = test != null
                && test.runs().stream().anyMatch(run -> !run.pouring().isVoid());
        return isFollowed ? Effect.OMISSION : Effect.NO_RATE;
    }

    private static Bias bias(UnreadableValue value) {
        List<String> names = List.of(value.lost().split("/", -1));
        for (int i = names.size() - 1; i >= 0; i--) {
            if (LOWERS.contains(names.get(i))) {
                return Bias.LOWERS;
            }
            if (NONE.contains(names.get(i))) {
                return Bias.NONE;
            }
            if (!names.get(i).chars().allMatch(Character::isDigit)) {
                return Bias.EITHER;
            }
        }
        return Bias.EITHER;
    }

    /** The nearest visit, test or run around a value, else its record by kind and position. */
    private String subject(String lost) {
        for (int end = lost.length(); end > 0; end = lost.lastIndexOf('/', end - 1)) {
            String subject = subjects.get(lost.substring(0, end));
            if (subject != null) {
                return subject;
            }
        }
        String[] tokens = lost.split("/", 4);
        boolean isInEntry = tokens.length > 2 && tokens[2].matches("[0-9]{1,9}");
        return isInEntry ? tokens[1] + ", entry " + (Integer.parseInt(tokens[2]) + 1) : "the book";
    }
}
