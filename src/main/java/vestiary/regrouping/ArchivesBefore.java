package vestiary.regrouping;

import jakarta.enterprise.context.ApplicationScoped;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import vestiary.access.CurrentCluster;
import vestiary.backup.KeepArchive;

/**
 * Keeps each cluster as it was before it was regrouped: in the data folder, which is made where the
 * database is one's own.
 */
@ApplicationScoped
class ArchivesBefore {

  private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("uuuu-MM-dd-HHmmss");

  private final KeepArchive archives;
  private final CurrentCluster current;
  private final Clock clock;
  private final Path folder;

  ArchivesBefore(
      KeepArchive archives,
      CurrentCluster current,
      Clock clock,
      @ConfigProperty(name = "vestiary.data") Optional<Path> data) {
    this.archives = archives;
    this.current = current;
    this.clock = clock;
    this.folder =
        data.orElseGet(() -> Path.of(System.getProperty("user.home"), ".vestiary"))
            .resolve("before-regrouping")
            .toAbsolutePath()
            .normalize();
  }

  /** The file with the archive. */
  Path keep(Side side) {
    Path file =
        folder.resolve("%s-%s.zip".formatted(side.word(), LocalDateTime.now(clock).format(MOMENT)));
    current.assign(side.id());
    archives.keep(file);
    return file;
  }
}
