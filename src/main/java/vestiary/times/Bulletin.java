package vestiary.times;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import vestiary.telling.Tongue;

/** A week of Mass times as a text to be copied into the bulletin. */
final class Bulletin {

  private final TimesSheet.Week week;
  private final TimesWords words;
  private final boolean all;

  /**
   * @param all whether churches are named, since there are several
   */
  Bulletin(TimesSheet.Week week, boolean all) {
    this.week = week;
    this.words = new TimesWords(week.tongue());
    this.all = all;
  }

  String text() {
    Tongue tongue = week.tongue();
    StringBuilder text = new StringBuilder();
    text.append(week.cluster().name()).append('\n');
    text.append(tongue.say("times.bulletin", tongue.span(week.monday(), week.sunday())))
        .append("\n\n");
    days().forEach((date, masses) -> day(text, date, masses));
    if (week.masses().isEmpty()) {
      text.append(tongue.say("times.none")).append("\n\n");
    }
    List<String> changes = words.changes(week.masses(), week.gaps(), all);
    if (!changes.isEmpty()) {
      text.append(tongue.say("times.changes")).append('\n');
      changes.forEach(line -> text.append(line).append('\n'));
    }
    return text.toString().strip() + "\n";
  }

  private Map<LocalDate, List<PublicTimes.Mass>> days() {
    return week.masses().stream()
        .collect(Collectors.groupingBy(PublicTimes.Mass::date, TreeMap::new, Collectors.toList()));
  }

  private void day(StringBuilder text, LocalDate date, List<PublicTimes.Mass> masses) {
    text.append(week.tongue().sentence(week.tongue().day(date))).append('\n');
    for (PublicTimes.Mass mass : masses) {
      text.append("  ").append(words.clock(mass.time())).append("  ");
      if (all) {
        text.append(mass.church().name()).append(": ");
      }
      text.append(words.what(mass)).append('\n');
    }
    text.append('\n');
  }
}
