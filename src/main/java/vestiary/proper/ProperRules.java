package vestiary.proper;

import static vestiary.web.Speech.say;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import vestiary.calendar.Precedence;
import vestiary.calendar.Proper;
import vestiary.calendar.ProperPlace;
import vestiary.problem.Refusal;
import vestiary.web.Speech;

/**
 * Whether a proper may stand: held against the calendar, against the titles of the churches and
 * against all that is entered, itself included.
 */
final class ProperRules {

  private final EnteredProper given;
  private final KnownCelebrations known;

  ProperRules(EnteredProper given, KnownCelebrations known) {
    this.given = given;
    this.known = known;
  }

  /** Why it may not, or empty if it may. */
  Optional<Refusal> refusal() {
    return Stream.<Supplier<Optional<Refusal>>>of(
            this::isOfTheCalendar,
            this::isUnknown,
            () -> EnteredTwice.refusal(given, known),
            this::isOfOneChurch,
            this::isTitleAlready,
            this::isOwnTitleAlready,
            this::isBelowSunday,
            () -> LeftBehind.refusal(known))
        .map(Supplier::get)
        .flatMap(Optional::stream)
        .findFirst();
  }

  private Optional<Refusal> isOfTheCalendar() {
    return given
        .findName()
        .filter(name -> known.isOfTheCalendar(given.id()))
        .map(
            name ->
                new Refusal.AgainstRule(
                    "name",
                    say(
                        "%s has \"%s\" already; choose it there instead of naming it anew.",
                        Speech.sentence(known.calendarName()), given.id())));
  }

  private Optional<Refusal> isUnknown() {
    return known.lacking(given).stream()
        .findFirst()
        .map(church -> Refusal.Unfit.of("celebration", unknownIn(church)));
  }

  private String unknownIn(TitledChurch church) {
    String celebration = given.celebration();
    if (TitledChurch.OWN.contains(celebration)) {
      return given.everywhere() || given.findPlace().isPresent()
          ? say(
              "celebration: title and dedication are each church's own and have their place; name the churches, and the Sunday or date.")
          : say(
              "celebration \"%s\" is nothing that %s has; enter it with that church first.",
              celebration, church.name());
    }
    boolean isBrought =
        known.entered().stream()
            .anyMatch(p -> p.findName().isPresent() && p.id().equals(celebration));
    return isBrought
        ? say(
            "celebration \"%s\" is entered for certain churches, and not for %s.",
            celebration, church.name())
        : say(
            "celebration \"%s\" is no celebration of %s that can be kept as a day of your own; give a name, month, day, colour and place instead.",
            celebration, known.calendarName());
  }

  private Optional<Refusal> isOfOneChurch() {
    return given
        .findPlace()
        .filter(place -> place == ProperPlace.FEAST_OF_ONE_CHURCH && given.everywhere())
        .map(
            place ->
                new Refusal.AgainstRule(
                    "churches",
                    "A feast of one church names its church; one of all churches is a feast of the diocese (UNLY 59 II.8 e and f)."));
  }

  /** A patron of the place, who stands higher, may well be the title of the church there. */
  private Optional<Refusal> isTitleAlready() {
    boolean isNoHigher =
        given.findName().isEmpty()
            && given
                .findPlace()
                .filter(place -> place.precedence().compareTo(Precedence.OWN_TITULAR) >= 0)
                .isPresent();
    List<TitledChurch> bound = known.bound(given);
    boolean isTitleOfAll =
        bound.stream().allMatch(c -> c.findTitular().equals(Optional.of(given.celebration())));
    return isNoHigher && isTitleOfAll
        ? Optional.of(
            new Refusal.AgainstRule(
                "celebration",
                say(
                    "%s is the title of %s, which keeps it as a solemnity already (UNLY 59 I.4 c).",
                    known.name(given.celebration()), bound.get(0).name())))
        : Optional.empty();
  }

  private Optional<Refusal> isOwnTitleAlready() {
    return given
        .findName()
        .flatMap(
            name ->
                known.churches().stream()
                    .filter(church -> given.binds(church.id()))
                    .filter(church -> church.isTitled(name.english()))
                    .findFirst()
                    .map(
                        church ->
                            new Refusal.AgainstRule(
                                "name",
                                say(
                                    "%s is the title of %s with a day of its own; take it out there, enter it here, then choose it there as the title.",
                                    name.english(), church.name()))));
  }

  private Optional<Refusal> isBelowSunday() {
    boolean isTakenToSunday = given.find(Proper.OnSunday.class).isPresent();
    return isTakenToSunday
            && known.bound(given).stream()
                .anyMatch(church -> !known.standsAboveSunday(given.celebration(), church))
        ? Optional.of(
            new Refusal.AgainstRule(
                "onSunday",
                say(
                    "%s does not stand above a Sunday of Ordinary Time, so it keeps its own day: only solemnities and feasts of the Lord may be taken to the Sunday (UNLY 58).",
                    known.name(given.celebration()))))
        : Optional.empty();
  }
}
