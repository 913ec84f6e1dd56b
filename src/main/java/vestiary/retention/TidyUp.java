package vestiary.retention;

import static vestiary.retention.Keeping.ABSENCES;
import static vestiary.retention.Keeping.ASKINGS;
import static vestiary.retention.Keeping.CONTACTS;
import static vestiary.retention.Keeping.HISTORY;
import static vestiary.retention.Keeping.SESSIONS;
import static vestiary.retention.Keeping.TRIES;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.Set;
import java.util.UUID;
import vestiary.asking.OldAskings;
import vestiary.cluster.ReadCluster;
import vestiary.history.OldHistory;
import vestiary.people.OldAbsences;
import vestiary.people.OldContacts;
import vestiary.schedule.Serving;
import vestiary.sentonce.SentForms;
import vestiary.users.EndedTraces;

/** Takes away, once a day, what has been kept long enough. */
@ApplicationScoped
class TidyUp {

  private final KeptFor keptFor;
  private final EndedTraces traces;
  private final OldAskings askings;
  private final OldContacts contacts;
  private final OldAbsences absences;
  private final OldHistory history;
  private final Serving serving;
  private final TidyingRows rows;
  private final ReadCluster cluster;
  private final Clock clock;
  private final SentForms sentForms;

  TidyUp(
      KeptFor keptFor,
      EndedTraces traces,
      OldAskings askings,
      OldContacts contacts,
      OldAbsences absences,
      OldHistory history,
      Serving serving,
      TidyingRows rows,
      ReadCluster cluster,
      Clock clock,
      SentForms sentForms) {
    this.sentForms = sentForms;
    this.keptFor = keptFor;
    this.traces = traces;
    this.askings = askings;
    this.contacts = contacts;
    this.absences = absences;
    this.history = history;
    this.serving = serving;
    this.rows = rows;
    this.cluster = cluster;
    this.clock = clock;
  }

  /** In the present cluster; nothing if its day was tidied already. */
  @Transactional
  void today() {
    Instant now = clock.instant();
    LocalDate day = now.atZone(cluster.cluster().zone()).toLocalDate();
    if (rows.isDone(day)) {
      return;
    }
    traces.forgetSessions(keptFor.since(SESSIONS));
    traces.forgetTries(keptFor.since(TRIES));
    askings.forget(keptFor.since(ASKINGS));
    absences.forget(keptFor.since(ABSENCES));
    sentForms.tidy();
    contacts.forget(servingSince(keptFor.since(CONTACTS)), keptFor.since(CONTACTS));
    TidyingRow row = new TidyingRow();
    row.day = day;
    row.at = now;
    row.historyFrom = keptFor.since(HISTORY);
    rows.persistAndFlush(row);
  }

  /** How many would go if it were done now. */
  @Transactional
  long count(Keeping keeping) {
    Instant since = keptFor.since(keeping);
    return switch (keeping) {
      case HISTORY -> history.count(since);
      case SESSIONS -> traces.countSessions(since);
      case TRIES -> traces.countTries(since);
      case ASKINGS -> askings.count(since);
      case CONTACTS -> contacts.count(servingSince(since), since);
      case ABSENCES -> absences.count(since);
    };
  }

  private Set<UUID> servingSince(Instant moment) {
    Set<UUID> people = new HashSet<>(serving.since(moment));
    people.addAll(askings.peopleSince(moment));
    return people;
  }
}
