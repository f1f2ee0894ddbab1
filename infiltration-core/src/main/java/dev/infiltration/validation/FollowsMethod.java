// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.validation;

import dev.infiltration.check.Effect;
import jakarta.validation.Constraint;
import jakarta.validation.Payload;
import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Repeatable;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * The field book, visit or test follows its method: nothing is found in it that weighs as much as {@link #effect}.
 *
 * <p>Every finding is a violation of its own, at the property that it speaks of: {@code visits[0].tests[1].preWet.water}.
 * {@code null} is valid.
 *
 * <p>A visit or a test has no book around it. What cannot be known without one is not told:
 * <ul>
 *   <li>whether surface, location, ring and instruments that it names exist and are right, and how far locations lie apart;
 *   <li>whether enough locations were tested for the area, in a campaign, or by a visit that does not name its method;
 *   <li>what a report must state of site and surface, or of anything where the visit does not name its method;
 *   <li>how finely an amount was read that does not state it, where instruments are named;
 *   <li>without the site's zone, whether a time with an offset lies on the visit's date; and where some times have an offset
 *       and some do not, whatever compares them or rests on their order.
 * </ul>
 * The visit counts as the only one of its date on its surface, the test as the only one of its date at its location, and
 * nothing was maintained between its runs.
 *
 * <p>Under Hibernate Validator a violation carries its {@link dev.infiltration.check.Finding} as dynamic payload; under any
 * provider the message can be made to name the rule. The validators use the built-in methods and the catalogue as it is
 * written; {@link CheckerValidatorFactory} gives them others.
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
     * {@return id or alias of the method by which all is judged, whatever a visit names}; empty: the one that a visit names, else
     * the one for the kind of its surface
     */
    String method() default "";

    /** {@return the lightest effect that is a violation} */
    Effect effect() default Effect.DEVIATION;

    /** {@return the message of a violation}, in which <code>{rule}</code> is the rule's id, <code>{finding}</code> what was found */
    String message() default "{finding}";

    /** {@return the groups it belongs to} */
    Class<?>[] groups() default {};

    /** {@return what the host hangs on it} */
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
