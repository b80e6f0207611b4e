package reseat.stock.sql;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;

/** Stands between client and server, and cuts the line at the worst moment when told to. */
final class CutProxy implements AutoCloseable {

    /** When to cut. */
    enum Cut {
        NEVER,
        /** The client has said COMMIT, and the server does not get to hear it. */
        BEFORE_COMMIT,
        /** The server has made it final, and the client does not get to hear that. */
        AFTER_COMMIT
    }

    private final ServerSocket entrance;
    private final int server;
    private final AtomicReference<Cut> next = new AtomicReference<>(Cut.NEVER);
    private final AtomicInteger cuts = new AtomicInteger();

    CutProxy(int server) throws IOException {
        this.server = server;
        this.entrance = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
        daemon(this::accept);
    }

    int port() {
        return entrance.getLocalPort();
    }

    int cuts() {
        return cuts.get();
    }

    /** Cuts the next COMMIT, and that alone. */
    void cutNext(Cut cut) {
        next.set(cut);
    }

    private void accept() {
        try {
            while (!entrance.isClosed()) {
                Socket client = entrance.accept();
                Socket behind = new Socket(InetAddress.getLoopbackAddress(), server);
                client.setTcpNoDelay(true);
                behind.setTcpNoDelay(true);
                daemon(() -> toServer(client, behind));
                daemon(() -> toClient(client, behind));
            }
        } catch (IOException e) {
            close();
        }
    }

    private void toServer(Socket client, Socket behind) {
        byte[] bytes = new byte[65536];
        try (client;
                behind;
                InputStream in = client.getInputStream();
                OutputStream out = behind.getOutputStream()) {
            for (int n = in.read(bytes); n >= 0; n = in.read(bytes)) {
                boolean commit =
                        new String(bytes, 0, n, StandardCharsets.ISO_8859_1).contains("COMMIT");
                Cut cut = commit ? next.getAndSet(Cut.NEVER) : Cut.NEVER;
                if (cut != Cut.NEVER) {
                    cuts.incrementAndGet();
                }
                if (cut == Cut.BEFORE_COMMIT) {
                    return;
                }
                if (cut == Cut.AFTER_COMMIT) {
                    client.shutdownOutput(); // the answer stays here
                    out.write(bytes, 0, n);
                    out.flush();
                    // the server ends the session once it has done what was asked before
                    behind.shutdownOutput();
                    while (behind.getInputStream().read() >= 0) {
                        continue;
                    }
                    return;
                }
                out.write(bytes, 0, n);
                out.flush();
            }
        } catch (IOException e) {
            return; // one of the two is gone, and so is the other now
        }
    }

    private void toClient(Socket client, Socket behind) {
        byte[] bytes = new byte[65536];
        try {
            InputStream in = behind.getInputStream();
            OutputStream out = client.getOutputStream();
            for (int n = in.read(bytes); n >= 0; n = in.read(bytes)) {
                out.write(bytes, 0, n);
                out.flush();
            }
            client.close();
        } catch (IOException e) {
            return; // toServer closes both
        }
    }

    private static void daemon(Runnable work) {
        Thread thread = new Thread(work, "cut-proxy");
        thread.setDaemon(true);
        thread.start();
    }

    @Override
    public void close() {
        try {
            entrance.close();
        } catch (IOException e) {
            return; // it is closed, then
        }
    }
}
