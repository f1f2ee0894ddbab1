// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.validation;

import dev.infiltration.check.Checker;
import dev.infiltration.check.Finding;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Place;
import dev.infiltration.field.Visit;
import dev.infiltration.rule.Effect;
import jakarta.validation.ConstraintDeclarationException;
import jakarta.validation.ConstraintValidatorContext;
import java.util.List;

/** Checks a record with the options of one annotation. */
final class ConstraintCheck {

    /** Place of a visit in a book that is made for it. */
    private static final Place VISIT = Place.BOOK.member("visits").entry(0);

    private static final Place TEST = VISIT.member("tests").entry(0);

    private final Checker checker;
    private final String method;
    private final Effect least;
    private final String template;

    private ConstraintCheck(Checker checker, String method, Effect least, String template) {
        this.checker = checker;
        this.method = method;
        this.least = least;
        this.template = template;
    }

    static ConstraintCheck by(Checker checker) {
        return new ConstraintCheck(checker, "", Effect.DEVIATION, Violations.FINDING);
    }

    /** {@return a check with the options of the annotation}, whose method must be known */
    ConstraintCheck asked(FollowsMethod asked) {
        String named = asked.method();
        if (!named.isEmpty() && checker.methods().find(named).isEmpty()) {
            throw new ConstraintDeclarationException("method: unknown method " + named);
        }
        return new ConstraintCheck(checker, named, asked.effect(), asked.message());
    }

    boolean isFollowed(FieldBook book, ConstraintValidatorContext context) {
        FieldBook judged = method.isEmpty()
                ? book
                : book.withVisits(book.visits().stream().map(this::named).toList());
        return isFollowed(checker.check(judged).findings(), Place.BOOK, context);
    }

    boolean isFollowed(Visit visit, ConstraintValidatorContext context) {
        return isFollowed(alone(named(visit)), VISIT, context);
    }

    boolean isFollowed(LocationTest test, ConstraintValidatorContext context) {
        Visit around = Visit.of(null, null, null).withTests(List.of(test));
        return isFollowed(alone(named(around)), TEST, context);
    }

    private Visit named(Visit visit) {
        return method.isEmpty() ? visit : visit.withMethod(method);
    }

    private List<Finding> alone(Visit visit) {
        FieldBook around = FieldBook.empty().withVisits(List.of(visit));
        return new VisitScope(visit).known(checker.check(around).findings());
    }

    private boolean isFollowed(List<Finding> findings, Place root, ConstraintValidatorContext context) {
        List<Finding> grave = findings.stream()
                .filter(finding -> finding.effect().compareTo(least) <= 0)
                .filter(finding -> finding.where().isWithin(root))
                .toList();
        Violations violations = new Violations(template, root, context);
        grave.forEach(violations::add);
        return grave.isEmpty();
    }
}
