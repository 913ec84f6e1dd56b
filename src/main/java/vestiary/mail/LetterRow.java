package vestiary.mail;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.TenantId;
import org.hibernate.annotations.UuidGenerator;
import vestiary.calendar.Term;

@Entity
@Table(name = "letter")
class LetterRow {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  UUID reader;
  String kind;
  String once;
  String language;
  String subject;
  String plain;
  String html;
  String stopLink;
  String fingerprint;
  String state = LetterState.WAITING.id();
  int tries;
  Instant madeAt;
  Instant nextAt;

  /** Null for one that is tried as long as any. */
  Instant goodUntil;

  /** Null while it waits. */
  Instant endedAt;

  String answer = "";

  LetterState toState() {
    return Term.find(LetterState.class, state).orElseThrow();
  }

  LetterKind toKind() {
    return Term.find(LetterKind.class, kind).orElseThrow();
  }

  boolean isOver(Instant now) {
    return goodUntil != null && !now.isBefore(goodUntil);
  }

  void end(LetterState become, Instant now, String said) {
    state = become.id();
    endedAt = now;
    answer = said;
  }

  /** What it said is nobody's any more. */
  void empty() {
    subject = "";
    plain = "";
    html = "";
    stopLink = "";
  }
}
