package vestiary.telling;

import com.ibm.icu.text.MessageFormat;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.UUID;
import vestiary.calendar.Colour;
import vestiary.calendar.MassKind;
import vestiary.people.Attendance;
import vestiary.people.CarrierName;
import vestiary.people.Person;
import vestiary.people.PersonRole;
import vestiary.planning.RoleAt;
import vestiary.schedule.DatedMass;
import vestiary.vesting.PieceKind;

/** What letters and the Mass times for the people say in one language. */
public final class Tongue {

  /** Those that are there; the first is taken for any other. */
  public static final List<Locale> ALL = List.of(Locale.ENGLISH, Locale.forLanguageTag("es"));

  private static final DateTimeFormatter CLOCK =
      DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);

  private final Locale locale;
  private final ResourceBundle words;

  private Tongue(Locale locale) {
    this.locale = locale;
    this.words =
        ResourceBundle.getBundle(
            "words.telling",
            locale,
            ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
  }

  /** That language, or English where there are no words of it. */
  public static Tongue of(Locale wanted) {
    return ALL.stream()
        .filter(one -> one.getLanguage().equals(wanted.getLanguage()))
        .findFirst()
        .map(Tongue::new)
        .orElseGet(() -> new Tongue(ALL.get(0)));
  }

  public Locale locale() {
    return locale;
  }

  /** BCP 47. */
  public String tag() {
    return locale.toLanguageTag();
  }

  /** The words of that name with these values in their places. */
  public String say(String name, Object... values) {
    return new MessageFormat(words.getString(name), locale).format(values);
  }

  /** For example "Saturday 5 December". */
  public String day(LocalDate date) {
    return date(date, "day");
  }

  /** For example "Sat 5 Dec". */
  public String shortDay(LocalDate date) {
    return date(date, "day.short");
  }

  /** For example "5 December 2026". */
  public String wholeDate(LocalDate date) {
    return date(date, "date.whole");
  }

  /** For example "Saturday 5 December to Friday 11 December". */
  public String span(LocalDate first, LocalDate last) {
    return say("span", day(first), day(last));
  }

  /** On 24 hours, on the clock of the time's own zone. */
  public String clock(ZonedDateTime time) {
    return CLOCK.format(time);
  }

  /** For example "Saturday 5 December, 10:30". */
  public String moment(ZonedDateTime time) {
    return "%s, %s".formatted(day(time.toLocalDate()), clock(time));
  }

  /** {@code a}, {@code a and b}, {@code a, b and c}. */
  public String list(List<String> items) {
    if (items.size() < 2) {
      return String.join("", items);
    }
    String head = String.join(", ", items.subList(0, items.size() - 1));
    return say("list.last", head, items.get(items.size() - 1));
  }

  /** With a capital letter at its head. */
  public String sentence(String said) {
    return said.isEmpty() ? said : said.substring(0, 1).toUpperCase(locale) + said.substring(1);
  }

  public String colour(Colour colour) {
    return say("colour." + colour.id());
  }

  public String piece(PieceKind kind) {
    return say("piece." + kind.id());
  }

  /** For example "one chasuble" or "3 chasubles". */
  public String pieces(PieceKind kind, long number) {
    return say("pieces." + kind.id(), number);
  }

  /**
   * With the title as it is spoken, for example "Father Cosmas Ilverton"; an unusual one as it was
   * entered.
   */
  public String called(Person person) {
    return switch (person.title()) {
      case "Fr" -> say("father", person.name());
      case "Deacon" -> say("deacon", person.name());
      case "Bishop" -> say("bishop", person.name());
      case "" -> person.role() == PersonRole.DEACON ? say("deacon", person.name()) : person.name();
      default -> person.title() + " " + person.name();
    };
  }

  /** A name as a Mass is read with it; that somebody is away is said to everybody, why to few. */
  public String named(String name, DatedMass mass, Person person, Attendance attendance) {
    return RoleAt.isAway(mass, person.id(), attendance) ? say("named.away", name) : name;
  }

  /**
   * Whoever drives, with the title as it is spoken.
   *
   * @param kept as plans keep it, with an English title
   */
  public String carrier(String kept) {
    return CarrierName.of(kept, (title, name) -> say(title.toLowerCase(Locale.ROOT), name));
  }

  /**
   * What somebody who is named at a Mass does there, for example "You celebrate"; or that he is
   * away then.
   */
  public String deed(DatedMass mass, UUID person, Attendance attendance) {
    if (!RoleAt.isAway(mass, person, attendance)) {
      return say("role." + RoleAt.word(mass, person));
    }
    return say("away." + (RoleAt.leads(mass, person) ? RoleAt.of(mass, person).id() : "other"));
  }

  /** The Mass with its celebration, for example "of Sunday, Second Sunday of Advent". */
  public String whole(DatedMass mass) {
    return inLanguage(what(mass), mass);
  }

  /** These words with the language of the Mass after them, where it is not the usual one. */
  public String inLanguage(String what, DatedMass mass) {
    String tag = mass.chosen().language();
    return tag.isEmpty()
        ? what
        : say("in.language", what, Locale.forLanguageTag(tag).getDisplayLanguage(locale));
  }

  private String what(DatedMass mass) {
    String celebration = mass.option().celebration().name().in(locale);
    if (mass.kind() == MassKind.OF_THE_DAY) {
      return celebration;
    }
    if (mass.kind() == MassKind.ANTICIPATED) {
      return "%s, %s".formatted(anticipated(mass), celebration);
    }
    return say("kind." + mass.kind().id());
  }

  private String anticipated(DatedMass mass) {
    return say(isOfSunday(mass) ? "kind.anticipated.sunday" : "kind.anticipated");
  }

  /** Whether the day that it belongs to is a Sunday. */
  public static boolean isOfSunday(DatedMass mass) {
    return mass.ruling().day().date().getDayOfWeek() == java.time.DayOfWeek.SUNDAY;
  }

  private String date(LocalDate date, String pattern) {
    return DateTimeFormatter.ofPattern(words.getString(pattern), locale).format(date);
  }
}
