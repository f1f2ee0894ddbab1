// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

/** The identity of a rule, the effect of a finding, and the direction in which a finding may bias the rate. */
@NullMarked
package dev.infiltration.rule;

import org.jspecify.annotations.NullMarked;
