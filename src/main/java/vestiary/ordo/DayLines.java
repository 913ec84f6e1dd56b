package vestiary.ordo;

import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import vestiary.calendar.Celebration;
import vestiary.calendar.Day;
import vestiary.cluster.Church;

/**
 * What is printed for one day: a line for each celebration that is kept or may be chosen, for what
 * single churches keep, and for an evening that is not as usual.
 */
final class DayLines {

  private static final String EVENING = word("evening:");

  private final Ordo ordo;
  private final OrdoNames names;

  DayLines(Ordo ordo) {
    this.ordo = ordo;
    this.names = new OrdoNames(ordo.locale());
  }

  /** All of them, in the order in which they are printed. */
  List<OrdoView.Line> of(Day day) {
    List<OrdoView.Line> lines = new ArrayList<>();
    lines.add(kept(day));
    lines.addAll(others(day));
    lines.addAll(own(day.date()));
    lines.addAll(eves(day.date()));
    return lines;
  }

  OrdoView.Line kept(Day day) {
    return line("", day.kept(), names.onItsDay("", day.kept(), day));
  }

  List<OrdoView.Line> others(Day day) {
    return day.celebrations().stream().skip(1).map(this::other).toList();
  }

  /** The evening where it is not as usual, for all and for single churches. */
  List<OrdoView.Line> eves(LocalDate date) {
    Optional<Celebration> usual = ordo.days().findEve(date);
    List<OrdoView.Line> eves = new ArrayList<>();
    usual.ifPresent(eve -> eves.add(line("", eve, names.named(say(EVENING), eve))));
    eves.addAll(ownEves(date, usual));
    return eves;
  }

  private OrdoView.Line other(Celebration celebration) {
    return line("", celebration, names.named(lead(celebration), celebration));
  }

  /** A commemoration is made within the Mass; the Masses of Holy Thursday are all said. */
  private static String lead(Celebration other) {
    return switch (other.rank()) {
      case COMMEMORATION -> say("commemoration:");
      case FERIA -> say("and");
      default -> say("or");
    };
  }

  private List<OrdoView.Line> own(LocalDate date) {
    Map<Celebration, List<Church>> kept = new LinkedHashMap<>();
    ordo.own(date).forEach(own -> note(kept, own.day().kept(), own.church()));
    return lines("", kept);
  }

  private List<OrdoView.Line> ownEves(LocalDate date, Optional<Celebration> usual) {
    Map<Celebration, List<Church>> begun = new LinkedHashMap<>();
    for (Ordo.ChurchDays other : ordo.others()) {
      other
          .days()
          .findEve(date)
          .filter(eve -> usual.isEmpty() || !eve.isKeptLike(usual.get()))
          .ifPresent(eve -> note(begun, eve, other.church()));
    }
    return lines(say(EVENING), begun);
  }

  private List<OrdoView.Line> lines(String lead, Map<Celebration, List<Church>> celebrated) {
    return celebrated.entrySet().stream()
        .map(e -> line(churches(e.getValue()), e.getKey(), names.named(lead, e.getKey())))
        .toList();
  }

  private static OrdoView.Line line(String church, Celebration celebration, OrdoView.Named name) {
    return new OrdoView.Line(church, OrdoNames.ribbons(celebration), name);
  }

  private static String churches(List<Church> churches) {
    return churches.stream().map(OrdoNames::church).collect(Collectors.joining("; "));
  }

  private static void note(
      Map<Celebration, List<Church>> churches, Celebration celebration, Church church) {
    churches.computeIfAbsent(celebration, c -> new ArrayList<>()).add(church);
  }
}
