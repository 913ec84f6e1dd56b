package vestiary.scenario;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import org.subethamail.smtp.MessageContext;
import org.subethamail.smtp.MessageHandler;
import org.subethamail.smtp.RejectException;
import org.subethamail.smtp.server.SMTPServer;

/** A mail server that keeps what it is handed, refuses whom it is told to, and can be shut down. */
public final class MailServerOfTests implements AutoCloseable {

  private final int port;
  private final List<Received> received = new CopyOnWriteArrayList<>();
  private final Set<String> unknown = ConcurrentHashMap.newKeySet();
  private volatile boolean busy;
  private SMTPServer server;

  /** One that is down. */
  public MailServerOfTests(int port) {
    this.port = port;
  }

  /**
   * A mail as it came.
   *
   * @param raw headers and all
   */
  public record Received(String to, String raw) {

    /** A header's value, unfolded; empty if it has none such. */
    public String header(String name) {
      Map<String, String> headers = new HashMap<>();
      String head = raw.split("\r?\n\r?\n", 2)[0].replaceAll("\r?\n[ \t]+", " ");
      head.lines()
          .map(line -> line.split(": ", 2))
          .filter(pair -> pair.length == 2)
          .forEach(pair -> headers.put(pair[0].toLowerCase(java.util.Locale.ROOT), pair[1]));
      return headers.getOrDefault(name.toLowerCase(java.util.Locale.ROOT), "");
    }

    /** What its parts say, their lines joined again (RFC 2045, 6.7). */
    public String words() {
      String joined = raw.replaceAll("=\r?\n", "");
      byte[] bytes = new byte[joined.length()];
      int length = 0;
      for (int i = 0; i < joined.length(); i++) {
        boolean isCode = joined.substring(i).matches("(?s)=[0-9A-F]{2}.*");
        bytes[length++] =
            isCode
                ? (byte) Integer.parseInt(joined.substring(i + 1, i + 3), 16)
                : (byte) joined.charAt(i);
        i += isCode ? 2 : 0;
      }
      return new String(bytes, 0, length, StandardCharsets.UTF_8);
    }
  }

  public void start() {
    server =
        SMTPServer.port(port)
            .messageHandlerFactory(Handler::new)
            .connectionTimeoutMs(60_000)
            .build();
    server.start();
  }

  public void stop() {
    if (server != null) {
      server.stop();
      server = null;
    }
  }

  @Override
  public void close() {
    stop();
  }

  /** It knows nobody of that address. */
  public void refuse(String address) {
    unknown.add(address);
  }

  public void accept(String address) {
    unknown.remove(address);
  }

  /** It asks everybody to come again later. */
  public void beBusy(boolean now) {
    busy = now;
  }

  public List<Received> received() {
    return List.copyOf(received);
  }

  private final class Handler implements MessageHandler {

    private String to = "";

    Handler(MessageContext context) {}

    @Override
    public void from(String from) throws RejectException {
      if (busy) {
        throw new RejectException(451, "4.3.0 Too much to do, come again");
      }
    }

    @Override
    public void recipient(String recipient) throws RejectException {
      if (unknown.contains(recipient)) {
        throw new RejectException(550, "5.1.1 <" + recipient + "> is not known here");
      }
      to = recipient;
    }

    @Override
    public String data(InputStream data) throws IOException {
      received.add(new Received(to, new String(data.readAllBytes(), StandardCharsets.ISO_8859_1)));
      return null;
    }

    @Override
    public void done() {}
  }
}
