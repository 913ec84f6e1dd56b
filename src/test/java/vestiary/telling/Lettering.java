package vestiary.telling;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
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
  private final TellSacristies tellSacristies;
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
      TellSacristies tellSacristies,
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
    this.tellSacristies = tellSacristies;
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
    Instant now = clock.instant();
    tellChanges(now.minus(TEN_MINUTES), now);
  }

  /**
   * As the jobs do at that moment.
   *
   * @param last of the last change; the database times changes by its own clock, which knows
   *     nothing of the scenario's day, and those before it keep their distance
   */
  void tellChanges(Instant last, Instant now) {
    look(changes, last, () -> tell.look(now));
  }

  /** The same of what sacristans are told at once. */
  void tellSacristies(Instant last, Instant now) {
    look(seen, last, () -> tellSacristies.look(now));
  }

  private <C extends Change> void look(ChangeRows<C> changes, Instant last, Runnable look) {
    scenario.within(scenario.ours(), () -> shift(changes, last));
    scenario.within(scenario.ours(), look);
    scenario.within(scenario.ours(), postman::deliver);
  }

  private static <C extends Change> void shift(ChangeRows<C> changes, Instant last) {
    List<C> all = changes.list("order by at desc");
    for (C change : all) {
      Instant at = change.at().minus(Duration.between(last, all.get(0).at()));
      changes.update("at = ?1 where id = ?2", at, change.id());
    }
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
