// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
/**
 * An invented asset system that embeds the library: the inspection desk of the Harrow Quay works department.
 *
 * <p>It has its own records, its own Jackson mapper and its own validator; a field book is one member of an inspection. What
 * cannot be read, and what takes the rate away, is a complaint to whoever sent the inspection; nothing is thrown.
 *
 * <pre>{@code
 * InspectionDesk desk = new InspectionDesk();
 * List<String> complaints = desk.take(json);
 * if (complaints.isEmpty()) {
 *     desk.rates().forEach(System.out::println);
 * }
 * }</pre>
 */
@NullMarked
package dev.infiltration.examples.assets;

import org.jspecify.annotations.NullMarked;
