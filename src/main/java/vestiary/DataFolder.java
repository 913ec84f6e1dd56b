package vestiary;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * The folder that holds the database of this machine: {@code VESTIARY_DATA}, or {@code .vestiary}
 * in the home folder. One server at a time may use it; the operating system gives the lock back
 * when the server ends, however it ends.
 */
final class DataFolder {

  /**
   * Kept for ever: a channel that nobody holds is closed by the collector, and its lock with it.
   */
  @SuppressWarnings("unused")
  private static FileLock held;

  private final Path path;

  private DataFolder(Path path) {
    this.path = path;
  }

  static DataFolder fromEnvironment() {
    String chosen =
        System.getProperty("vestiary.data", System.getenv().getOrDefault("VESTIARY_DATA", ""));
    return new DataFolder(
        (chosen.isBlank() ? Path.of(System.getProperty("user.home"), ".vestiary") : Path.of(chosen))
            .toAbsolutePath()
            .normalize());
  }

  /**
   * Takes the folder for this process until it ends.
   *
   * @throws InUse if another server has it, or if it cannot be written
   */
  void lock() {
    try {
      Files.createDirectories(path);
      FileChannel channel =
          FileChannel.open(
              path.resolve("server.lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      held = channel.tryLock();
      if (held == null) {
        throw new InUse(alreadyRunning());
      }
    } catch (OverlappingFileLockException e) {
      throw new InUse(alreadyRunning());
    } catch (IOException e) {
      throw new InUse(
          "The folder %s cannot be used (%s). Name another one in VESTIARY_DATA."
              .formatted(path, e.getMessage()));
    }
  }

  Path database() {
    return path.resolve("database");
  }

  Path binaries() {
    return created(path.resolve("postgresql"));
  }

  private String alreadyRunning() {
    return "Vestiary is already running on the data in "
        + path
        + ". Use that one, stop it first, or name another folder in VESTIARY_DATA.";
  }

  private static Path created(Path folder) {
    try {
      return Files.createDirectories(folder);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Said to the person who starts the server; the sentence says what to do. */
  static final class InUse extends RuntimeException {
    private static final long serialVersionUID = 1L;

    InUse(String sentence) {
      super(sentence);
    }
  }
}
