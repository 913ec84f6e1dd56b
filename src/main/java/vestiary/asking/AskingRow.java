package vestiary.asking;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.hibernate.annotations.TenantId;
import org.hibernate.annotations.UuidGenerator;
import vestiary.calendar.Term;
import vestiary.vesting.ChurchId;

/** One person asked for one trip. */
@Entity
@Table(name = "asking")
class AskingRow {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  UUID tripId;
  UUID fromId;
  UUID toId;
  Instant leaveBy;
  String rider;
  boolean riding;
  String[] pieces;

  /** {@code null} once the person is erased. */
  UUID personId;

  String state = AskingState.ASKED.id();
  String askedBy;
  Instant askedAt;
  String changedBy;
  Instant changedAt;

  /** {@code null}: no mail. */
  Instant mailedAt;

  boolean mailFailed;

  /** {@code null}: no plan was made after a refusal. */
  UUID offered;

  @Version int version;

  AskingState state() {
    return Term.find(AskingState.class, state).orElseThrow();
  }

  Asking toAsking(String name) {
    return new Asking(
        id,
        new AskedTrip(
            tripId, new ChurchId(fromId), new ChurchId(toId), leaveBy, rider, List.of(pieces)),
        riding,
        Stream.ofNullable(personId).toList(),
        name,
        state(),
        askedBy,
        askedAt,
        changedBy,
        changedAt,
        Stream.ofNullable(mailedAt).toList(),
        mailFailed,
        Stream.ofNullable(offered).toList(),
        version);
  }
}
