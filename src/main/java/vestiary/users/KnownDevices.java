package vestiary.users;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import vestiary.access.CurrentCluster;
import vestiary.access.Secret;

/**
 * Browsers that people came in by before, each told by a cookie. A known one lets nobody in; what
 * is tried with it is only counted apart. One browser may be known to several people.
 */
@ApplicationScoped
class KnownDevices {

  static final Duration KNOWN_FOR = Duration.ofDays(365);

  private final DeviceRows devices;
  private final CurrentCluster current;
  private final Clock clock;

  KnownDevices(DeviceRows devices, CurrentCluster current, Clock clock) {
    this.devices = devices;
    this.current = current;
    this.clock = clock;
  }

  /**
   * Its fingerprint if that user came in by it before; empty otherwise. To be asked within a
   * transaction.
   */
  String fingerprint(String cookie, UUID user) {
    return find(cookie)
        .flatMap(secret -> devices.findOf(user, secret.fingerprint()))
        .filter(row -> row.endsAt.isAfter(clock.instant()))
        .map(row -> row.fingerprint)
        .orElse("");
  }

  /** Knows it from now on; answers what its cookie is to be. To be asked within a transaction. */
  Secret remember(String cookie, UUID user) {
    Instant now = clock.instant();
    devices.forgetEnded(now);
    // One that we did not give may have been planted.
    Secret device =
        find(cookie)
            .filter(secret -> devices.isKnown(secret.fingerprint()))
            .orElseGet(() -> Secret.fresh(current.id()));
    DeviceRow row = devices.findOf(user, device.fingerprint()).orElseGet(() -> fresh(user, device));
    row.endsAt = now.plus(KNOWN_FOR);
    devices.persist(row);
    return device;
  }

  private static DeviceRow fresh(UUID user, Secret device) {
    DeviceRow row = new DeviceRow();
    row.userId = user;
    row.fingerprint = device.fingerprint();
    return row;
  }

  private Optional<Secret> find(String cookie) {
    return Secret.parse(cookie).filter(secret -> secret.cluster().equals(current.id()));
  }
}
