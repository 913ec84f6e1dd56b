package vestiary;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Passes bytes on to a server until it is cut; restored, it does so again. Its port is kept all the
 * while, or another program of the machine might take it.
 */
final class CuttableProxy {

  private final String host;
  private final int target;
  private final Set<Socket> open = ConcurrentHashMap.newKeySet();
  private final int port;
  private volatile boolean cut;

  CuttableProxy(String host, int target) {
    this.host = host;
    this.target = target;
    this.port = listen();
  }

  int port() {
    return port;
  }

  /** Breaks every connection, and each new one at once. */
  void cut() {
    cut = true;
    open.forEach(CuttableProxy::close);
    open.clear();
  }

  /** Takes connections again; does nothing if it was not cut. */
  void restore() {
    cut = false;
  }

  private int listen() {
    try {
      ServerSocket socket = new ServerSocket();
      socket.bind(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0));
      start(() -> accept(socket));
      return socket.getLocalPort();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void accept(ServerSocket socket) {
    try {
      while (true) {
        Socket client = socket.accept();
        if (cut) {
          close(client);
          continue;
        }
        Socket server = new Socket(host, target);
        // Held back until the last packet is acknowledged, small ones would wait 40 ms each.
        client.setTcpNoDelay(true);
        server.setTcpNoDelay(true);
        open.add(client);
        open.add(server);
        if (cut) {
          cut();
        }
        start(() -> pass(client, server));
        start(() -> pass(server, client));
      }
    } catch (IOException closed) {
      close(socket);
    }
  }

  private static void pass(Socket from, Socket to) {
    try {
      from.getInputStream().transferTo(to.getOutputStream());
    } catch (IOException cut) {
      // One side has gone; the other is told by closing it.
    }
    close(from);
    close(to);
  }

  private static void start(Runnable work) {
    Thread thread = new Thread(work, "proxy");
    thread.setDaemon(true);
    thread.start();
  }

  private static void close(AutoCloseable socket) {
    try {
      socket.close();
    } catch (Exception alreadyClosed) {
      // Nothing is left to close.
    }
  }
}
