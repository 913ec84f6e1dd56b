package vestiary.scenario;

import java.io.IOException;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.util.concurrent.ThreadLocalRandom;

/**
 * A port for a server that is started a while after it is asked for. It lies below those from which
 * systems choose (Linux from 32768, IANA from 49152, RFC 6335 section 6), so that neither a
 * PostgreSQL that takes any port nor a connection that goes out can have it by then.
 */
public final class FreePort {

  private static final int FIRST = 20_000;
  private static final int AFTER_LAST = 30_000;

  private static final int TRIES = 100;

  private FreePort() {}

  /** A port that nobody listens on just now. */
  public static int find() {
    for (int i = 0; i < TRIES; i++) {
      int port = ThreadLocalRandom.current().nextInt(FIRST, AFTER_LAST);
      if (isFree(port)) {
        return port;
      }
    }
    throw new IllegalStateException("No port is free from %d to %d.".formatted(FIRST, AFTER_LAST));
  }

  private static boolean isFree(int port) {
    try (ServerSocket socket = new ServerSocket()) {
      socket.bind(new InetSocketAddress(port));
      return true;
    } catch (IOException e) {
      return false;
    }
  }
}
