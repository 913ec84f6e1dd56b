package vestiary.absence;

import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import vestiary.cluster.ReadCluster;
import vestiary.people.Absence;
import vestiary.people.AbsenceWords;
import vestiary.people.Person;
import vestiary.people.ReadAbsences;
import vestiary.web.Entries;
import vestiary.web.Frames;
import vestiary.web.Link;
import vestiary.web.Speech;

/** Sets out when one person is away, and what was just entered. */
@ApplicationScoped
@Transactional
class PersonAbsencesSheet {

  private static final List<Link> OWN_TURN =
      List.of(
          new Link(word("What concerns you"), "/mine"), new Link(word("Who is away"), "/absences"));

  private final ReadAbsences absences;
  private final WhatItTouches touches;
  private final ReadCluster cluster;
  private final Frames frames;
  private final Clock clock;

  PersonAbsencesSheet(
      ReadAbsences absences,
      WhatItTouches touches,
      ReadCluster cluster,
      Frames frames,
      Clock clock) {
    this.absences = absences;
    this.touches = touches;
    this.cluster = cluster;
    this.frames = frames;
    this.clock = clock;
  }

  /**
   * What stands over the forms.
   *
   * @param entered id of what was just entered; empty otherwise
   * @param done what else was just done; may be empty
   * @param problem what is wrong; may be empty
   */
  record Note(String entered, String done, String problem) {}

  /** The page of whoever keeps people. */
  PersonAbsencesView of(Person person, Note note, Entries typed) {
    String page = "/people/" + person.slug();
    return view(
        person,
        page + "/absences",
        note,
        typed,
        List.of(new Link(person.name(), page), new Link(say("Who is away"), "/absences")),
        false);
  }

  /** The page of the person. */
  PersonAbsencesView own(Person person, Note note, Entries typed) {
    return view(
        person, "/mine/absences", note, typed, OWN_TURN.stream().map(Link::said).toList(), true);
  }

  private PersonAbsencesView view(
      Person person, String action, Note note, Entries typed, List<Link> turn, boolean own) {
    ZoneId zone = cluster.cluster().zone();
    List<Absence> coming = absences.of(person.id(), clock.instant());
    Map<UUID, String> reasons = absences.reasons(coming);
    List<Absence> entered =
        coming.stream().filter(one -> one.id().toString().equals(note.entered())).toList();
    return new PersonAbsencesView(
        frames.of(own ? "mine" : "settings", action),
        person.inWords(),
        own,
        entered.stream().findFirst().map(one -> kept(person, one, zone)).orElse(note.done()),
        entered.isEmpty() ? "" : "%s/%s/removal".formatted(action, note.entered()),
        entered.stream().map(one -> touching(person, one, zone)).toList(),
        note.problem(),
        coming.stream().map(one -> spell(one, reasons, action, zone)).toList(),
        action,
        new PersonAbsencesView.Form(
            typed.field("from"),
            typed.field("fromTime"),
            typed.field("to"),
            typed.field("toTime"),
            typed.field("reason"),
            typed.field("until")),
        turn);
  }

  private static String kept(Person person, Absence one, ZoneId zone) {
    return say("Kept: %s is not available %s.", person.inWords(), AbsenceWords.span(one, zone));
  }

  private PersonAbsencesView.Touching touching(Person person, Absence one, ZoneId zone) {
    TouchedWords words = new TouchedWords(person, touches.by(one), zone);
    return new PersonAbsencesView.Touching(
        words.sentence(), words.nobodyLeft(), words.masses(), words.standIn());
  }

  private PersonAbsencesView.Spell spell(
      Absence one, Map<UUID, String> reasons, String action, ZoneId zone) {
    Instant now = clock.instant();
    return new PersonAbsencesView.Spell(
        Speech.sentence(AbsenceWords.span(one, zone)),
        reasons.getOrDefault(one.id(), ""),
        "%s/%s/end".formatted(action, one.id()),
        one.from().isBefore(now) ? say("Back now") : say("Strike it out"));
  }
}
