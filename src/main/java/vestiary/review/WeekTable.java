package vestiary.review;

import static vestiary.web.Speech.say;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import vestiary.calendar.Term;
import vestiary.planning.Clash;
import vestiary.planning.ClashSeverity;
import vestiary.web.ClashMark;
import vestiary.web.DayWords;
import vestiary.web.Link;
import vestiary.web.Speech;

/** Sets out a week church by church, as it is or as it was signed. */
final class WeekTable {

  private static final int LETTERS_OF_WEEKDAY = 3;

  private final WeekSeen week;
  private final Reader reader;
  private final boolean isNow;

  /**
   * @param isNow whether links lead to its Masses, which may be gone otherwise
   */
  WeekTable(WeekSeen week, Reader reader, boolean isNow) {
    this.week = week;
    this.reader = reader;
    this.isNow = isNow;
  }

  List<ReviewView.Church> churches() {
    Map<String, List<MassSeen>> byChurch =
        week.masses().stream()
            .collect(
                Collectors.groupingBy(MassSeen::church, LinkedHashMap::new, Collectors.toList()));
    return byChurch.entrySet().stream()
        .map(
            church ->
                new ReviewView.Church(
                    church.getKey(), church.getValue().stream().map(this::mass).toList()))
        .toList();
  }

  /**
   * What stands in the way, by number from 1.
   *
   * @param there clashes that there are now and links may lead to; none of a week as it was signed
   */
  List<ReviewView.Note> notes(List<Clash> there) {
    return IntStream.range(0, week.clashes().size())
        .mapToObj(at -> note(at + 1, week.clashes().get(at), there))
        .toList();
  }

  private static ReviewView.Note note(int number, ClashSeen seen, List<Clash> there) {
    Optional<Clash> now = there.stream().filter(one -> one.id().equals(seen.id())).findFirst();
    return new ReviewView.Note(
        number,
        mark(seen),
        seen.about(),
        seen.title() + ".",
        now.map(one -> new Link(say("See why"), one.address())).orElse(Link.NONE),
        now.map(Clash::mends).orElse(Link.NONE));
  }

  private ReviewView.Mass mass(MassSeen mass) {
    return new ReviewView.Mass(
        day(mass.start()),
        mass.redLetter(),
        "%02d:%02d".formatted(mass.start().getHour(), mass.start().getMinute()),
        isNow ? "/masses/" + mass.id() : "",
        DayWords.ribbon(mass.colour()),
        mass.what(),
        mass.celebrants().stream()
            .map(reader::called)
            .findFirst()
            .orElse(mass.bishop() ? say("a bishop") : say("no celebrant")),
        mass.company(),
        reader.serving(mass),
        Speech.list(mass.vestments()),
        mass.journeys(),
        marks(mass));
  }

  private static String day(LocalDateTime start) {
    return Speech.weekday(start.toLocalDate()).substring(0, LETTERS_OF_WEEKDAY)
        + " "
        + start.getDayOfMonth();
  }

  private List<ReviewView.Mark> marks(MassSeen mass) {
    List<ReviewView.Mark> marks = new ArrayList<>();
    for (int at = 0; at < week.clashes().size(); at++) {
      if (week.clashes().get(at).masses().contains(mass.id())) {
        marks.add(new ReviewView.Mark(mark(week.clashes().get(at)), at + 1));
      }
    }
    return marks;
  }

  /** The lozenge of its severity. */
  private static ClashMark mark(ClashSeen clash) {
    return Term.find(ClashSeverity.class, clash.severity()).orElseThrow().mark();
  }
}
