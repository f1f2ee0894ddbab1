// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.field;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Where entries of a document's lists were left out, so that pointers can count as the document counts.
 *
 * <p>Only lists with a gap are held: for each the document's index of every entry that was kept.
 */
public final class IndexMap {

    private static final IndexMap NONE = new IndexMap(Map.of());

    private final Map<String, int[]> kept;

    private IndexMap(Map<String, int[]> kept) {
        this.kept = kept;
    }

    /** {@return no gaps: lists and document count alike} */
    public static IndexMap none() {
        return NONE;
    }

    /**
     * {@return the gaps of a document}
     *
     * @param kept by the list's pointer in the document, the document's index of each entry kept
     */
    public static IndexMap of(Map<String, List<Integer>> kept) {
        if (kept.isEmpty()) {
            return NONE;
        }
        Map<String, int[]> copy = new HashMap<>();
        kept.forEach((list, indices) ->
                copy.put(list, indices.stream().mapToInt(Integer::intValue).toArray()));
        return new IndexMap(copy);
    }

    /** {@return whether lists and document count alike} */
    public boolean isEmpty() {
        return kept.isEmpty();
    }

    /**
     * {@return the document's index of an entry}
     *
     * @param list  the list's pointer in the document
     * @param index the entry's index among those that were kept
     */
    public int indexInDocument(String list, int index) {
        int @Nullable [] indices = kept.get(list);
        return indices == null || index >= indices.length ? index : indices[index];
    }
}
