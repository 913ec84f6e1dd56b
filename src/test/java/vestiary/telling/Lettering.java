package vestiary.telling;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import vestiary.mail.KeptLetters;
import vestiary.mail.Letter;
import vestiary.mail.LetterKind;
import vestiary.mail.Outbox;
import vestiary.mail.Postman;
import vestiary.mail.StopLink;
import vestiary.scenario.Scenario;

/** Letters of a test that wait to be sent. */
@ApplicationScoped
public class Lettering {

  private static final Duration TEN_MINUTES = Duration.ofMinutes(10);

  private final Scenario scenario;
  private final Outbox outbox;
  private final KeptLetters letters;
  private final ChooseLetters choices;
  private final WeekToldRows told;
  private final MassChangeRows changes;
  private final TellChanges tell;
  private final Postman postman;
  private final Clock clock;
  private final KeepToldSacristies sacristies;
  private final SacristyChangeRows seen;

  Lettering(
      Scenario scenario,
      Outbox outbox,
      KeptLetters letters,
      ChooseLetters choices,
      WeekToldRows told,
      MassChangeRows changes,
      TellChanges tell,
      Postman postman,
      Clock clock,
      KeepToldSacristies sacristies,
      SacristyChangeRows seen) {
    this.scenario = scenario;
    this.outbox = outbox;
    this.letters = letters;
    this.choices = choices;
    this.told = told;
    this.changes = changes;
    this.tell = tell;
    this.postman = postman;
    this.clock = clock;
    this.sacristies = sacristies;
    this.seen = seen;
  }

  /** Whatever was changed so far is told to nobody. */
  public void keepSilentOnChanges() {
    scenario.within(scenario.ours(), changes::deleteAll);
  }

  /** As the jobs do when nothing was changed for ten minutes. */
  public void tellChanges() {
    Instant earlier = clock.instant().minus(TEN_MINUTES);
    scenario.within(scenario.ours(), () -> changes.update("at = ?1", earlier));
    scenario.within(scenario.ours(), tell::look);
    scenario.within(scenario.ours(), postman::deliver);
  }

  /**
   * @param letter its id
   * @param link the secret that stops letters of its kind
   */
  public record Traces(String letter, String link) {}

  /** Every table of letters has a row of that reader afterwards. */
  public Traces leaveTraces(UUID reader) {
    Traces[] left = new Traces[1];
    scenario.within(
        scenario.ours(),
        () -> {
          StopLink stop = outbox.stopLink("");
          outbox.enter(
              new Letter(
                  reader,
                  LetterKind.WEEK,
                  "a test " + reader,
                  "en",
                  "Your week",
                  "Words",
                  "<p>Words</p>",
                  stop,
                  Duration.ZERO));
          choices.choose(reader, LetterWish.USUAL);
          told.isFirst(LocalDate.of(2026, 11, 27));
          sacristies.keep(sacristies.see(LocalDate.of(2026, 11, 27)));
          SacristyChangeRow change = new SacristyChangeRow();
          change.id = UUID.randomUUID();
          change.at = Instant.EPOCH;
          seen.persist(change);
          left[0] =
              new Traces(
                  letters.findByLink(stop.fingerprint()).orElseThrow().id().toString(),
                  stop.address());
        });
    return left[0];
  }
}
