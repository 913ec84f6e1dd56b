package vestiary.device;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import vestiary.access.Action;
import vestiary.access.CurrentCluster;
import vestiary.access.CurrentVisitor;
import vestiary.access.Secret;
import vestiary.access.SharedDevices;
import vestiary.access.Visitor;
import vestiary.problem.Asked;

/** Lets devices stay signed in, and shuts them out. */
@ApplicationScoped
public class SharedDevicesOfCluster implements SharedDevices {

  private static final int LONGEST_NAME = 100;
  private static final Duration NOTED_EVERY = Duration.ofMinutes(10);

  private final SharedDeviceRows devices;
  private final CurrentCluster current;
  private final CurrentVisitor visitor;
  private final Clock clock;

  SharedDevicesOfCluster(
      SharedDeviceRows devices, CurrentCluster current, CurrentVisitor visitor, Clock clock) {
    this.devices = devices;
    this.current = current;
    this.visitor = visitor;
    this.clock = clock;
  }

  @Override
  public Optional<Visitor> findDevice(Secret secret) {
    Instant now = clock.instant();
    return QuarkusTransaction.requiringNew()
        .call(() -> devices.findOpen(secret.fingerprint()).map(row -> used(row, now)));
  }

  /** What all are called, those included that were shut out, by id. */
  @Transactional
  public Map<UUID, String> names() {
    return devices.streamAll().collect(Collectors.toMap(row -> row.id, row -> row.name));
  }

  /** Those that stay signed in and that the visitor may shut out, by name. */
  @Transactional
  List<SharedDeviceRow> within() {
    return devices.open().stream()
        .filter(row -> visitor.visitor().mayIn(Action.LET_DEVICES, row.churchId))
        .toList();
  }

  /**
   * Lets one stay signed in; what it answers with is to be given to it and kept nowhere.
   *
   * @throws vestiary.problem.Refused if the name is missing, or it is not the visitor’s church
   */
  @Transactional
  Secret let(UUID church, String name) {
    visitor.refuseOutsideOwn(Action.LET_DEVICES, church);
    Asked asked = new Asked();
    SharedDeviceRow row = new SharedDeviceRow();
    row.name = asked.needed("name", name, LONGEST_NAME);
    asked.refuseIfFaulty();
    Secret secret = Secret.fresh(current.id());
    row.churchId = church;
    row.fingerprint = secret.fingerprint();
    row.madeAt = clock.instant();
    row.usedAt = row.madeAt;
    devices.persist(row);
    return secret;
  }

  /** Shuts one out; its next request is that of nobody. */
  @Transactional
  void shutOut(String id) {
    SharedDeviceRow row = own(id);
    row.endedAt = clock.instant();
  }

  /** Lets one go on that has asked for an administrator. */
  @Transactional
  void letGoOn(String id) {
    own(id).wrongCodes = 0;
  }

  /** Whether it asks for an administrator before it does anything more. */
  boolean isStopped(UUID id) {
    return QuarkusTransaction.requiringNew().call(() -> devices.findById(id).isStopped());
  }

  private SharedDeviceRow own(String id) {
    SharedDeviceRow row = devices.getOpen(id);
    visitor.refuseOutsideOwn(Action.LET_DEVICES, row.churchId);
    return row;
  }

  private static Visitor used(SharedDeviceRow row, Instant now) {
    if (row.usedAt.plus(NOTED_EVERY).isBefore(now)) {
      row.usedAt = now;
    }
    return new Visitor.Device(row.id, row.name, row.churchId, "");
  }
}
