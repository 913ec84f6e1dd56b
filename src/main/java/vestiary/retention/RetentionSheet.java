package vestiary.retention;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.ZoneId;
import java.util.Arrays;
import vestiary.cluster.ReadCluster;
import vestiary.web.English;
import vestiary.web.Entries;
import vestiary.web.Frames;

/** Says in words what goes, and when. */
@ApplicationScoped
class RetentionSheet {

  private final KeptFor keptFor;
  private final TidyUp tidy;
  private final TidyingRows rows;
  private final ReadCluster cluster;
  private final Frames frames;

  RetentionSheet(
      KeptFor keptFor, TidyUp tidy, TidyingRows rows, ReadCluster cluster, Frames frames) {
    this.keptFor = keptFor;
    this.tidy = tidy;
    this.rows = rows;
    this.cluster = cluster;
    this.frames = frames;
  }

  @Transactional
  RetentionView view(Entries entries, String done, String problem) {
    ZoneId zone = cluster.cluster().zone();
    return new RetentionView(
        frames.of("settings", "/settings/retention"),
        done,
        problem,
        Arrays.stream(Keeping.values()).map(k -> line(k, entries, zone)).toList(),
        rows.findLast()
            .map(row -> "Last tidied on %s.".formatted(English.dateAndYear(row.day)))
            .orElse("Not tidied yet."));
  }

  private RetentionView.Line line(Keeping keeping, Entries entries, ZoneId zone) {
    long going = tidy.count(keeping);
    String before = English.dateAndYear(keptFor.since(keeping).atZone(zone).toLocalDate());
    return new RetentionView.Line(
        keeping.field(),
        keeping.words(),
        keeping.least(),
        keeping.most(),
        entries.field(keeping.field()),
        "Usually %d days. %s.".formatted(keeping.usual(), keeping.reason()),
        going == 0
            ? "As it stands nothing goes with the next night: nothing is from before %s."
                .formatted(before)
            : "As it stands %d %s with the next night: all from before %s."
                .formatted(going, going == 1 ? "goes" : "go", before));
  }
}
