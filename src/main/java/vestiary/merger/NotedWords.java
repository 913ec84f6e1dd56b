package vestiary.merger;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import vestiary.calendar.Term;
import vestiary.cluster.Parishes;
import vestiary.cluster.ReadCluster;
import vestiary.web.Speech;

/** What was decreed and done, in sentences. */
@ApplicationScoped
class NotedWords {

  private final MergerRows mergers;
  private final ReadCluster cluster;
  private final Parishes parishes;

  NotedWords(MergerRows mergers, ReadCluster cluster, Parishes parishes) {
    this.mergers = mergers;
    this.cluster = cluster;
    this.parishes = parishes;
  }

  /** All of the cluster, newest first. */
  List<String> all() {
    return said(mergers.newestFirst());
  }

  /** Those of one church, newest first. */
  List<String> of(UUID church) {
    return said(mergers.of(church));
  }

  private List<String> said(List<MergerRow> rows) {
    Map<UUID, String> names = new HashMap<>();
    cluster.churches().forEach(c -> names.put(c.id().value(), c.name()));
    parishes.all().forEach(p -> names.put(p.id(), p.name()));
    return rows.stream().map(row -> sentence(row, names)).toList();
  }

  private static String sentence(MergerRow row, Map<UUID, String> names) {
    String date = Speech.dateAndYear(row.holdsFrom);
    String pieces = Speech.count(row.pieces, "piece");
    String said =
        switch (Term.find(MergerRow.Kind.class, row.kind).orElseThrow()) {
          case CLOSING -> say("%s is closed from %s.", names.get(row.churchId), date);
          case OPENING -> say("%s is open again from %s.", names.get(row.churchId), date);
          case GOODS ->
              Speech.sayOf(
                  row.pieces,
                  "%s of %s went home to %s on %s.",
                  Speech.sentence(pieces),
                  names.get(row.churchId),
                  names.get(row.toId),
                  date);
          case MERGING ->
              say(
                  "%s is merged into %s from %s, with %s.",
                  names.get(row.parishId), names.get(row.toId), date, pieces);
        };
    return row.note.isEmpty() ? said : said + " " + row.note;
  }
}
