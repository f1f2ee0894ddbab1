// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.validation;

import dev.infiltration.rule.Effect;
import jakarta.validation.Constraint;
import jakarta.validation.Payload;
import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Repeatable;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * The field book, visit or test follows its method: it has no finding of {@link #effect} or worse.
 *
 * <p>Every finding is a violation, at its property: {@code visits[0].tests[1].preWet.water}.
 * {@code null} is valid.
 *
 * <p>A visit or a test alone has no book. What requires the book is not checked:
 * <ul>
 *   <li>surface, location, ring and instruments that it names, and the distance between locations;
 *   <li>the number of locations for the area, in a campaign, or of a visit that does not name its method;
 *   <li>report items of site and surface, and all report items where the visit does not name its method;
 *   <li>the resolution of an amount that does not state it, where instruments are named;
 *   <li>without the time zone of the site, whether a time with an offset is on the visit's date; and where only some times have
 *       an offset, every rule that compares times or depends on their order.
 * </ul>
 * The visit is taken as the only one of its date on its surface, the test as the only one of its date at its location,
 * without maintenance between its runs.
 *
 * <p>Under Hibernate Validator a violation carries its {@link dev.infiltration.check.Finding} as dynamic payload; under any
 * provider the message can contain the rule. The validators use the built-in methods and rules;
 * {@link CheckerValidatorFactory} sets others.
 */
@Documented
@Target({
    ElementType.FIELD,
    ElementType.METHOD,
    ElementType.PARAMETER,
    ElementType.RECORD_COMPONENT,
    ElementType.ANNOTATION_TYPE,
    ElementType.TYPE_USE
})
@Retention(RetentionPolicy.RUNTIME)
@Repeatable(FollowsMethod.List.class)
@Constraint(validatedBy = {BookFollowsMethod.class, VisitFollowsMethod.class, TestFollowsMethod.class})
public @interface FollowsMethod {

    /**
     * {@return id or alias of the method for every visit}; empty: the method that a visit names, else the method for the type
     * of its surface
     */
    String method() default "";

    /** {@return the lightest effect that is a violation} */
    Effect effect() default Effect.DEVIATION;

    /** {@return the message of a violation}, with <code>{rule}</code> for the rule id and <code>{finding}</code> for the finding */
    String message() default "{finding}";

    /** {@return the groups} */
    Class<?>[] groups() default {};

    /** {@return the payload of the host} */
    Class<? extends Payload>[] payload() default {};

    /** Several on one element, for different groups. */
    @Documented
    @Target({
        ElementType.FIELD,
        ElementType.METHOD,
        ElementType.PARAMETER,
        ElementType.RECORD_COMPONENT,
        ElementType.ANNOTATION_TYPE,
        ElementType.TYPE_USE
    })
    @Retention(RetentionPolicy.RUNTIME)
    @interface List {

        /** {@return the constraints} */
        FollowsMethod[] value();
    }
}
