// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.season;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;

/** Tells a terminal now and then how much of a long input was read. */
final class Progress extends FilterInputStream {

    private static final long STEP = 16L << 20;

    private final PrintStream terminal;
    private long count;
    private long told;

    Progress(InputStream in, PrintStream terminal) {
        super(in);
        this.terminal = terminal;
    }

    @Override
    public int read() throws IOException {
        int value = super.read();
        tell(value < 0 ? 0 : 1);
        return value;
    }

    @Override
    public int read(byte[] buffer, int offset, int length) throws IOException {
        int number = super.read(buffer, offset, length);
        tell(Math.max(number, 0));
        return number;
    }

    private void tell(int number) {
        count += number;
        if (count - told >= STEP) {
            told = count;
            terminal.print("\rread " + (count >> 20) + " MiB");
            terminal.flush();
        }
    }

    @Override
    public void close() throws IOException {
        if (told > 0) {
            terminal.println();
        }
        super.close();
    }
}
