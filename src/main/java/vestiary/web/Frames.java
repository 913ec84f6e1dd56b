package vestiary.web;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.ZonedDateTime;
import java.util.List;

/** Makes what stands round a page. It reads the database, so it is of no use while that is away. */
@ApplicationScoped
public class Frames {

  private final FrameFacts facts;
  private final Clock clock;
  private final PageLanguage language;

  Frames(FrameFacts facts, Clock clock, PageLanguage language) {
    this.facts = facts;
    this.clock = clock;
    this.language = language;
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
        Speech.count(known.churches(), "church"),
        section,
        languages(),
        known.demo(),
        printed(ZonedDateTime.now(clock.withZone(known.zone()))),
        address,
        known.visitor(),
        known.overseer());
  }

  private List<Frame.Language> languages() {
    return language.offered().stream()
        .map(
            one ->
                new Frame.Language(
                    one.toLanguageTag(),
                    Speech.sentence(one.getDisplayLanguage(one)),
                    one.equals(language.locale())))
        .toList();
  }

  private static String printed(ZonedDateTime now) {
    return say("Printed on %s at %s.", Speech.dateAndYear(now.toLocalDate()), Speech.clock(now));
  }
}
