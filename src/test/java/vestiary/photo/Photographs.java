package vestiary.photo;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;

/** Pictures as phones send them, and what somebody else might send. */
public final class Photographs {

  private Photographs() {}

  /** Left half red, right half blue; 400 by 200 pixels. */
  public static byte[] jpeg() {
    return encode("jpeg");
  }

  public static byte[] png() {
    return encode("png");
  }

  /** All black. */
  public static byte[] plain(int width, int height) {
    return written(new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB), "jpeg");
  }

  private static byte[] encode(String format) {
    BufferedImage image = new BufferedImage(400, 200, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = image.createGraphics();
    pen.setColor(Color.RED);
    pen.fillRect(0, 0, 200, 200);
    pen.setColor(Color.BLUE);
    pen.fillRect(200, 0, 200, 200);
    pen.dispose();
    return written(image, format);
  }

  private static byte[] written(BufferedImage image, String format) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      ImageIO.write(image, format, bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  /** The same as a phone that was held so writes it, with the place where it was taken. */
  public static byte[] withExif(int orientation) {
    byte[] plain = jpeg();
    byte[] gps = "N 43.0731 W 89.4012 Tollbridge".getBytes(StandardCharsets.US_ASCII);
    ByteBuffer tiff = ByteBuffer.allocate(8 + 2 + 2 * 12 + 4 + gps.length);
    tiff.put("MM".getBytes(StandardCharsets.US_ASCII)).putShort((short) 42).putInt(8);
    tiff.putShort((short) 2);
    tiff.putShort((short) 0x0112).putShort((short) 3).putInt(1);
    tiff.putShort((short) orientation).putShort((short) 0);
    tiff.putShort((short) 0x010E).putShort((short) 2).putInt(gps.length).putInt(38);
    tiff.putInt(0).put(gps);
    ByteBuffer file = ByteBuffer.allocate(plain.length + 4 + 6 + tiff.capacity());
    file.put(plain, 0, 2).putShort((short) 0xFFE1).putShort((short) (2 + 6 + tiff.capacity()));
    file.put("Exif\0\0".getBytes(StandardCharsets.US_ASCII)).put(tiff.array());
    file.put(plain, 2, plain.length - 2);
    return file.array();
  }

  /** A PNG that says it is so large, and is nothing but its header. */
  public static byte[] pngHeader(int width, int height) {
    ByteBuffer header = ByteBuffer.allocate(4 + 13);
    header.put("IHDR".getBytes(StandardCharsets.US_ASCII)).putInt(width).putInt(height);
    header.put(new byte[] {8, 2, 0, 0, 0});
    CRC32 sum = new CRC32();
    sum.update(header.array());
    ByteBuffer file = ByteBuffer.allocate(8 + 4 + 17 + 4);
    file.put(new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10}).putInt(13);
    file.put(header.array()).putInt((int) sum.getValue());
    return file.array();
  }

  public static byte[] webp() {
    return "RIFF\0\0\0\0WEBPVP8 ".getBytes(StandardCharsets.ISO_8859_1);
  }

  public static byte[] heic() {
    return "\0\0\0\u0018ftypheic\0\0\0\0mif1heic".getBytes(StandardCharsets.ISO_8859_1);
  }

  public static BufferedImage decoded(byte[] jpeg) {
    try {
      return ImageIO.read(new ByteArrayInputStream(jpeg));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
