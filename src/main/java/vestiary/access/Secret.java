package vestiary.access;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;
import java.util.Optional;
import java.util.UUID;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * Something random that only its holder knows: a session's cookie, a token of the API, a link. It
 * begins with the cluster it is good for, so that it can be looked up within that cluster alone;
 * the database keeps its fingerprint and cannot give it back.
 */
public final class Secret {

  private static final SecureRandom RANDOM = new SecureRandom();
  private static final int CLUSTER_BYTES = 16;

  /** 256 bits, which nobody guesses. */
  private static final int RANDOM_BYTES = 32;

  private final UUID cluster;
  private final String text;

  private Secret(UUID cluster, String text) {
    this.cluster = cluster;
    this.text = text;
  }

  /** A new one. */
  public static Secret fresh(UUID cluster) {
    byte[] random = new byte[RANDOM_BYTES];
    RANDOM.nextBytes(random);
    byte[] whole =
        ByteBuffer.allocate(CLUSTER_BYTES + RANDOM_BYTES)
            .putLong(cluster.getMostSignificantBits())
            .putLong(cluster.getLeastSignificantBits())
            .put(random)
            .array();
    return new Secret(cluster, Base64.getUrlEncoder().withoutPadding().encodeToString(whole));
  }

  /** One that somebody sent; empty if it has not the form of one. */
  public static Optional<Secret> parse(String text) {
    try {
      ByteBuffer whole = ByteBuffer.wrap(Base64.getUrlDecoder().decode(text));
      return whole.capacity() == CLUSTER_BYTES + RANDOM_BYTES
          ? Optional.of(new Secret(new UUID(whole.getLong(), whole.getLong()), text))
          : Optional.empty();
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  public UUID cluster() {
    return cluster;
  }

  /** What its holder sends; to be shown once and never logged. */
  public String text() {
    return text;
  }

  /** SHA-256 as 64 digits; enough for what cannot be guessed, unlike a password. */
  public String fingerprint() {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes()));
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException(e);
    }
  }

  /** What the forms of this session carry, which no other site can know or work out. */
  public String formToken() {
    return derived("form");
  }

  /** Another secret that follows from this one and gives no way back to it; 43 characters. */
  public String derived(String purpose) {
    try {
      Mac mac = Mac.getInstance("HmacSHA256");
      mac.init(new SecretKeySpec(bytes(), "HmacSHA256"));
      byte[] code = mac.doFinal(purpose.getBytes(StandardCharsets.US_ASCII));
      return Base64.getUrlEncoder().withoutPadding().encodeToString(code);
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Says nothing, so that no log can tell it. */
  @Override
  public String toString() {
    return "Secret";
  }

  private byte[] bytes() {
    return text.getBytes(StandardCharsets.US_ASCII);
  }
}
