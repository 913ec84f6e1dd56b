package vestiary.times;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import vestiary.telling.Tongue;

/** Mass times in plain words of one language. */
final class TimesWords {

  private static final DateTimeFormatter CLOCK =
      DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);

  private final Tongue tongue;

  TimesWords(Tongue tongue) {
    this.tongue = tongue;
  }

  /**
   * Something to be told on one date.
   *
   * @param sentence for example "18:30 instead of 18:00"
   */
  private record Dated(LocalDate date, LocalTime time, String sentence) {}

  String clock(LocalTime time) {
    return CLOCK.format(time);
  }

  /** For example "Sunday Mass, with Father Ilverton". */
  String what(PublicTimes.Mass mass) {
    String plain = mass.what().getOrDefault(tongue.tag(), "");
    return mass.celebrant().isEmpty()
        ? plain
        : "%s, %s".formatted(plain, tongue.say("times.celebrant", mass.celebrant()));
  }

  /**
   * Where it differs from the usual times, for example "at 18:30 instead of 18:00"; may be empty.
   */
  String difference(PublicTimes.Mass mass) {
    return mass.usual().stream().map(usual -> difference(mass, usual)).findFirst().orElse("");
  }

  private String difference(PublicTimes.Mass mass, PublicTimes.Usual usual) {
    if (usual.extra()) {
      return tongue.say("times.extra");
    }
    if (!usual.date().equals(mass.date())) {
      return tongue.say("times.moved.from", tongue.day(usual.date()), clock(usual.time()));
    }
    String moved = tongue.say("times.moved", clock(mass.time()), clock(usual.time()));
    boolean elsewhere = !usual.church().slug().equals(mass.church().slug());
    return elsewhere
        ? moved + ", " + tongue.say("times.other-church", mass.church().name())
        : moved;
  }

  /** All that differs from the usual times, by date and hour, in sentences. */
  List<String> changes(List<PublicTimes.Mass> masses, List<PublicTimes.Gap> gaps, boolean naming) {
    Stream<Dated> said =
        masses.stream()
            .filter(PublicTimes.Mass::differs)
            .map(mass -> new Dated(mass.date(), mass.time(), sentence(mass, naming)));
    Stream<Dated> missing =
        gaps.stream().map(gap -> new Dated(gap.date(), gap.time(), sentence(gap, naming)));
    return Stream.concat(said, missing)
        .sorted(Comparator.comparing(Dated::date).thenComparing(Dated::time))
        .map(Dated::sentence)
        .toList();
  }

  private String sentence(PublicTimes.Mass mass, boolean naming) {
    List<String> parts = head(mass.date(), mass.church(), naming);
    parts.add(mass.usual().get(0).extra() ? clock(mass.time()) + " " + what(mass) : what(mass));
    return "%s, %s.".formatted(String.join(", ", parts), difference(mass));
  }

  private String sentence(PublicTimes.Gap gap, boolean naming) {
    List<String> parts = head(gap.date(), gap.church(), naming);
    parts.add(tongue.say("times.cancelled", clock(gap.time())));
    return String.join(", ", parts) + ".";
  }

  private List<String> head(LocalDate date, PublicTimes.Church church, boolean naming) {
    List<String> parts = new ArrayList<>();
    parts.add(tongue.sentence(tongue.day(date)));
    if (naming) {
      parts.add(church.name());
    }
    return parts;
  }
}
