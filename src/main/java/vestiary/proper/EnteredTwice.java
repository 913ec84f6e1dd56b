package vestiary.proper;

import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import vestiary.calendar.ProperPlace;
import vestiary.problem.Refusal;

/**
 * Whether something else is entered already of which there is one: of a celebration in a church,
 * one entry; in each church, one principal patron of the place and of the diocese, and one
 * dedication of the cathedral. Several saints may be one patron, as one celebration. Source: norms
 * on patrons of 19 March 1973, 5.
 */
final class EnteredTwice {

  private static final Set<ProperPlace> ONCE =
      EnumSet.of(
          ProperPlace.PATRON_OF_THE_PLACE,
          ProperPlace.PATRON_OF_THE_DIOCESE,
          ProperPlace.DEDICATION_OF_THE_CATHEDRAL);

  private EnteredTwice() {}

  static Optional<Refusal> refusal(EnteredProper given, KnownCelebrations known) {
    List<EnteredProper> others =
        known.entered().stream().filter(other -> !other.id().equals(given.id())).toList();
    return sameCelebration(given, others, known).or(() -> samePlace(given, others, known));
  }

  /** One of all churches and one of some are no double: the higher place holds. UNLY 59. */
  private static Optional<Refusal> sameCelebration(
      EnteredProper given, List<EnteredProper> others, KnownCelebrations known) {
    return others.stream()
        .filter(other -> other.celebration().equals(given.celebration()))
        .filter(other -> other.keptYear() == given.keptYear())
        .filter(other -> other.everywhere() == given.everywhere() && other.meets(given))
        .findFirst()
        .map(
            other ->
                new Refusal.Taken(
                    "celebration",
                    say(
                        "%s is entered already for %s; change that entry instead.",
                        known.name(given.celebration()),
                        given.everywhere() ? say("all churches") : say("one of these churches"))));
  }

  private static Optional<Refusal> samePlace(
      EnteredProper given, List<EnteredProper> others, KnownCelebrations known) {
    return given
        .findPlace()
        .filter(ONCE::contains)
        .flatMap(
            place ->
                others.stream()
                    .filter(other -> other.findPlace().filter(place::equals).isPresent())
                    .filter(given::meets)
                    .findFirst()
                    .map(
                        other ->
                            new Refusal.Taken(
                                "place",
                                say(heldAlready(place), known.name(other.celebration())))));
  }

  private static String heldAlready(ProperPlace place) {
    return switch (place) {
      case PATRON_OF_THE_DIOCESE ->
          word(
              "%s is the principal patron of the diocese already, and there is one. Enter this one as a secondary patron, or change that entry first (norms on patrons of 1973, 5).");
      case PATRON_OF_THE_PLACE ->
          word(
              "%s is the principal patron of the place already, and there is one. Enter this one as a secondary patron, name other churches, or change that entry first (norms on patrons of 1973, 5).");
      default ->
          word(
              "%s is entered already, and a diocese has one cathedral; change that entry instead.");
    };
  }
}
