package vestiary.feed;

import jakarta.ws.rs.core.EntityTag;
import jakarta.ws.rs.core.Request;
import jakarta.ws.rs.core.Response;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * Answers programs that ask again and again: nothing but "as it was" while it is.
 *
 * <p>Source: RFC 9110, 8.8.3 and 13.1.2 (ETag, If-None-Match). There is no Last-Modified, since
 * what a calendar says follows from more than its Masses.
 */
public final class FeedAnswer {

  private static final int ENOUGH = 32;

  private FeedAnswer() {}

  public static Response of(Request request, String text, String type) {
    EntityTag tag = new EntityTag(digest(text));
    Response.ResponseBuilder asItWas = request.evaluatePreconditions(tag);
    return (asItWas == null ? Response.ok(text, type) : asItWas).tag(tag).build();
  }

  /** 32 hexadecimal digits that are others for another text. */
  static String digest(String text) {
    try {
      byte[] whole =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(whole).substring(0, ENOUGH);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
