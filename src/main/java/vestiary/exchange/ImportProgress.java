package vestiary.exchange;

import static vestiary.web.Speech.say;

import java.time.Instant;
import java.util.List;

/**
 * How far a list is, for programs.
 *
 * @param what which list, or calendar
 * @param status sent, waiting, running, tried, refused, failed, done or undone
 * @param lines how many there are in it
 * @param progress of 100
 * @param good lines that were understood; 0 before it was worked through, likewise the next
 * @param unchanged good lines that say nothing but what is so already
 * @param badLines how many lines are wrong
 * @param bad a page of them
 * @param failure why it came to nothing; empty if it did not
 * @param doneAt when it was brought in; left out while it is not, likewise undoneAt
 */
record ImportProgress(
    String id,
    String what,
    String status,
    int lines,
    int progress,
    int good,
    int unchanged,
    int badLines,
    List<BadLine> bad,
    List<String> unknownColumns,
    String failure,
    Instant doneAt,
    Instant undoneAt) {

  static ImportProgress of(ImportRow row, int page) {
    ImportResult result =
        row.result == null ? new ImportResult(0, 0, List.of(), List.of(), List.of()) : row.result;
    int all = row.trial ? row.lines : 2 * row.lines;
    boolean isOver = !row.state().isAtWork() && row.result != null;
    return new ImportProgress(
        row.id.toString(),
        row.what,
        row.status,
        row.lines,
        isOver ? 100 : Math.min(99, row.progress * 100 / Math.max(1, all)),
        result.lines(),
        result.unchanged(),
        result.bad().size(),
        result.bad().stream()
            .skip((page - 1L) * ReadImport.LINES_A_PAGE)
            .limit(ReadImport.LINES_A_PAGE)
            .toList(),
        result.unknownColumns(),
        say(row.failure),
        row.doneAt,
        row.undoneAt);
  }
}
