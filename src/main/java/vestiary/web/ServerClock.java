package vestiary.web;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Produces;
import java.time.Clock;

/** Where the server reads the time; tests put a fixed one in its place. */
@ApplicationScoped
class ServerClock {

  @Produces
  @ApplicationScoped
  Clock clock() {
    return Clock.systemUTC();
  }
}
