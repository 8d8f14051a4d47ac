package org.wickwise.rulebook;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.util.concurrent.atomic.AtomicInteger;

/** A port that counts who calls. */
final class Canary implements AutoCloseable {

    private final ServerSocket socket;
    private final AtomicInteger calls = new AtomicInteger();

    private Canary(ServerSocket socket) {
        this.socket = socket;
    }

    static Canary listening() throws IOException {
        Canary canary = new Canary(new ServerSocket(0, 50, InetAddress.getLoopbackAddress()));
        Thread listener = new Thread(canary::listen, "canary");
        listener.setDaemon(true);
        listener.start();
        return canary;
    }

    private void listen() {
        while (!socket.isClosed()) {
            try {
                socket.accept().close();
                calls.incrementAndGet();
            } catch (IOException closed) {
                return;
            }
        }
    }

    int number() {
        return socket.getLocalPort();
    }

    int calls() {
        return calls.get();
    }

    @Override
    public void close() throws IOException {
        socket.close();
    }
}
