package vestiary.photo;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** Draws a picture anew, upright and small, and writes it with nothing beside its pixels. */
final class Redraw {

  private static final float QUALITY = 0.82f;

  private Redraw() {}

  /**
   * @param side most pixels either way; a smaller picture keeps its size
   */
  static BufferedImage within(int side, BufferedImage image, Orientation held) {
    int width = held.isOnItsSide() ? image.getHeight() : image.getWidth();
    int height = held.isOnItsSide() ? image.getWidth() : image.getHeight();
    double scale = Math.min(1, (double) side / Math.max(width, height));
    BufferedImage drawn =
        new BufferedImage(pixels(width, scale), pixels(height, scale), BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = drawn.createGraphics();
    pen.setColor(Color.WHITE);
    pen.fillRect(0, 0, drawn.getWidth(), drawn.getHeight());
    pen.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    pen.scale((double) drawn.getWidth() / width, (double) drawn.getHeight() / height);
    pen.drawImage(image, held.upright(image.getWidth(), image.getHeight()), null);
    pen.dispose();
    return drawn;
  }

  private static int pixels(int side, double scale) {
    return Math.max(1, (int) Math.round(side * scale));
  }

  static byte[] jpeg(BufferedImage image) throws IOException {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
      writer.setOutput(out);
      ImageWriteParam param = writer.getDefaultWriteParam();
      param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      param.setCompressionQuality(QUALITY);
      writer.write(null, new IIOImage(image, null, null), param);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }
}
