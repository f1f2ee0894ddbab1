// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.assets;

import dev.infiltration.field.FieldBook;
import dev.infiltration.rule.Effect;
import dev.infiltration.validation.FollowsMethod;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * An inspection as the department files it.
 *
 * @param workOrder the work order it was made for
 * @param asset     the department's number of the pavement
 * @param closedOn  when the work order was closed
 * @param inspector initials
 * @param fieldBook what was written down in the field; nothing in it may take a rate away
 */
public record Inspection(
        @NotBlank @Nullable String workOrder,
        @NotBlank @Nullable String asset,
        @NotNull @Nullable LocalDate closedOn,
        @Pattern(regexp = "[A-Z]{2}") @Nullable String inspector,

        @NotNull @FollowsMethod(effect = Effect.NO_RATE) @Nullable
        FieldBook fieldBook) {}
