package vestiary.ordo;

import static vestiary.web.Speech.say;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import vestiary.calendar.Celebration;
import vestiary.calendar.Colour;
import vestiary.calendar.Day;
import vestiary.web.Speech;

/** What stands before the months: the movable days, the holy days, and each church's own. */
final class OrdoFront {

  /**
   * The days that hang on Advent and Easter, in the order of the year. Two ids of one celebration
   * are its date and its Sunday.
   */
  private static final List<List<String>> MOVABLE =
      List.of(
          List.of("first-sunday-of-advent"),
          List.of("holy-family"),
          List.of("epiphany", "epiphany-sunday"),
          List.of("baptism-of-the-lord"),
          List.of("ash-wednesday"),
          List.of("palm-sunday"),
          List.of("easter-sunday"),
          List.of("ascension-thursday", "ascension-sunday"),
          List.of("pentecost"),
          List.of("trinity-sunday"),
          List.of("corpus-christi-thursday", "corpus-christi-sunday"),
          List.of("sacred-heart"),
          List.of("christ-the-king"));

  private final Ordo ordo;
  private final OrdoNames names;

  OrdoFront(Ordo ordo) {
    this.ordo = ordo;
    this.names = new OrdoNames(ordo.locale());
  }

  List<OrdoView.Dated> movable() {
    return MOVABLE.stream()
        .flatMap(ids -> ordo.days().findFirst(ids).stream())
        .map(day -> dated(day.date(), day.kept()))
        .toList();
  }

  /** Sundays oblige as well and are not said again. */
  List<OrdoView.Dated> holy() {
    return ordo.days().all().stream()
        .filter(d -> d.obligation() && d.date().getDayOfWeek() != DayOfWeek.SUNDAY)
        .map(day -> dated(day.date(), day.kept()))
        .toList();
  }

  /** Source: GIRM 346 f. */
  String rose() {
    List<String> dates =
        ordo.days().all().stream()
            .filter(d -> d.kept().colours().contains(Colour.ROSE))
            .map(d -> Speech.date(d.date()))
            .toList();
    return dates.isEmpty() ? "" : say("Rose may be worn on %s (GIRM 346 f).", Speech.list(dates));
  }

  List<OrdoView.Own> own() {
    return ordo
        .findChurch()
        .map(church -> List.of(own(new Ordo.ChurchDays(church, ordo.days()))))
        .orElseGet(() -> ordo.others().stream().map(this::own).toList())
        .stream()
        .filter(own -> !own.days().isEmpty())
        .toList();
  }

  private OrdoView.Own own(Ordo.ChurchDays church) {
    return new OrdoView.Own(
        OrdoNames.church(church.church()),
        church.days().all().stream()
            .map(Day::date)
            .filter(date -> ordo.isOwn(church.days(), date))
            .map(date -> dated(date, church.days().on(date).kept()))
            .toList());
  }

  private OrdoView.Dated dated(LocalDate date, Celebration celebration) {
    return new OrdoView.Dated(
        OrdoSheet.anchor(date), Speech.day(date), names.named("", celebration));
  }
}
