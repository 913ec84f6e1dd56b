package vestiary.backup;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;

/** Takes a backup out, and notes afterwards that somebody did; the note is none of the backup. */
@ApplicationScoped
class TakeBackup {

  private final WriteBackup write;
  private final TakenBackupRows taken;
  private final Clock clock;

  TakeBackup(WriteBackup write, TakenBackupRows taken, Clock clock) {
    this.write = write;
    this.taken = taken;
    this.clock = clock;
  }

  /** The archive, in a file that whoever asks for it removes; never within a transaction. */
  Path take() {
    Path file = write.write();
    QuarkusTransaction.requiringNew().run(() -> note(file));
    return file;
  }

  private void note(Path file) {
    try {
      TakenBackupRow row = new TakenBackupRow();
      row.at = clock.instant();
      row.bytes = Files.size(file);
      taken.persist(row);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
