// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.field;

/**
 * Something in a document that could not be read, with its place.
 *
 * @param line    the line, from 1
 * @param column  the column, from 1, in characters
 * @param where   JSON Pointer (RFC 6901) of the value, key or member at fault
 * @param message what was found, what was expected and what was left out
 */
public record Problem(int line, int column, String where, String message) {}
