package vestiary.backup;

import static vestiary.web.Speech.say;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.Set;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;

/**
 * An archive that somebody brings, read with suspicion: nothing of it is written to disk under a
 * name of its own choice, nothing is unpacked without end, and no line is used before all of it was
 * seen to be as it was written.
 */
final class Archive implements AutoCloseable {

  private static final long GIGABYTE = 1L << 30;
  private static final long MOST_BYTES = 4 * GIGABYTE;
  private static final int MOST_MANIFEST = 1 << 20;
  private static final int MOST_ENTRIES = 500;
  private static final int CHUNK = 1 << 16;

  private final ZipFile zip;
  private final Manifest manifest;

  private Archive(ZipFile zip, Manifest manifest) {
    this.zip = zip;
    this.manifest = manifest;
  }

  /**
   * Opens an archive and looks through all of it.
   *
   * @param schema version of the newest migration of this server
   * @throws vestiary.problem.Refused if it is truncated, tampered with, of another version or too
   *     large
   */
  static Archive open(Path file, String schema, ObjectMapper json) {
    ZipFile zip = opened(file);
    try {
      Archive archive = new Archive(zip, manifest(zip, json));
      archive.refuseOtherVersion(schema);
      archive.refuseUnlessAsWritten();
      return archive;
    } catch (IOException | RuntimeException e) {
      close(zip);
      if (e instanceof RuntimeException known) {
        throw known;
      }
      throw BadArchive.because(BadArchive.TAMPERED, say("a part cannot be unpacked"));
    }
  }

  Manifest manifest() {
    return manifest;
  }

  /** The lines of one table; whoever reads them closes the stream. */
  Stream<String> lines(Manifest.Entry entry) {
    try {
      BufferedReader reader =
          new BufferedReader(
              new InputStreamReader(
                  zip.getInputStream(zip.getEntry(entry.file())), StandardCharsets.UTF_8));
      return reader.lines().onClose(() -> close(reader));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public void close() {
    close(zip);
  }

  private static ZipFile opened(Path file) {
    try {
      return new ZipFile(file.toFile());
    } catch (ZipException notZip) {
      throw BadArchive.because(BadArchive.NO_ARCHIVE);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Manifest manifest(ZipFile zip, ObjectMapper json) throws IOException {
    ZipEntry entry = zip.getEntry(Manifest.FILE);
    if (entry == null || zip.size() > MOST_ENTRIES) {
      throw BadArchive.because(BadArchive.NO_ARCHIVE);
    }
    try (InputStream in = zip.getInputStream(entry)) {
      byte[] read = in.readNBytes(MOST_MANIFEST + 1);
      if (read.length > MOST_MANIFEST) {
        throw BadArchive.because(BadArchive.TAMPERED, Manifest.FILE);
      }
      int format = json.readTree(read).path("format").asInt();
      if (format > Manifest.FORMAT) {
        throw BadArchive.because(BadArchive.NEWER);
      }
      return json.readValue(read, Manifest.class);
    } catch (JsonProcessingException unreadable) {
      throw BadArchive.because(BadArchive.TAMPERED, Manifest.FILE);
    }
  }

  private void refuseOtherVersion(String schema) {
    if (!manifest.schema().matches("\\d{1,6}")) {
      throw BadArchive.because(BadArchive.TAMPERED, Manifest.FILE);
    }
    int difference = Integer.compare(Integer.parseInt(manifest.schema()), Integer.parseInt(schema));
    if (difference > 0) {
      throw BadArchive.because(BadArchive.NEWER);
    }
    if (difference < 0) {
      throw BadArchive.because(BadArchive.OLDER, manifest.schema(), schema);
    }
  }

  private void refuseUnlessAsWritten() throws IOException {
    Set<String> promised = new HashSet<>(Set.of(Manifest.FILE));
    long left = MOST_BYTES;
    for (Manifest.Entry entry : manifest.entries()) {
      if (!promised.add(entry.file()) || zip.getEntry(entry.file()) == null) {
        throw BadArchive.because(BadArchive.TAMPERED, entry.table());
      }
      left -= look(entry, left);
    }
    boolean isMore = zip.stream().anyMatch(found -> !promised.contains(found.getName()));
    if (isMore || zip.size() != promised.size()) {
      throw BadArchive.because(BadArchive.TAMPERED, say("it holds more than it says"));
    }
  }

  /** How many bytes the entry unpacks to. */
  private long look(Manifest.Entry entry, long most) throws IOException {
    MessageDigest digest = WriteBackup.sha256();
    long read = 0;
    try (InputStream in = zip.getInputStream(zip.getEntry(entry.file()))) {
      byte[] chunk = new byte[CHUNK];
      for (int got = in.read(chunk); got >= 0; got = in.read(chunk)) {
        digest.update(chunk, 0, got);
        read += got;
        if (read > most) {
          throw BadArchive.because(BadArchive.TOO_LARGE, MOST_BYTES / GIGABYTE);
        }
      }
    }
    if (!HexFormat.of().formatHex(digest.digest()).equals(entry.sha256())) {
      throw BadArchive.because(BadArchive.TAMPERED, entry.table());
    }
    return read;
  }

  private static void close(AutoCloseable open) {
    try {
      open.close();
    } catch (Exception e) {
      throw new IllegalStateException(e);
    }
  }
}
