package vestiary.people;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.stream.Collectors;
import vestiary.web.Entries;

/** What stood in the form of somebody when it was opened. */
final class SeenOfPerson {

  private SeenOfPerson() {}

  /** The same for forms that read the same, so that nobody overwrites what they did not see. */
  static String fingerprint(Entries entries) {
    String all =
        entries.values().entrySet().stream()
            .sorted(Map.Entry.comparingByKey())
            .map(one -> one.getKey() + "=" + one.getValue().stream().sorted().toList())
            .collect(Collectors.joining("\n"));
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(all.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(digest);
    } catch (NoSuchAlgorithmException everyMachineHasIt) {
      throw new IllegalStateException(everyMachineHasIt);
    }
  }
}
