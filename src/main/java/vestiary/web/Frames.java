package vestiary.web;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.ZonedDateTime;
import java.util.List;

/** Makes what stands round a page. It reads the database, so it is of no use while that is away. */
@ApplicationScoped
public class Frames {

  private final FrameFacts facts;
  private final Clock clock;

  Frames(FrameFacts facts, Clock clock) {
    this.facts = facts;
    this.clock = clock;
  }

  /**
   * The frame of a page; one without links while the cluster is not set up.
   *
   * @param section as {@link Frame} lists them
   * @param address of the page itself
   */
  public Frame of(String section, String address) {
    FrameFacts.Facts known = facts.read();
    if (known.cluster().isEmpty()) {
      return Frame.empty();
    }
    return new Frame(
        known.cluster(),
        English.count(known.churches(), "church"),
        section,
        List.of(),
        known.demo(),
        printed(ZonedDateTime.now(clock.withZone(known.zone()))),
        address,
        known.visitor(),
        known.overseer());
  }

  private static String printed(ZonedDateTime now) {
    return "Printed on %s at %s."
        .formatted(English.dateAndYear(now.toLocalDate()), English.clock(now));
  }
}
