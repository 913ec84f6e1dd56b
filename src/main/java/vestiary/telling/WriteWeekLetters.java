package vestiary.telling;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import vestiary.cluster.Cluster;
import vestiary.cluster.ReadCluster;
import vestiary.mail.LetterKind;
import vestiary.mail.MailServer;
import vestiary.movement.ReadDriving;
import vestiary.people.FindPeople;
import vestiary.people.Person;
import vestiary.plan.ReadMovements;
import vestiary.planning.CheckClashes;
import vestiary.problem.RaceLost;
import vestiary.schedule.DatedMass;
import vestiary.users.MailReaders;

/**
 * Writes, once a week, to each sacristan what is to be set out and to everybody who is named at a
 * Mass what is theirs: of the seven days after the one on which the letters leave. Who wants none
 * gets none, and whom nothing concerns neither.
 */
@ApplicationScoped
class WriteWeekLetters {

  static final int DAYS = 7;

  /** Later they would speak of days that are over. */
  private static final Duration NOT_AFTER = Duration.ofDays(1);

  private final MailServer mail;
  private final SettleTelling settings;
  private final WeekToldRows told;
  private final ReadCluster cluster;
  private final CheckClashes check;
  private final ReadMovements movements;
  private final ReadDriving driving;
  private final MailReaders readers;
  private final KeepToldSacristies sacristies;
  private final FindPeople people;
  private final ChooseLetters choices;
  private final PostLetter post;
  private final Clock clock;

  WriteWeekLetters(
      MailServer mail,
      SettleTelling settings,
      WeekToldRows told,
      ReadCluster cluster,
      CheckClashes check,
      ReadMovements movements,
      ReadDriving driving,
      MailReaders readers,
      KeepToldSacristies sacristies,
      FindPeople people,
      ChooseLetters choices,
      PostLetter post,
      Clock clock) {
    this.mail = mail;
    this.settings = settings;
    this.told = told;
    this.cluster = cluster;
    this.check = check;
    this.movements = movements;
    this.driving = driving;
    this.readers = readers;
    this.sacristies = sacristies;
    this.people = people;
    this.choices = choices;
    this.post = post;
    this.clock = clock;
  }

  /** Looks in the present cluster whether the hour has come, and writes if it has. */
  void look() {
    if (!mail.isOn()) {
      return;
    }
    try {
      QuarkusTransaction.requiringNew().run(this::write);
    } catch (RuntimeException failure) {
      if (!RaceLost.isBehind(failure)) {
        throw failure;
      }
    }
  }

  private void write() {
    Cluster here = cluster.cluster();
    ZonedDateTime now = ZonedDateTime.now(clock.withZone(here.zone()));
    ZonedDateTime due = settings.read().lastDue(now);
    LocalDate day = due.toLocalDate();
    if (due.plus(NOT_AFTER).isAfter(now) && told.isFirst(day)) {
      LocalDate first = day.plusDays(1);
      LocalDate last = day.plusDays(DAYS);
      WeekSeen week = new WeekSeen(check.load(first, last), movements.between(first, last).trips());
      KeepToldSacristies.Seen seen = sacristies.see(day);
      Map<UUID, LetterWish> wishes = choices.all();
      readers.sacristans().stream()
          .filter(one -> wish(wishes, one.reader()).week())
          .forEach(one -> toSacristan(one, week, seen, tongue(wishes, one.reader(), here)));
      named(week).stream()
          .filter(one -> wish(wishes, one.id()).week())
          .filter(one -> readers.find(one.id()).isPresent())
          .forEach(one -> toPerson(one, week, tongue(wishes, one.id(), here)));
      sacristies.keep(seen);
    }
  }

  /** Everybody of the schedule whom something of the week may concern. */
  private Set<Person> named(WeekSeen week) {
    Set<Person> named = new LinkedHashSet<>();
    for (DatedMass mass : week.span().asked()) {
      named.addAll(mass.people());
      mass.serving().forEach(one -> named.add(one.person()));
    }
    if (!week.trips().isEmpty()) {
      named.addAll(people.all());
    }
    return named;
  }

  /** What cannot stand in the days of the letter, by the sacristan's own churches. */
  private static Map<UUID, List<ChurchWeek.Trouble>> troubles(
      MailReaders.Sacristan one, WeekSeen week, KeepToldSacristies.Seen now) {
    Instant first = week.first().atStartOfDay(week.zone()).toInstant();
    return now.churches().entrySet().stream()
        .filter(church -> one.churches().contains(church.getKey()))
        .collect(
            Collectors.toMap(
                Map.Entry::getKey,
                church ->
                    church.getValue().troubles().stream()
                        .filter(trouble -> !trouble.starts().isBefore(first))
                        .toList()));
  }

  private void toSacristan(
      MailReaders.Sacristan one, WeekSeen week, KeepToldSacristies.Seen now, Tongue tongue) {
    SacristanWeek said = new SacristanWeek(week, tongue, troubles(one, week, now));
    List<LetterView.Section> sections = said.sections();
    if (!sections.isEmpty()) {
      post.post(
          new PostLetter.Draft(
              one.reader(),
              LetterKind.WEEK,
              once("to-set-out", one.reader(), week),
              one.name(),
              tongue.say("week.sacristan.subject", span(week, tongue)),
              said.lead(),
              sections,
              PostLetter.Way.ofSacristan(week, said.troubles() > 0)),
          tongue);
    }
  }

  private void toPerson(Person person, WeekSeen week, Tongue tongue) {
    PersonWeek said =
        new PersonWeek(week, tongue, person, driving.trips(person.id(), week.first(), week.last()));
    List<LetterView.Section> sections = said.sections();
    if (!sections.isEmpty()) {
      post.post(
          new PostLetter.Draft(
              person.id(),
              LetterKind.WEEK,
              once("own", person.id(), week),
              "",
              tongue.say("week.person.subject", span(week, tongue)),
              said.lead(),
              sections,
              List.of(PostLetter.Way.MINE)),
          tongue);
    }
  }

  private static String span(WeekSeen week, Tongue tongue) {
    return tongue.span(week.first(), week.last());
  }

  private static String once(String what, UUID reader, WeekSeen week) {
    return "week %s %s %s".formatted(week.first(), what, reader);
  }

  private static LetterWish wish(Map<UUID, LetterWish> wishes, UUID reader) {
    return wishes.getOrDefault(reader, LetterWish.USUAL);
  }

  private static Tongue tongue(Map<UUID, LetterWish> wishes, UUID reader, Cluster here) {
    return ChooseLetters.tongue(wish(wishes, reader), here);
  }
}
