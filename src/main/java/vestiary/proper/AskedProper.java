package vestiary.proper;

import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import vestiary.calendar.Colour;
import vestiary.calendar.LiturgicalCalendar;
import vestiary.calendar.LocalName;
import vestiary.calendar.Proper;
import vestiary.calendar.ProperPlace;
import vestiary.calendar.SundayBeside;
import vestiary.calendar.Term;
import vestiary.problem.Asked;
import vestiary.problem.ShortName;
import vestiary.vesting.ChurchId;

/**
 * What a request says of a proper, field by field. It names a celebration of the calendar or brings
 * one, or it sets the date of one year. Whether the calendar has the celebration is not asked here.
 */
final class AskedProper {

  private static final int LONGEST_NAME = 200;
  private static final MonthDay LEAP_DAY = MonthDay.of(2, 29);
  private static final String BESIDE_A_DATE =
      word("%s: a date of one year stands alone; leave this empty, or enter it as another day.");
  private static final String BESIDE_A_CHOICE =
      word("%s: the calendar has it for the celebration that is chosen; leave this empty.");

  private final SaveProper.Request request;
  private final Map<String, ChurchId> churches;

  /**
   * @param churches by short name, in the order in which people list them
   */
  AskedProper(SaveProper.Request request, Map<String, ChurchId> churches) {
    this.request = request;
    this.churches = churches;
  }

  /** Notes all that is wrong with the request. */
  void check(Asked asked) {
    checkId(asked);
    asked.text("celebration", request.celebration(), ProperId.LONGEST);
    asked.text("name", request.name(), LONGEST_NAME);
    asked.text("latin", request.latin(), LONGEST_NAME);
    asked.text("spanish", request.spanish(), LONGEST_NAME);
    ColourOfADay.of("colour", request.colour(), Colour.WHITE, asked);
    asked.findTerm(ProperPlace.class, "place", request.place());
    asked.findTerm(SundayBeside.class, "onSunday", request.onSunday());
    checkDay(asked);
    checkKeptOn(asked);
    checkChurches(asked);
    checkWhole(asked);
  }

  /** The proper that was asked for; only after a check that found nothing. */
  EnteredProper entered() {
    List<String> named = slugs().stream().map(String::strip).toList();
    List<ChurchId> bound =
        churches.keySet().stream().filter(named::contains).map(churches::get).toList();
    return new EnteredProper(
        request.id().strip(), celebration(), propers(), bound.isEmpty(), bound, 0);
  }

  private void checkId(Asked asked) {
    String id = asked.text("id", request.id(), ProperId.LONGEST);
    if (!id.isEmpty() && (!ShortName.isWellFormed(id) || id.equals("new"))) {
      asked.fault(
          "id",
          say(
              "id \"%s\" must be of lower-case letters, digits and single hyphens, and not new.",
              id));
    }
  }

  private void checkDay(Asked asked) {
    if (isDayGiven() && asked.monthDay("day", request.month(), request.day()).equals(LEAP_DAY)) {
      asked.fault("day", say("day: 29 February is not in every year; choose a day that is."));
    }
  }

  private void checkKeptOn(Asked asked) {
    asked
        .findDate("keptOn", request.keptOn())
        .filter(d -> d.isBefore(LiturgicalCalendar.FIRST) || d.isAfter(LiturgicalCalendar.LAST))
        .ifPresent(
            d ->
                asked.fault(
                    "keptOn",
                    say(
                        "keptOn %s is beyond the calendar, which reaches from %s to %s.",
                        d, LiturgicalCalendar.FIRST, LiturgicalCalendar.LAST)));
  }

  private void checkChurches(Asked asked) {
    for (String slug : slugs()) {
      if (slug == null || !churches.containsKey(slug.strip())) {
        asked.fault("churches", say("churches \"%s\" is no church of this cluster.", slug));
      }
    }
  }

  private void checkWhole(Asked asked) {
    if (isGiven(request.keptOn())) {
      need("celebration", request.celebration(), asked);
      refuse(
          given("name", "latin", "spanish", "day", "colour", "place", "onSunday"),
          BESIDE_A_DATE,
          asked);
    } else if (isGiven(request.name())) {
      need("colour", request.colour(), asked);
      need("place", request.place(), asked);
      need("day", isDayGiven() ? "given" : "", asked);
      refuse(
          given("celebration"),
          word("%s: choose one of the calendar or name one, not both; leave one of the two empty."),
          asked);
    } else {
      need("celebration", request.celebration(), asked);
      if (isDayGiven() || !isGiven(request.onSunday())) {
        need("place", request.place(), asked);
      }
      refuse(given("latin", "spanish", "colour"), BESIDE_A_CHOICE, asked);
    }
  }

  private static void need(String field, String value, Asked asked) {
    if (!isGiven(value)) {
      asked.fault(field, say("%s is missing.", field));
    }
  }

  private static void refuse(List<String> fields, String sentence, Asked asked) {
    fields.forEach(field -> asked.fault(field, say(sentence, field)));
  }

  /** Which of these fields say something. */
  private List<String> given(String... fields) {
    Map<String, Boolean> all = new LinkedHashMap<>();
    all.put("celebration", isGiven(request.celebration()));
    all.put("name", isGiven(request.name()));
    all.put("latin", isGiven(request.latin()));
    all.put("spanish", isGiven(request.spanish()));
    all.put("day", isDayGiven());
    all.put("colour", isGiven(request.colour()));
    all.put("place", isGiven(request.place()));
    all.put("onSunday", isGiven(request.onSunday()));
    return List.of(fields).stream().filter(all::get).toList();
  }

  private String celebration() {
    return isGiven(request.name()) ? request.id().strip() : request.celebration().strip();
  }

  private List<Proper> propers() {
    if (isGiven(request.keptOn())) {
      return List.of(new Proper.KeptOn(celebration(), LocalDate.parse(request.keptOn().strip())));
    }
    List<Proper> propers = new ArrayList<>();
    term(ProperPlace.class, request.place()).map(this::placed).ifPresent(propers::add);
    term(SundayBeside.class, request.onSunday())
        .map(sunday -> new Proper.OnSunday(celebration(), sunday))
        .ifPresent(propers::add);
    return propers;
  }

  private Proper placed(ProperPlace place) {
    if (!isDayGiven()) {
      return new Proper.Placed(celebration(), place);
    }
    MonthDay on = MonthDay.of(request.month(), request.day());
    return isGiven(request.name())
        ? new Proper.Inscribed(
            celebration(), name(), on, term(Colour.class, request.colour()).orElseThrow(), place)
        : new Proper.Moved(celebration(), place, on);
  }

  private LocalName name() {
    return new LocalName(
        request.name().strip(), stripped(request.latin()), stripped(request.spanish()));
  }

  private List<String> slugs() {
    return request.churches() == null ? List.of() : request.churches();
  }

  private boolean isDayGiven() {
    return request.month() != null || request.day() != null;
  }

  private static <T extends Enum<T> & Term> Optional<T> term(Class<T> type, String id) {
    return Term.find(type, stripped(id));
  }

  private static String stripped(String text) {
    return text == null ? "" : text.strip();
  }

  private static boolean isGiven(String text) {
    return text != null && !text.isBlank();
  }
}
