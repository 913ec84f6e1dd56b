package vestiary.schedule;

import static java.util.Map.entry;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import vestiary.calendar.Season;
import vestiary.calendar.Term;
import vestiary.pattern.LiturgicalDays;
import vestiary.pattern.SchoolTime;
import vestiary.web.English;

/**
 * A pattern in plain words: "Sundays at 10:30", "first Fridays of the month at 19:00, not in …".
 */
final class PatternWords {

  private static final Map<LiturgicalDays, String> DAYS =
      Map.ofEntries(
          entry(LiturgicalDays.HOLY_DAYS, "holy days of obligation"),
          entry(LiturgicalDays.HOLY_DAY_EVES, "evenings before holy days of obligation"),
          entry(LiturgicalDays.SUNDAYS_AND_HOLY_DAYS, "Sundays and holy days of obligation"),
          entry(LiturgicalDays.SOLEMNITIES, "solemnities"),
          entry(LiturgicalDays.ASH_WEDNESDAY, "Ash Wednesday"),
          entry(LiturgicalDays.ALL_SOULS, "All Souls' Day"));

  private static final Map<Season, String> SEASONS =
      Map.ofEntries(
          entry(Season.ADVENT, "Advent"),
          entry(Season.CHRISTMAS, "Christmas Time"),
          entry(Season.ORDINARY, "Ordinary Time"),
          entry(Season.LENT, "Lent"),
          entry(Season.TRIDUUM, "the Triduum"),
          entry(Season.EASTER, "Easter Time"));

  private static final Map<SchoolTime, String> SCHOOL =
      Map.ofEntries(
          entry(SchoolTime.ALWAYS, "in terms and holidays alike"),
          entry(SchoolTime.IN_TERM, "in school terms only"),
          entry(SchoolTime.IN_HOLIDAYS, "outside school terms only"));

  private PatternWords() {}

  /** For example "Sundays at 10:30, not in the Triduum, until 31 December 2027"; no full stop. */
  static String of(PatternRow row, LocalDate today) {
    List<String> words = new ArrayList<>();
    words.add(English.sentence("%s at %s".formatted(days(row), row.at)));
    words.addAll(limits(row));
    if (row.starts.isAfter(today)) {
      words.add("from " + English.dateAndYear(row.starts));
    }
    if (row.ends != null) {
      words.add("until " + English.dateAndYear(row.ends));
    }
    return String.join(", ", words);
  }

  static String of(LiturgicalDays days) {
    return DAYS.get(days);
  }

  static String of(Season season) {
    return SEASONS.get(season);
  }

  static String of(SchoolTime school) {
    return SCHOOL.get(school);
  }

  private static String days(PatternRow row) {
    return Term.find(LiturgicalDays.class, row.days)
        .map(DAYS::get)
        .orElseGet(
            () ->
                RuleWords.find(row.rrule).map(RuleWords::words).orElse("by the rule " + row.rrule));
  }

  private static List<String> limits(PatternRow row) {
    List<String> words = new ArrayList<>();
    if (row.seasons.length > 0) {
      words.add("in " + English.list(seasons(row).map(SEASONS::get).toList()));
    }
    if (row.months.length > 0) {
      words.add(months(Arrays.asList(row.months)));
    }
    if (!row.school.equals(SchoolTime.ALWAYS.id())) {
      words.add(SCHOOL.get(Term.find(SchoolTime.class, row.school).orElseThrow()));
    }
    if (row.notInTriduum) {
      words.add("not in the Triduum");
    }
    if (row.notOnHolyDays) {
      words.add("not on holy days");
    }
    if (row.except.length > 0) {
      words.add("not on " + English.list(except(row)));
    }
    return words;
  }

  /** Whichever is shorter: the months it has, or those it has not. */
  private static String months(List<Integer> months) {
    List<Integer> others =
        Stream.iterate(1, m -> m + 1).limit(12).filter(m -> !months.contains(m)).toList();
    boolean shorter = !others.isEmpty() && others.size() < months.size();
    List<String> names = (shorter ? others : months).stream().map(RuleWords::month).toList();
    return (shorter ? "not in " : "in ") + English.list(names);
  }

  private static Stream<Season> seasons(PatternRow row) {
    return Stream.of(row.seasons).map(id -> Term.find(Season.class, id).orElseThrow());
  }

  private static List<String> except(PatternRow row) {
    return Stream.of(row.except).map(English::dateAndYear).toList();
  }
}
