package vestiary.ordo;

import static vestiary.web.Speech.say;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import vestiary.calendar.Colour;
import vestiary.calendar.Day;
import vestiary.calendar.Omission;
import vestiary.web.Speech;

/** What stands in small type under a day: what was left out or moved, and what else is unusual. */
final class DayNotes {

  private final Ordo ordo;
  private final OrdoNames names;

  DayNotes(Ordo ordo) {
    this.ordo = ordo;
    this.names = new OrdoNames(ordo.locale());
  }

  /** Said of holy days; that Sundays oblige everybody knows. */
  static String duty(Day day) {
    boolean isSunday = day.date().getDayOfWeek() == DayOfWeek.SUNDAY;
    return day.obligation() && !isSunday ? say("Holy day of obligation") : "";
  }

  List<OrdoView.Note> of(Day day) {
    List<OrdoView.Note> notes = new ArrayList<>();
    YearDays days = ordo.days();
    LocalDate date = day.date();
    if (ordo.findChurch().isPresent() && ordo.isOwn(days, date)) {
      notes.add(said(say("Own day of this church.")));
    }
    if (day.kept().colours().contains(Colour.ROSE)) {
      notes.add(said(say("Rose may be worn.")));
    }
    if (days.isEveningKept(date)) {
      notes.add(said(say("The evening is still this day’s.")));
    }
    days.findMovedFrom(date)
        .ifPresent(from -> notes.add(said(say("Moved here from %s.", Speech.date(from)))));
    notes.addAll(absent("", days, day.omitted(), date));
    ordo.others().forEach(o -> notes.addAll(absentThere(o, day)));
    return notes;
  }

  /** What a church would keep of its own on this day, which the others do not know at all. */
  private List<OrdoView.Note> absentThere(Ordo.ChurchDays other, Day plain) {
    List<Omission> own =
        other.days().on(plain.date()).omitted().stream().filter(o -> !stands(o, plain)).toList();
    return absent(OrdoNames.church(other.church()) + ": ", other.days(), own, plain.date());
  }

  private static boolean stands(Omission omission, Day plain) {
    return Stream.concat(
            plain.celebrations().stream().map(c -> c.id()),
            plain.omitted().stream().map(Omission::id))
        .anyMatch(id -> id.equals(omission.id()));
  }

  private List<OrdoView.Note> absent(
      String where, YearDays days, List<Omission> omitted, LocalDate date) {
    List<OrdoView.Note> notes = new ArrayList<>();
    List<OrdoView.Text> left = new ArrayList<>();
    for (Omission omission : omitted) {
      Optional<LocalDate> to = days.findMovedTo(omission, date);
      OrdoView.Text name = names.text(omission.name());
      to.ifPresentOrElse(day -> notes.add(moved(where, day, name)), () -> left.add(name));
    }
    if (!left.isEmpty()) {
      notes.add(new OrdoView.Note(words(where, say("left out:")), left));
    }
    return notes;
  }

  private static OrdoView.Note moved(String where, LocalDate to, OrdoView.Text name) {
    return new OrdoView.Note(words(where, say("moved to %s:", Speech.date(to))), List.of(name));
  }

  private static String words(String where, String words) {
    return where.isEmpty() ? Speech.sentence(words) : where + words;
  }

  private static OrdoView.Note said(String sentence) {
    return new OrdoView.Note(sentence, List.of());
  }
}
