package vestiary.backup;

import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Keeps the archive of a cluster as it stands, before something is done that cannot be undone. */
@ApplicationScoped
public class KeepArchive {

  private final WriteBackup write;

  KeepArchive(WriteBackup write) {
    this.write = write;
  }

  /**
   * Writes the archive of the present cluster; never within a transaction.
   *
   * @param file where it is to lie; its folder is made, and a file that lies there is replaced
   */
  public void keep(Path file) {
    Path written = write.write();
    try {
      Files.createDirectories(file.getParent());
      // Moved and not copied: what is known of people stays readable to the server's user alone.
      Files.move(written, file, StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
