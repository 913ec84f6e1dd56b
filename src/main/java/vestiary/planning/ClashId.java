package vestiary.planning;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import vestiary.schedule.DatedMass;

/** Names a clash by what it is about, so that it keeps its name as long as it stands. */
final class ClashId {

  private static final int LETTERS = 16;

  private ClashId() {}

  static String of(ClashKind kind, List<DatedMass> masses, String... further) {
    StringBuilder about = new StringBuilder(kind.id());
    masses.forEach(m -> about.append(' ').append(m.id().value()));
    List.of(further).forEach(f -> about.append(' ').append(f));
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256")
              .digest(about.toString().getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(digest).substring(0, LETTERS);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
