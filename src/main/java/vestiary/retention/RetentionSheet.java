package vestiary.retention;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.ZoneId;
import java.util.Arrays;
import vestiary.cluster.ReadCluster;
import vestiary.web.Entries;
import vestiary.web.Frames;
import vestiary.web.Speech;

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
            .map(row -> say("Last tidied on %s.", Speech.dateAndYear(row.day)))
            .orElse(say("Not tidied yet.")));
  }

  private RetentionView.Line line(Keeping keeping, Entries entries, ZoneId zone) {
    long going = tidy.count(keeping);
    String before = Speech.dateAndYear(keptFor.since(keeping).atZone(zone).toLocalDate());
    return new RetentionView.Line(
        keeping.field(),
        keeping.words(),
        keeping.least(),
        keeping.most(),
        entries.field(keeping.field()),
        say("Usually %d days. %s.", keeping.usual(), keeping.reason()),
        going == 0
            ? say(
                "As it stands nothing goes with the next night: nothing is from before %s.", before)
            : going == 1
                ? say(
                    "As it stands %d goes with the next night: all from before %s.", going, before)
                : say(
                    "As it stands %d go with the next night: all from before %s.", going, before));
  }
}
