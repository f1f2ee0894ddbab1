// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.exchange;

import dev.infiltration.exchange.text.Found;
import tools.jackson.core.JsonToken;

/**
 * A reference to the id of another record in the document, with its place for reporting an unknown id.
 *
 * @param id     the id
 * @param offset characters before it
 * @param where  its JSON Pointer
 */
record IdReference(String id, int offset, String where) {

    static final ValueReader READER = (pass, token) -> token == JsonToken.VALUE_STRING
            ? new IdReference(
                    pass.tokens().text(), pass.tokens().offset(), pass.tokens().pointer())
            : pass.refuse("a string");

    /** {@return the fault of an id that no record has} */
    ReadFault leadsNowhere(Iterable<String> ids) {
        return new ReadFault(
                offset, where, "found " + Found.quoted(id) + ", expected one of " + String.join(", ", ids));
    }
}
