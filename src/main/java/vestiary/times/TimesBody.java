package vestiary.times;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * A week of Mass times as it was published, as the API writes it.
 *
 * @param published when; absent before anything was
 * @param from first date of the week
 * @param to last date, included
 * @param masses by date, hour, then church
 * @param cancelled Masses of the usual times that are not said
 */
record TimesBody(
    @Schema(description = "when, with offset; absent before anything was published")
        String published,
    @Schema(description = "first and last date that was published; absent likewise")
        List<LocalDate> publishedDays,
    LocalDate from,
    @Schema(description = "last date, included") LocalDate to,
    List<Mass> masses,
    List<Gap> cancelled) {

  /**
   * @param church short name
   * @param celebrant absent unless the cluster names celebrants in public
   * @param note how it differs from the usual times; absent where it does not
   */
  record Mass(
      String id,
      String church,
      LocalDate date,
      LocalTime time,
      int minutes,
      @Schema(description = "in plain words, in the language that was asked for") String what,
      String celebrant,
      String note) {}

  record Gap(String church, LocalDate date, LocalTime time) {}

  static TimesBody of(TimesSheet.Week week, Optional<Published> found) {
    TimesWords words = new TimesWords(week.tongue());
    return new TimesBody(
        found.map(one -> one.at().toOffsetDateTime().toString()).orElse(null),
        found.map(one -> List.of(one.first(), one.last())).orElse(null),
        week.monday(),
        week.sunday(),
        week.masses().stream().map(mass -> mass(mass, words)).toList(),
        week.gaps().stream()
            .map(gap -> new Gap(gap.church().slug(), gap.date(), gap.time()))
            .toList());
  }

  private static Mass mass(PublicTimes.Mass mass, TimesWords words) {
    return new Mass(
        mass.id().toString(),
        mass.church().slug(),
        mass.date(),
        mass.time(),
        mass.minutes(),
        words.what(mass),
        said(mass.celebrant()),
        said(words.difference(mass)));
  }

  private static String said(String words) {
    return words.isEmpty() ? null : words;
  }
}
