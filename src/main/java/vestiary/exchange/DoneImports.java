package vestiary.exchange;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.function.UnaryOperator;
import vestiary.cluster.ReadCluster;
import vestiary.history.LastChanges;
import vestiary.web.Speech;

/** What was brought in of late, by whom, and whether it can be undone. */
@ApplicationScoped
@Transactional
class DoneImports {

  private static final int MOST = 20;

  private final ImportRows rows;
  private final UndoImport undo;
  private final LastChanges changes;
  private final ReadCluster cluster;

  DoneImports(ImportRows rows, UndoImport undo, LastChanges changes, ReadCluster cluster) {
    this.rows = rows;
    this.undo = undo;
    this.changes = changes;
    this.cluster = cluster;
  }

  List<ImportRow> rows() {
    return rows.done(MOST);
  }

  /** The last first. */
  List<ImportView.Done> all() {
    ZoneId zone = cluster.cluster().zone();
    UnaryOperator<String> makers = changes.makers();
    return rows().stream().map(row -> done(row, zone, makers)).toList();
  }

  private ImportView.Done done(ImportRow row, ZoneId zone, UnaryOperator<String> makers) {
    String address = "/import/" + row.id;
    boolean isUndone = row.state() == ImportState.UNDONE;
    String sentence =
        say(
            "%s: %s, imported on %s by %s%s",
            ImportWords.title(row.what),
            Speech.count(row.result == null ? row.lines : row.result.lines(), "line"),
            moment(row.doneAt.atZone(zone)),
            makers.apply(row.visitor),
            isUndone
                ? say(
                    "; undone on %s by %s.",
                    moment(row.undoneAt.atZone(zone)), makers.apply(row.undoneBy))
                : ".");
    return new ImportView.Done(
        sentence, address, !isUndone && undo.isKept(row.id) ? address + "/undo" : "");
  }

  private static String moment(ZonedDateTime at) {
    return Speech.dateAndYear(at.toLocalDate()) + " " + say("at %s", Speech.clock(at));
  }
}
