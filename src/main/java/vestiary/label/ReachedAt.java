package vestiary.label;

import java.net.URI;
import java.util.Locale;
import java.util.regex.Pattern;

/** Whether an address opens on a phone elsewhere. */
final class ReachedAt {

  /**
   * This machine itself (RFC 6761, 6.3; RFC 1122, 3.2.1.3), or a network of one house (RFC 1918,
   * RFC 3927, RFC 4193, RFC 6762).
   */
  private static final Pattern OWN =
      Pattern.compile(
          "localhost|.*\\.localhost|127\\..*|\\[?::1\\]?|0\\.0\\.0\\.0"
              + "|10\\..*|192\\.168\\..*|172\\.(1[6-9]|2\\d|3[01])\\..*|169\\.254\\..*"
              + "|\\[f[cd].*|\\[fe80.*|.*\\.local|.*\\.internal|[^.:\\[]+");

  private ReachedAt() {}

  /** Whether only this machine or its own network can open it. */
  static boolean isOwnMachine(String address) {
    String host = URI.create(address).getHost();
    return host == null || OWN.matcher(host.toLowerCase(Locale.ROOT)).matches();
  }
}
