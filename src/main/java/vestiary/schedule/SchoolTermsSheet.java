package vestiary.schedule;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.LocalDate;
import vestiary.cluster.ReadCluster;
import vestiary.pattern.SchoolTime;
import vestiary.web.Entries;
import vestiary.web.Frames;
import vestiary.web.Link;
import vestiary.web.Speech;

/** Lists the school terms, and the Mass times that keep to them. */
@ApplicationScoped
@Transactional
class SchoolTermsSheet {

  private final KeepSchoolTerms terms;
  private final PatternRows patterns;
  private final ReadCluster cluster;
  private final Frames frames;
  private final Clock clock;

  SchoolTermsSheet(
      KeepSchoolTerms terms,
      PatternRows patterns,
      ReadCluster cluster,
      Frames frames,
      Clock clock) {
    this.terms = terms;
    this.patterns = patterns;
    this.cluster = cluster;
    this.frames = frames;
    this.clock = clock;
  }

  SchoolTermsView view(String done, Entries input, String problem) {
    LocalDate today = LocalDate.now(clock.withZone(cluster.cluster().zone()));
    return new SchoolTermsView(
        frames.of("settings", "/patterns/terms"),
        done,
        problem,
        terms.all().stream().map(SchoolTermsSheet::row).toList(),
        patterns.list("school <> ?1 order by at, id", SchoolTime.ALWAYS.id()).stream()
            .map(row -> new Link(PatternWords.of(row, today), "/patterns/" + row.id))
            .toList(),
        input.field("name"),
        input.field("first"),
        input.field("last"));
  }

  private static SchoolTermsView.Row row(SchoolTermRow row) {
    return new SchoolTermsView.Row(
        row.name, Speech.span(row.starts, row.ends), "/patterns/terms/" + row.id + "/removal");
  }
}
