// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import dev.infiltration.method.ReportItem;

/** Small words of reports. */
final class ReportText {

    private ReportText() {}

    /** {@return a number and a noun: {@code 2 visits}} */
    static String count(int number, String noun) {
        return number + " " + noun + (number == 1 ? "" : "s");
    }

    /** {@return an item for people: {@code Last rain depth}} */
    static String item(ReportItem.Item item) {
        return capital(item.word().replace('-', ' '));
    }

    static String capital(String words) {
        return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
