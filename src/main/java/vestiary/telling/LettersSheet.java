package vestiary.telling;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import vestiary.cluster.ReadCluster;
import vestiary.mail.KeptLetter;
import vestiary.mail.KeptLetters;
import vestiary.mail.LetterState;
import vestiary.mail.MailServer;
import vestiary.people.FindPeople;
import vestiary.people.Person;
import vestiary.users.MailReaders;
import vestiary.web.Choice;
import vestiary.web.Entries;
import vestiary.web.Frames;
import vestiary.web.Speech;

/** Says in words how it stands with the letters. */
@ApplicationScoped
class LettersSheet {

  private static final int SENT_SHOWN = 20;
  private static final Duration OF_LATE = Duration.ofDays(7);

  private final KeptLetters letters;
  private final MailServer server;
  private final FindPeople people;
  private final MailReaders readers;
  private final ReadCluster cluster;
  private final Frames frames;
  private final Clock clock;

  LettersSheet(
      KeptLetters letters,
      MailServer server,
      FindPeople people,
      MailReaders readers,
      ReadCluster cluster,
      Frames frames,
      Clock clock) {
    this.letters = letters;
    this.server = server;
    this.people = people;
    this.readers = readers;
    this.cluster = cluster;
    this.frames = frames;
    this.clock = clock;
  }

  @Transactional
  LettersView view(Entries settings, String done, String problem) {
    ZoneId zone = cluster.cluster().zone();
    Map<UUID, Person> persons = people.byId();
    Map<UUID, String> users = readers.names();
    List<KeptLetter> unsent = letters.unsent();
    long sent = letters.countSentSince(clock.instant().minus(OF_LATE));
    return new LettersView(
        frames.of("settings", "/letters"),
        done,
        problem,
        lead(unsent),
        unsent.stream()
            .map(
                one ->
                    new LettersView.Unsent(
                        name(one.reader(), persons, users),
                        one.kind().words(),
                        one.state() != LetterState.WAITING,
                        sentence(one, zone),
                        "/letters/" + one.id()))
            .toList(),
        say("%s left in the last seven days.", Speech.sentence(Speech.count((int) sent, "letter"))),
        letters.sent(SENT_SHOWN).stream()
            .map(
                one ->
                    "%s: %s, %s"
                        .formatted(
                            moment(one.endedAt().get(0), zone),
                            name(one.reader(), persons, users),
                            one.kind().words()))
            .toList(),
        settings.choice(
            "weekday",
            Stream.of(DayOfWeek.values())
                .map(
                    day ->
                        new Choice.Option(
                            String.valueOf(day.getValue()),
                            Speech.sentence(Speech.weekday(LocalDate.EPOCH.with(day))),
                            false))),
        settings.field("hour"),
        settings.field("officeDays"),
        settings.isTicked("namesPublic"));
  }

  private String lead(List<KeptLetter> unsent) {
    if (!server.isOn()) {
      return say(
          "No mail server is named, so nothing is mailed. Whoever keeps the server names one by QUARKUS_MAILER_HOST.");
    }
    int stuck = (int) unsent.stream().filter(one -> one.state() != LetterState.WAITING).count();
    int waiting = unsent.size() - stuck;
    List<String> parts = new ArrayList<>();
    if (stuck > 0) {
      parts.add(say("%s could not be delivered", Speech.count(stuck, "letter")));
    }
    if (waiting > 0) {
      parts.add(
          say(
              "%s %s to be sent",
              Speech.count(waiting, "letter"), waiting == 1 ? say("waits") : say("wait")));
    }
    return parts.isEmpty()
        ? say("Nothing waits: every letter has left.")
        : Speech.sentence(Speech.list(parts)) + ".";
  }

  private static String name(UUID reader, Map<UUID, Person> persons, Map<UUID, String> users) {
    return Optional.ofNullable(persons.get(reader))
        .map(Person::calledName)
        .or(() -> Optional.ofNullable(users.get(reader)))
        .orElse(say("somebody who is gone"));
  }

  private static String sentence(KeptLetter one, ZoneId zone) {
    String said = one.answer().isEmpty() ? "" : say(" It said: “%s”.", Speech.say(one.answer()));
    return switch (one.state()) {
      case REFUSED ->
          one.tries() > 0 && one.answer().startsWith("No mail address")
              ? say(
                  "No mail address is kept for them, so it was not sent. Enter one, then try again.")
              : say(
                  "The mail server does not take letters for this address, so it is not tried again.%s Correct the address, then try again.",
                  said);
      case GIVEN_UP ->
          say(
              "It was tried for five days in vain.%s Once the mail server is there, try again.",
              said);
      default -> waiting(one, said, zone);
    };
  }

  private static String waiting(KeptLetter one, String said, ZoneId zone) {
    if (one.tries() == 0) {
      return say("Written %s; it leaves within a minute.", moment(one.madeAt(), zone));
    }
    return say(
        "Tried %s; the mail server was not there, or asks for patience. The next try is on %s.%s",
        Speech.count(one.tries(), "time"), moment(one.nextAt(), zone), said);
  }

  private static String moment(Instant moment, ZoneId zone) {
    ZonedDateTime local = moment.atZone(zone);
    return "%s, %s".formatted(Speech.day(local.toLocalDate()), Speech.clock(local));
  }
}
