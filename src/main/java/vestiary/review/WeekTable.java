package vestiary.review;

import static vestiary.web.Speech.say;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import vestiary.calendar.Term;
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
   * @param isNow whether links lead to its Masses and clashes, which may be gone otherwise
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

  List<ReviewView.Note> notes() {
    return IntStream.range(0, week.clashes().size())
        .mapToObj(
            at -> {
              ClashSeen clash = week.clashes().get(at);
              return new ReviewView.Note(
                  at + 1, mark(clash), clash.about(), clash.title() + ".", link(clash));
            })
        .toList();
  }

  private Link link(ClashSeen clash) {
    return isNow
        ? clash.masses().stream()
            .flatMap(id -> week.masses().stream().filter(mass -> mass.id().equals(id)))
            .findFirst()
            .map(mass -> address(clash, mass))
            .orElse(Link.NONE)
        : Link.NONE;
  }

  private static Link address(ClashSeen clash, MassSeen mass) {
    return new Link(
        say("See why"), "/clashes/%s/%s".formatted(mass.start().toLocalDate(), clash.id()));
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
