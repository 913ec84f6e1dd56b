package vestiary.telling;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import vestiary.mail.KeptLetters;
import vestiary.mail.Letter;
import vestiary.mail.LetterKind;
import vestiary.mail.Outbox;
import vestiary.mail.StopLink;
import vestiary.scenario.Scenario;

/** Letters of a test that wait to be sent. */
@ApplicationScoped
public class Lettering {

  private final Scenario scenario;
  private final Outbox outbox;
  private final KeptLetters letters;
  private final ChooseLetters choices;
  private final WeekToldRows told;
  private final KeepToldSacristies sacristies;
  private final SacristyChangeRows changes;

  Lettering(
      Scenario scenario,
      Outbox outbox,
      KeptLetters letters,
      ChooseLetters choices,
      WeekToldRows told,
      KeepToldSacristies sacristies,
      SacristyChangeRows changes) {
    this.changes = changes;
    this.sacristies = sacristies;
    this.scenario = scenario;
    this.outbox = outbox;
    this.letters = letters;
    this.choices = choices;
    this.told = told;
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
          changes.persist(change);
          left[0] =
              new Traces(
                  letters.findByLink(stop.fingerprint()).orElseThrow().id().toString(),
                  stop.address());
        });
    return left[0];
  }
}
