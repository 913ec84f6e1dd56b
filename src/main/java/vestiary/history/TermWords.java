package vestiary.history;

import static java.util.Map.entry;
import static vestiary.web.Speech.word;

import java.time.DayOfWeek;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import vestiary.calendar.MassKind;
import vestiary.calendar.Season;
import vestiary.calendar.Term;
import vestiary.pattern.LiturgicalDays;
import vestiary.pattern.SchoolTime;
import vestiary.planning.StepWords;
import vestiary.pool.CareKind;
import vestiary.pool.PieceWords;
import vestiary.schedule.MassKindWords;
import vestiary.schedule.PatternWords;
import vestiary.schedule.ServesAs;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Step;
import vestiary.web.Speech;

/**
 * What is kept as a term, an id of the calendar or a number, as its reader would say it.
 *
 * @param celebrations names of celebrations by their ids in the calendar
 */
record TermWords(Function<String, Optional<String>> celebrations) {

  /** Where a term alone would not be understood. */
  private static final Map<String, String> VALUES =
      Map.ofEntries(
          entry("closing", word("a church was closed")),
          entry("opening", word("a church was opened again")),
          entry("goods", word("goods were handed over")),
          entry("merging", word("a parish was merged into another")),
          entry("merged", word("clusters were merged")),
          entry("split-off", word("a part was split off")),
          entry("split-from", word("was split off from another")),
          entry("declined", word("declined")),
          entry("withdrawn", word("withdrawn")),
          entry("refused", word("refused")),
          entry("open", word("open")),
          entry("planned", word("planned")),
          entry("elsewhere", word("elsewhere")),
          entry("own", word("his own")),
          entry("nothing", word("none of his own")),
          entry("rector", word("rector of the church")),
          entry("precept", word("the day that obliges comes first")),
          entry("rank", word("the higher in rank comes first")),
          entry("liturgical", word("the liturgical day")),
          entry("sunday", word("Sunday")),
          entry("thursday", word("Thursday")),
          entry("before", word("the Sunday before")),
          entry("after", word("the Sunday after")),
          entry("nearest", word("the nearest Sunday")),
          entry("date", word("6 January")));

  /** The term itself where there are no other words for it. */
  String say(String kind, String column, String said) {
    return said.isEmpty()
        ? ""
        : find(kind, column, said).orElseGet(() -> plain(kind, column, said));
  }

  private Optional<String> find(String kind, String column, String said) {
    return switch (column) {
      case "kind" -> findKind(kind, said);
      case "also" -> Term.find(PieceKind.class, said).map(PieceWords::kind);
      case "role" -> findRole(kind, said);
      case "care_kind" -> Term.find(CareKind.class, said).map(CareKind::words);
      case "step" -> Term.find(Step.class, said).map(StepWords::worn);
      case "celebration", "titular" -> celebrations.apply(said);
      case "seasons" -> Term.find(Season.class, said).map(PatternWords::of);
      case "school" -> Term.find(SchoolTime.class, said).map(PatternWords::of);
      case "days" ->
          Term.find(LiturgicalDays.class, said).map(PatternWords::of).or(() -> weekday(said));
      case "weekday" -> number(said).map(DayOfWeek::of).map(TermWords::weekday);
      case "months", "month", "titular_month" -> number(said).map(Month::of).map(TermWords::month);
      case "language", "languages" ->
          Optional.of(said).filter(tag -> !tag.isEmpty()).map(TermWords::language);
      default -> Optional.empty();
    };
  }

  private static Optional<String> findKind(String kind, String said) {
    return kind.equals("mass") || kind.equals("pattern")
        ? Term.find(MassKind.class, said).map(MassKindWords::of)
        : Term.find(PieceKind.class, said)
            .filter(none -> !said.equals("other"))
            .map(PieceWords::kind);
  }

  private static Optional<String> findRole(String kind, String said) {
    return kind.equals("serving")
        ? Term.find(ServesAs.class, said).map(as -> Speech.say(as.noun(1)))
        : Optional.empty();
  }

  private static String plain(String kind, String column, String said) {
    if (!FieldWords.isTerm(kind, column)) {
      return said;
    }
    return VALUES.containsKey(said)
        ? Speech.say(VALUES.get(said))
        : Speech.term(said.replace('-', ' '));
  }

  private static Optional<Integer> number(String said) {
    return said.matches("\\d{1,2}") ? Optional.of(Integer.valueOf(said)) : Optional.empty();
  }

  private static Optional<String> weekday(String said) {
    return Stream.of(DayOfWeek.values())
        .filter(day -> day.name().equalsIgnoreCase(said))
        .map(TermWords::weekday)
        .findFirst();
  }

  private static String weekday(DayOfWeek day) {
    return day.getDisplayName(TextStyle.FULL, locale());
  }

  private static String month(Month month) {
    return month.getDisplayName(TextStyle.FULL_STANDALONE, locale());
  }

  private static String language(String tag) {
    return Locale.forLanguageTag(tag).getDisplayLanguage(locale());
  }

  private static Locale locale() {
    return Speech.localeOr(Locale.ENGLISH);
  }
}
