// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

/**
 * Something that could not be read, by its place in the characters of a text; line and column are counted at the end.
 *
 * @param offset  characters before it
 * @param where   JSON Pointer of the value, key or member at fault
 * @param message what was found, what was expected and what is excluded
 */
record ReadFault(int offset, String where, String message) {}
