package vestiary.browser;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A folder of data as the first start leaves it, made once for all classes: each starts on a copy,
 * since making the database and bringing in the demo takes longer than most of them.
 */
final class DemoFolder implements AutoCloseable {

  private final Path folder;

  private DemoFolder(Path folder) {
    this.folder = folder;
  }

  /** Starts the program on a fresh folder, and ends it. */
  static DemoFolder make() {
    Path folder = fresh();
    Optional<ProcessHandle> postgres;
    try (PackagedServer first = PackagedServer.start(folder)) {
      postgres = first.findPostgres();
    }
    // Its files change until it is gone, and it may be gone a moment after the program.
    postgres.ifPresent(running -> running.onExit().join());
    return new DemoFolder(folder);
  }

  /** A copy in a place of its own, which whoever asks for it deletes. */
  Path copy() {
    Path copy = fresh();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : (Iterable<Path>) files.skip(1)::iterator) {
        // With its rights: PostgreSQL starts in no folder that others may read.
        Files.copy(file, copy.resolve(folder.relativize(file)), StandardCopyOption.COPY_ATTRIBUTES);
      }
      return copy;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public void close() {
    delete(folder);
  }

  static void delete(Path folder) {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Path fresh() {
    try {
      return Files.createTempDirectory("vestiary-browser");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
