package vestiary.proper;

import static vestiary.web.Speech.say;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import vestiary.problem.Refusal;

/** What would be about a celebration that nobody has any more, if things stood so. */
public final class LeftBehind {

  private LeftBehind() {}

  /** The first thing that would be left so, or empty if nothing would. */
  static Optional<Refusal> refusal(KnownCelebrations known) {
    Stream<String> titles =
        known.withoutTheirTitle().stream()
            .map(
                church ->
                    say(
                        "\"%s\" is the title of %s; choose another title there first.",
                        church.findTitular().orElseThrow(), church.name()));
    Stream<String> propers =
        known.entered().stream()
            .filter(proper -> !known.lacking(proper).isEmpty())
            .map(
                proper ->
                    say(
                        "Another day of your own, \"%s\", is about \"%s\"; remove or change that one first.",
                        proper.id(), proper.celebration()));
    return Stream.concat(titles, propers)
        .findFirst()
        .map(sentence -> new Refusal.Taken("churches", sentence));
  }

  /** What a calendar chosen anew would leave so, a sentence each. */
  public static List<String> under(String calendar, KnownCelebrations known) {
    Stream<String> titles =
        known.withoutTheirTitle().stream()
            .map(
                church ->
                    say(
                        "The calendar \"%s\" has no celebration \"%s\", the title of %s; change that church first.",
                        calendar, church.findTitular().orElseThrow(), church.name()));
    Stream<String> propers =
        known.entered().stream()
            .filter(proper -> !known.lacking(proper).isEmpty())
            .map(
                proper ->
                    say(
                        "The calendar \"%s\" has no celebration \"%s\", one of the days of your own; remove it there first.",
                        calendar, proper.celebration()));
    Stream<String> brought =
        known.entered().stream()
            .filter(proper -> proper.findName().isPresent())
            .filter(proper -> known.isOfTheCalendar(proper.id()))
            .map(
                proper ->
                    say(
                        "The calendar \"%s\" has \"%s\" itself; remove it from the days of your own first.",
                        calendar, proper.id()));
    return Stream.of(titles, propers, brought).flatMap(s -> s).toList();
  }
}
