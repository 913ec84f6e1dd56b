package vestiary.acceptance;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.TenantId;
import org.hibernate.annotations.UuidGenerator;
import vestiary.calendar.Colour;
import vestiary.calendar.Term;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassId;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Role;
import vestiary.vesting.Step;
import vestiary.vesting.Wearer;

@Entity
@Table(name = "accepted_step")
class AcceptedStepRow {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  UUID id;

  @TenantId
  @Column(name = "cluster_id")
  String clusterId;

  UUID massId;
  String role;
  int ordinal;
  String kind;
  UUID churchId;
  String colour;
  String step;
  String person;
  String acceptedBy;
  Instant acceptedAt;

  static AcceptedStepRow of(AcceptedStep accepted) {
    AcceptedStepRow row = new AcceptedStepRow();
    row.massId = accepted.wearer().mass().value();
    row.role = accepted.wearer().role().id();
    row.ordinal = accepted.wearer().ordinal();
    row.kind = accepted.kind().id();
    row.churchId = accepted.church().value();
    row.colour = accepted.colour().id();
    row.step = accepted.step().id();
    row.person = accepted.person();
    row.acceptedBy = accepted.by();
    row.acceptedAt = accepted.at();
    return row;
  }

  AcceptedStep toAcceptedStep() {
    return new AcceptedStep(
        new Wearer(new MassId(massId), Term.find(Role.class, role).orElseThrow(), ordinal),
        Term.find(PieceKind.class, kind).orElseThrow(),
        new ChurchId(churchId),
        Term.find(Colour.class, colour).orElseThrow(),
        Term.find(Step.class, step).orElseThrow(),
        person,
        acceptedBy,
        acceptedAt);
  }
}
