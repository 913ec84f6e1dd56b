package vestiary.photo;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Semaphore;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.FileImageInputStream;
import javax.imageio.stream.ImageInputStream;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/**
 * Makes a small picture of whatever a phone sends; what came is not kept. It is told by its first
 * bytes what it is and by its header how large, before any of it is decoded.
 *
 * <p>Source: OWASP File Upload Cheat Sheet, "image rewriting" and "file signature validation".
 */
@ApplicationScoped
class ReadPicture {

  static final String FIELD = "photo";

  /** What phones take, with room; decoded in part only, see {@link #everyNth}. */
  private static final long MOST_PIXELS = 60_000_000;

  private static final int LARGE = 1_600;
  private static final int SMALL = 320;

  /** So many at once; others wait, so that a few large ones cannot fill the memory. */
  private final Semaphore benches = new Semaphore(2);

  /**
   * @param file as it was sent
   * @throws Refused if it is no JPEG or PNG, larger than 60 million pixels, or damaged
   */
  Picture read(Path file) {
    benches.acquireUninterruptibly();
    try {
      return picture(file, format(file));
    } catch (IOException | RuntimeException damaged) {
      if (damaged instanceof Refused refused) {
        throw refused;
      }
      throw unfit(say("This picture is damaged, or of a kind that cannot be read. Take it anew."));
    } finally {
      benches.release();
    }
  }

  private static PictureFormat format(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      PictureFormat format = PictureFormat.of(in.readNBytes(PictureFormat.HEAD));
      if (!format.refusal().isEmpty()) {
        throw unfit(format.refusal());
      }
      return format;
    }
  }

  private static Picture picture(Path file, PictureFormat format) throws IOException {
    BufferedImage decoded = decode(file, format);
    Orientation held = format == PictureFormat.JPEG ? Orientation.of(file) : Orientation.UPRIGHT;
    BufferedImage large = Redraw.within(LARGE, decoded, held);
    BufferedImage small = Redraw.within(SMALL, large, Orientation.UPRIGHT);
    return new Picture(large.getWidth(), large.getHeight(), Redraw.jpeg(large), Redraw.jpeg(small));
  }

  private static BufferedImage decode(Path file, PictureFormat format) throws IOException {
    ImageReader reader = ImageIO.getImageReadersByFormatName(format.reader()).next();
    try (ImageInputStream in = new FileImageInputStream(file.toFile())) {
      reader.setInput(in, true, true);
      long width = reader.getWidth(0);
      long height = reader.getHeight(0);
      if (width * height > MOST_PIXELS) {
        throw unfit(
            say(
                "This picture is %,d by %,d pixels, which is more than can be read. Take it at a smaller size.",
                width, height));
      }
      ImageReadParam param = reader.getDefaultReadParam();
      int nth = everyNth(Math.max(width, height));
      param.setSourceSubsampling(nth, nth, 0, 0);
      return reader.read(0, param);
    } finally {
      reader.dispose();
    }
  }

  /** Which pixels of a long side are read at all, so that memory does not grow with the picture. */
  private static int everyNth(long side) {
    return (int) Math.max(1, side / (2L * LARGE));
  }

  private static Refused unfit(String sentence) {
    return new Refused(Refusal.Unfit.of(FIELD, sentence));
  }
}
