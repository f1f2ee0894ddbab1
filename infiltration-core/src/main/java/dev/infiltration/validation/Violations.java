// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.validation;

import dev.infiltration.check.Finding;
import dev.infiltration.field.Place;
import jakarta.validation.ConstraintValidatorContext;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Findings reported to a validation provider.
 *
 * @param template the message, with {@code {rule}} and {@code {finding}} as placeholders
 * @param root     the place of the record that is validated
 * @param context  receiver of the violations
 */
record Violations(String template, Place root, ConstraintValidatorContext context) {

    /** Placeholder of the finding in a message. */
    static final String FINDING = "{finding}";

    private static final String RULE = "{rule}";

    /** Characters with a meaning in message interpolation, unless a backslash precedes them. */
    private static final Pattern SPECIAL = Pattern.compile("[\\\\{}$]");

    void add(Finding finding) {
        context.disableDefaultConstraintViolation();
        if (context.getClass().getName().startsWith("org.hibernate.validator.")) {
            DynamicPayload.put(finding, context);
        }
        Node.first(context.buildConstraintViolationWithTemplate(message(finding)))
                .add(finding.where(), root);
    }

    private String message(Finding finding) {
        return template.replace(RULE, literal(finding.rule())).replace(FINDING, literal(finding.message()));
    }

    private static String literal(String text) {
        return SPECIAL.matcher(text).replaceAll(found -> Matcher.quoteReplacement("\\" + found.group()));
    }
}
