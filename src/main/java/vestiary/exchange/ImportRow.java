package vestiary.exchange;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Locale;
import java.util.UUID;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.annotations.TenantId;
import org.hibernate.annotations.UuidGenerator;
import org.hibernate.type.SqlTypes;
import vestiary.calendar.Term;

/** A list that somebody sent, and what came of it. */
@Entity
@Table(name = "import")
class ImportRow {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  /** Which list: id of an {@link ImportWhat}, or calendar. */
  String what;

  String fileName = "";

  /** Who sent it, as the history of changes knows them. */
  String visitor;

  Instant sentAt;
  String status = ImportState.SENT.id();

  /** Whether it is or was only tried. */
  boolean trial = true;

  int lines;

  /** Lines that are worked through. */
  int progress;

  /** How often a copy of the server began it; the last one alone may write. */
  int starts;

  boolean cancelled;

  /** In which what came of it is said, as a BCP 47 tag: that of whoever asked last. */
  String language = Locale.ENGLISH.toLanguageTag();

  String failure = "";

  /** {@code null} until it was tried or brought in. */
  @JdbcTypeCode(SqlTypes.JSON)
  ImportResult result;

  Instant doneAt;

  /** Until which date patterns had yielded their Masses when it was done. */
  LocalDate reached;

  Instant undoneAt;
  String undoneBy = "";

  @Version int version;

  ImportState state() {
    return Term.find(ImportState.class, status).orElseThrow();
  }

  void become(ImportState state) {
    status = state.id();
  }
}
