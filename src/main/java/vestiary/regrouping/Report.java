package vestiary.regrouping;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * What became of a merge, or would.
 *
 * @param daysOfTheirOwn celebrations that the one that ends kept in all its churches
 * @param archive where it lies as it was
 */
record Report(
    Side ended,
    Side remaining,
    MoveRows.Moved moved,
    List<String> differences,
    int daysOfTheirOwn,
    Path archive) {

  Report {
    differences = List.copyOf(differences);
  }

  /** Lines for whoever keeps the server. */
  List<String> lines(boolean isTrial) {
    List<String> lines = new ArrayList<>();
    lines.add("%s becomes part of %s: %s.".formatted(ended, remaining, counted(moved.rows())));
    lines.add("What ends with it: %s.".formatted(counted(moved.gone())));
    lines.add(
        differences.isEmpty()
            ? "The settings of both are the same."
            : "Settings that hold for both from now on: %s."
                .formatted(String.join("; ", differences)));
    if (daysOfTheirOwn > 0) {
      lines.add(
          "Days of their own that %s kept in all its churches are kept in those of %s as well: %d."
              .formatted(ended.name(), remaining.name(), daysOfTheirOwn));
    }
    lines.add(
        "Everybody of %s signs in anew, by the word %s and the password that they have."
            .formatted(ended.name(), remaining.word()));
    lines.add(
        isTrial
            ? "This was a trial: nothing was changed."
            : "It is done. Both lie as they were in %s.".formatted(archive.getParent()));
    return List.copyOf(lines);
  }

  private static String counted(Map<String, Integer> rows) {
    return rows.isEmpty()
        ? "nothing"
        : rows.entrySet().stream()
            .map(each -> "%s %d".formatted(each.getKey().replace('_', ' '), each.getValue()))
            .collect(Collectors.joining(", "));
  }
}
