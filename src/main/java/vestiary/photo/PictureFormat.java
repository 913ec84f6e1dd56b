package vestiary.photo;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import vestiary.web.Speech;

/** What a file is by its first bytes, whatever its name or the browser says. */
enum PictureFormat {
  JPEG("jpeg", ""),
  PNG("png", ""),
  WEBP(
      "",
      Speech.word(
          "This is a WebP picture, which cannot be read here. Save it as JPEG and send that.")),
  HEIC(
      "",
      Speech.word(
          "This is a HEIC picture, as some phones take them; it cannot be read here. Let the phone take JPEG, or send yourself the picture by mail, which makes a JPEG of it.")),
  GIF("", Speech.word("This is a GIF, which is no photograph. Send a JPEG.")),
  OTHER("", Speech.word("This is no picture that can be read. Send a photograph as JPEG or PNG."));

  /** As many bytes as it takes to tell. */
  static final int HEAD = 16;

  private static final List<String> HEIC_BRANDS =
      List.of("heic", "heix", "hevc", "heim", "heis", "mif1", "msf1", "avif");

  private final String reader;
  private final String refusal;

  PictureFormat(String reader, String refusal) {
    this.reader = reader;
    this.refusal = refusal;
  }

  /** Name of the reader for it; empty where there is none. */
  String reader() {
    return reader;
  }

  /** Why it is refused, with what to do; empty where it is read. */
  String refusal() {
    return Speech.say(refusal);
  }

  /**
   * By the signatures of ISO/IEC 10918-1, ISO/IEC 15948, RFC 9649 and ISO/IEC 23008-12 (from
   * memory).
   */
  static PictureFormat of(byte[] head) {
    if (starts(head, 0xFF, 0xD8, 0xFF)) {
      return JPEG;
    }
    if (starts(head, 0x89, 'P', 'N', 'G', 0x0D, 0x0A, 0x1A, 0x0A)) {
      return PNG;
    }
    String text = new String(head, StandardCharsets.ISO_8859_1);
    if (text.startsWith("RIFF") && text.startsWith("WEBP", 8)) {
      return WEBP;
    }
    if (text.startsWith("ftyp", 4) && HEIC_BRANDS.contains(part(text, 8, 12))) {
      return HEIC;
    }
    return text.startsWith("GIF8") ? GIF : OTHER;
  }

  private static String part(String text, int from, int to) {
    return text.length() < to ? "" : text.substring(from, to);
  }

  private static boolean starts(byte[] head, int... wanted) {
    return head.length >= wanted.length
        && Arrays.equals(Arrays.copyOf(head, wanted.length), bytes(wanted));
  }

  private static byte[] bytes(int... values) {
    byte[] bytes = new byte[values.length];
    for (int i = 0; i < values.length; i++) {
      bytes[i] = (byte) values[i];
    }
    return bytes;
  }
}
