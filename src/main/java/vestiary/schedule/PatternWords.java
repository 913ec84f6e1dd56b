package vestiary.schedule;

import static java.util.Map.entry;
import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

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
import vestiary.web.Speech;

/**
 * A pattern in plain words: "Sundays at 10:30", "first Fridays of the month at 19:00, not in …".
 */
public final class PatternWords {

  private static final Map<LiturgicalDays, String> DAYS =
      Map.ofEntries(
          entry(LiturgicalDays.HOLY_DAYS, word("holy days of obligation")),
          entry(LiturgicalDays.HOLY_DAY_EVES, word("evenings before holy days of obligation")),
          entry(LiturgicalDays.SUNDAYS_AND_HOLY_DAYS, word("Sundays and holy days of obligation")),
          entry(LiturgicalDays.SOLEMNITIES, word("solemnities")),
          entry(LiturgicalDays.ASH_WEDNESDAY, word("Ash Wednesday")),
          entry(LiturgicalDays.ALL_SOULS, word("All Souls' Day")));

  private static final Map<Season, String> SEASONS =
      Map.ofEntries(
          entry(Season.ADVENT, word("Advent")),
          entry(Season.CHRISTMAS, word("Christmas Time")),
          entry(Season.ORDINARY, word("Ordinary Time")),
          entry(Season.LENT, word("Lent")),
          entry(Season.TRIDUUM, word("the Triduum")),
          entry(Season.EASTER, word("Easter Time")));

  private static final Map<SchoolTime, String> SCHOOL =
      Map.ofEntries(
          entry(SchoolTime.ALWAYS, word("in terms and holidays alike")),
          entry(SchoolTime.IN_TERM, word("in school terms only")),
          entry(SchoolTime.IN_HOLIDAYS, word("outside school terms only")));

  private PatternWords() {}

  /** For example "Sundays at 10:30, not in the Triduum, until 31 December 2027"; no full stop. */
  static String of(PatternRow row, LocalDate today) {
    List<String> words = new ArrayList<>();
    words.add(Speech.sentence(days(row) + " " + say("at %s", row.at)));
    words.addAll(limits(row));
    if (row.starts.isAfter(today)) {
      words.add(say("from %1$s", Speech.dateAndYear(row.starts)));
    }
    if (row.ends != null) {
      words.add(say("until %s", Speech.dateAndYear(row.ends)));
    }
    return String.join(", ", words);
  }

  public static String of(LiturgicalDays days) {
    return say(DAYS.get(days));
  }

  public static String of(Season season) {
    return say(SEASONS.get(season));
  }

  public static String of(SchoolTime school) {
    return say(SCHOOL.get(school));
  }

  private static String days(PatternRow row) {
    return Term.find(LiturgicalDays.class, row.days)
        .map(PatternWords::of)
        .orElseGet(
            () ->
                RuleWords.find(row.rrule)
                    .map(RuleWords::words)
                    .orElse(say("by the rule %s", row.rrule)));
  }

  private static List<String> limits(PatternRow row) {
    List<String> words = new ArrayList<>();
    if (row.seasons.length > 0) {
      words.add(say("in %s", Speech.list(seasons(row).map(PatternWords::of).toList())));
    }
    if (row.months.length > 0) {
      words.add(months(Arrays.asList(row.months)));
    }
    if (!row.school.equals(SchoolTime.ALWAYS.id())) {
      words.add(of(Term.find(SchoolTime.class, row.school).orElseThrow()));
    }
    if (row.notInTriduum) {
      words.add(say("not in the Triduum"));
    }
    if (row.notOnHolyDays) {
      words.add(say("not on holy days"));
    }
    if (row.except.length > 0) {
      words.add(say("not on %s", Speech.list(except(row))));
    }
    return words;
  }

  /** Whichever is shorter: the months it has, or those it has not. */
  private static String months(List<Integer> months) {
    List<Integer> others =
        Stream.iterate(1, m -> m + 1).limit(12).filter(m -> !months.contains(m)).toList();
    boolean shorter = !others.isEmpty() && others.size() < months.size();
    List<String> names = (shorter ? others : months).stream().map(RuleWords::month).toList();
    String said = Speech.list(names);
    return shorter ? say("not in %s", said) : say("in %s", said);
  }

  private static Stream<Season> seasons(PatternRow row) {
    return Stream.of(row.seasons).map(id -> Term.find(Season.class, id).orElseThrow());
  }

  private static List<String> except(PatternRow row) {
    return Stream.of(row.except).map(Speech::dateAndYear).toList();
  }
}
