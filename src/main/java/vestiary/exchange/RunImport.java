package vestiary.exchange;

import static vestiary.web.Speech.word;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.context.control.ActivateRequestContext;
import jakarta.persistence.LockModeType;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import vestiary.access.CurrentCluster;
import vestiary.problem.Refused;
import vestiary.web.Speech;

/**
 * Tries a list or brings it in as a job of the server, in one transaction, from the beginning each
 * time it is begun; how far it is can be seen meanwhile.
 */
@ApplicationScoped
class RunImport {

  /** The longest file takes a minute on a slow machine. */
  private static final int LONGEST_SECONDS = 1800;

  /** A list that took a copy of the server down with it three times is not begun once more. */
  private static final int MOST_STARTS = 3;

  private static final long TELL_EVERY_NANOS = 400_000_000;

  private final ImportRows rows;
  private final BringIn bringIn;
  private final CurrentCluster current;
  private final ImportChanges changes;

  RunImport(ImportRows rows, BringIn bringIn, CurrentCluster current, ImportChanges changes) {
    this.rows = rows;
    this.bringIn = bringIn;
    this.current = current;
    this.changes = changes;
  }

  private record Turn(UUID id, int starts, String visitor, Locale language) {}

  /** Does what was asked for; nothing if it is over already. */
  @ActivateRequestContext
  void run(UUID cluster, UUID id, BooleanSupplier isStopping) {
    current.assign(cluster);
    Optional<Turn> begun = QuarkusTransaction.requiringNew().call(() -> begin(id));
    begun
        .flatMap(turn -> Speech.in(turn.language(), () -> attempt(turn, isStopping)))
        .ifPresent(failure -> note(id, failure));
  }

  /** Does it; a sentence on why it came to nothing, if it did. */
  private Optional<String> attempt(Turn turn, BooleanSupplier isStopping) {
    try {
      QuarkusTransaction.requiringNew().timeout(LONGEST_SECONDS).run(() -> work(turn, isStopping));
      return Optional.empty();
    } catch (CancellationException stopped) {
      if (isStopping.getAsBoolean()) {
        throw stopped;
      }
      return Optional.of(word("It was stopped; nothing was changed."));
    } catch (Refused refused) {
      return Optional.of(refused.refusal().detail());
    }
  }

  /** Notes that it came to nothing. */
  @ActivateRequestContext
  void fail(UUID cluster, UUID id, String sentence) {
    current.assign(cluster);
    note(id, sentence);
  }

  private Optional<Turn> begin(UUID id) {
    ImportRow row = rows.findById(id, LockModeType.PESSIMISTIC_WRITE);
    if (row == null || !row.state().isAtWork()) {
      return Optional.empty();
    }
    if (row.starts >= MOST_STARTS) {
      row.become(ImportState.FAILED);
      row.failure = word("It was begun three times and never came to its end. Divide the file.");
      return Optional.empty();
    }
    row.starts++;
    row.progress = 0;
    row.become(ImportState.RUNNING);
    return Optional.of(new Turn(id, row.starts, row.visitor, Locale.forLanguageTag(row.language)));
  }

  /** What is changed was changed by whoever sent the list, not by a job. */
  private void work(Turn turn, BooleanSupplier isStopping) {
    changes.actAs(turn.visitor());
    bringIn.run(turn.id().toString(), new Told(turn, isStopping));
  }

  private void note(UUID id, String sentence) {
    QuarkusTransaction.requiringNew()
        .run(
            () ->
                rows.findByIdOptional(id)
                    .filter(row -> row.state().isAtWork())
                    .ifPresent(
                        row -> {
                          row.become(ImportState.FAILED);
                          row.failure = sentence;
                        }));
  }

  /** Writes now and then how far it is, and looks whether somebody stopped it. */
  private final class Told implements ImportCsv.Steps {
    private final Turn turn;
    private final BooleanSupplier isStopping;
    private long last = System.nanoTime();

    private Told(Turn turn, BooleanSupplier isStopping) {
      this.turn = turn;
      this.isStopping = isStopping;
    }

    @Override
    public void at(int lines) {
      if (System.nanoTime() - last < TELL_EVERY_NANOS) {
        return;
      }
      last = System.nanoTime();
      boolean ours =
          QuarkusTransaction.requiringNew()
              .call(() -> rows.report(turn.id(), turn.starts(), lines));
      if (!ours || isStopping.getAsBoolean()) {
        throw new CancellationException("stopped");
      }
    }
  }
}
