package vestiary.review;

import com.fasterxml.jackson.annotation.JsonIgnore;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.util.HexFormat;
import java.util.List;

/**
 * A week as it stood when somebody looked at it, in words that are kept as they are.
 *
 * @param monday its first date
 * @param masses church by church in the order in which people list them, by start
 * @param clashes by the first of their Masses
 */
record WeekSeen(LocalDate monday, List<MassSeen> masses, List<ClashSeen> clashes) {

  WeekSeen {
    masses = List.copyOf(masses);
    clashes = List.copyOf(clashes);
  }

  /** The same for weeks that read the same, so that nobody signs what they did not see. */
  @JsonIgnore
  String fingerprint() {
    try {
      byte[] all = toString().getBytes(StandardCharsets.UTF_8);
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(all));
    } catch (NoSuchAlgorithmException everyMachineHasIt) {
      throw new IllegalStateException(everyMachineHasIt);
    }
  }
}
