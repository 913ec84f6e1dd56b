package vestiary;

import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Alternative;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;

/** For tests it is always noon (UTC) on Monday 30 November 2026, the scenario's first day. */
@ApplicationScoped
class FixedClock {

  private static final Instant NOW = Instant.parse("2026-11-30T12:00:00Z");

  @Produces
  @Singleton
  @Alternative
  @Priority(1)
  Clock clock() {
    return Clock.fixed(NOW, ZoneOffset.UTC);
  }
}
