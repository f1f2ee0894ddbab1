// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.field;

/**
 * Something in a document that could not be read, with its place.
 *
 * @param line    the line, from 1; of a table the row, as a spreadsheet counts
 * @param column  the column, from 1, in characters; of a table the column of cells
 * @param where   JSON Pointer (RFC 6901) of the value, key or member at fault; of a table its cell (RFC 7111)
 * @param message what was found, what was expected and what is excluded
 */
public record Problem(int line, int column, String where, String message) {}
