package vestiary.users;

import java.nio.ByteBuffer;
import java.util.Base64;
import java.util.Optional;
import java.util.UUID;

/**
 * What a device keeps to say whose key it holds: ids, and nothing that names a person.
 *
 * <p>Source: W3C Web Authentication 5.4.3 (at most 64 bytes) and 14.6.1 (no personal data).
 */
record UserHandle(UUID cluster, UUID user) {

  private static final int BYTES = 32;

  /** In base64url. */
  String text() {
    byte[] bytes =
        ByteBuffer.allocate(BYTES)
            .putLong(cluster.getMostSignificantBits())
            .putLong(cluster.getLeastSignificantBits())
            .putLong(user.getMostSignificantBits())
            .putLong(user.getLeastSignificantBits())
            .array();
    return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
  }

  /** Empty if it has not the form of one. */
  static Optional<UserHandle> parse(String text) {
    try {
      ByteBuffer bytes = ByteBuffer.wrap(Base64.getUrlDecoder().decode(text));
      return bytes.capacity() == BYTES
          ? Optional.of(
              new UserHandle(
                  new UUID(bytes.getLong(), bytes.getLong()),
                  new UUID(bytes.getLong(), bytes.getLong())))
          : Optional.empty();
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }
}
