package vestiary.oversight;

import java.nio.ByteBuffer;
import java.util.Base64;
import java.util.Optional;
import java.util.UUID;

/**
 * What an overseer hands to a cluster that is to let him look in. It names him and opens nothing;
 * two ids are in it that nobody guesses.
 *
 * @param home the cluster in which he signs in
 */
record OverseerCode(UUID home, UUID user) {

  private static final int BYTES = 32;

  /** As it is shown and typed. */
  String text() {
    byte[] whole =
        ByteBuffer.allocate(BYTES)
            .putLong(home.getMostSignificantBits())
            .putLong(home.getLeastSignificantBits())
            .putLong(user.getMostSignificantBits())
            .putLong(user.getLeastSignificantBits())
            .array();
    return Base64.getUrlEncoder().withoutPadding().encodeToString(whole);
  }

  /** One that somebody typed; empty if it has not the form of one. */
  static Optional<OverseerCode> parse(String text) {
    try {
      ByteBuffer whole = ByteBuffer.wrap(Base64.getUrlDecoder().decode(text.strip()));
      return whole.capacity() == BYTES
          ? Optional.of(
              new OverseerCode(
                  new UUID(whole.getLong(), whole.getLong()),
                  new UUID(whole.getLong(), whole.getLong())))
          : Optional.empty();
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }
}
