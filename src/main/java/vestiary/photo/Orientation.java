package vestiary.photo;

import java.awt.geom.AffineTransform;
import java.io.BufferedInputStream;
import java.io.DataInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * How a camera was held, which it writes beside the picture instead of turning it.
 *
 * <p>Source: CIPA DC-008, Exchangeable image file format (Exif), tag 0112h, values 1 to 8 (from
 * memory).
 *
 * @param value 1 to 8; 1 is upright
 */
record Orientation(int value) {

  static final Orientation UPRIGHT = new Orientation(1);

  private static final int START_OF_SCAN = 0xDA;
  private static final int APP1 = 0xE1;
  private static final int TAG = 0x0112;
  private static final int ENTRY = 12;
  private static final int HIGHEST = 8;

  /** What a JPEG file says of it; upright where it says nothing or nothing that can be read. */
  static Orientation of(Path jpeg) throws IOException {
    try (DataInputStream in =
        new DataInputStream(new BufferedInputStream(Files.newInputStream(jpeg)))) {
      in.readUnsignedShort();
      while (true) {
        int marker = in.readUnsignedShort();
        int length = in.readUnsignedShort() - 2;
        if (marker >> 8 != 0xFF || (marker & 0xFF) == START_OF_SCAN || length < 0) {
          return UPRIGHT;
        }
        byte[] segment = in.readNBytes(length);
        if ((marker & 0xFF) == APP1 && isExif(segment)) {
          return inTiff(ByteBuffer.wrap(segment, 6, segment.length - 6).slice());
        }
      }
    } catch (EOFException | BufferUnderflowException | IllegalArgumentException cutShort) {
      return UPRIGHT;
    }
  }

  private static boolean isExif(byte[] segment) {
    return segment.length > 14
        && new String(segment, 0, 4, StandardCharsets.ISO_8859_1).equals("Exif");
  }

  private static Orientation inTiff(ByteBuffer tiff) {
    tiff.order(tiff.get() == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
    tiff.position(4);
    tiff.position(tiff.getInt());
    int entries = Short.toUnsignedInt(tiff.getShort());
    int first = tiff.position();
    for (int i = 0; i < entries; i++) {
      tiff.position(first + i * ENTRY);
      if (Short.toUnsignedInt(tiff.getShort()) == TAG) {
        tiff.position(first + i * ENTRY + 8);
        int value = tiff.getShort();
        return value >= 1 && value <= HIGHEST ? new Orientation(value) : UPRIGHT;
      }
    }
    return UPRIGHT;
  }

  /** Whether what is width in the file is height when it is upright. */
  boolean isOnItsSide() {
    return value >= 5;
  }

  /** Turns a picture of that size, as it lies in the file, upright. */
  AffineTransform upright(int width, int height) {
    return switch (value) {
      case 2 -> new AffineTransform(-1, 0, 0, 1, width, 0);
      case 3 -> new AffineTransform(-1, 0, 0, -1, width, height);
      case 4 -> new AffineTransform(1, 0, 0, -1, 0, height);
      case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
      case 6 -> new AffineTransform(0, 1, -1, 0, height, 0);
      case 7 -> new AffineTransform(0, -1, -1, 0, height, width);
      case 8 -> new AffineTransform(0, -1, 1, 0, 0, width);
      default -> new AffineTransform();
    };
  }
}
