package org.wickwise.command;

import java.io.PrintWriter;
import java.util.function.IntConsumer;

/**
 * Tells on the error stream how far a long run is: soon where somebody sits at a terminal, else when it takes long. May be told
 * from several threads.
 */
final class Progress implements IntConsumer {

    private static final long NANOSECONDS = 1_000_000_000L;
    private static final long AT_A_TERMINAL_SECONDS = 1;
    private static final long ELSEWHERE_SECONDS = 4;

    private final PrintWriter out;
    private final int all;
    private final String what;
    private final long every;
    private long last = System.nanoTime();

    /** @param what is counted, such as "groups planned" */
    Progress(PrintWriter out, int all, String what) {
        this.out = out;
        this.all = all;
        this.what = what;
        this.every = NANOSECONDS * (System.console() == null ? ELSEWHERE_SECONDS : AT_A_TERMINAL_SECONDS);
    }

    @Override
    public synchronized void accept(int done) {
        long now = System.nanoTime();
        if (now - last >= every && done < all) {
            last = now;
            out.println(done + " of " + all + " " + what);
            out.flush();
        }
    }
}
