package vestiary.calendar;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The calendar of one church: what is celebrated on a date, in which colour, and which Masses may
 * be said. It holds no clock and no time zone: dates and times are those of the church.
 *
 * <p>Results follow the norms now in force; from 2008 on they are exact, before that a transfer may
 * have gone elsewhere under older rules. A celebration is absent in years before it stood in the
 * calendar. Safe for use by many threads; a year is worked out once.
 *
 * <p>Source: Universal Norms on the Liturgical Year and the Calendar (UNLY); General Instruction of
 * the Roman Missal (GIRM) 346, 355, 371 to 381.
 */
public final class LiturgicalCalendar {

  /** The first date there are answers for, 1 January 1970. */
  public static final LocalDate FIRST = LocalDate.of(1970, 1, 1);

  /** The last date there are answers for, 31 December 2300. */
  public static final LocalDate LAST = LocalDate.of(2300, 12, 31);

  private static final int MOST_YEARS_KEPT = 12;

  private final ChurchCalendar church;
  private final YearBuilder builder;
  private final MassRulings rulings;
  private final Map<Integer, List<Day>> years = new ConcurrentHashMap<>();

  private LiturgicalCalendar(ChurchCalendar church) {
    this.church = church;
    this.builder = new YearBuilder(church);
    this.rulings = new MassRulings(church);
  }

  /** The calendars that can be chosen, the general one first. */
  public static List<OfferedCalendar> offered() {
    return OfferedCalendars.all();
  }

  /**
   * The calendar of a church with this title and dedication.
   *
   * @param propers none for a chapel without a title of its own
   * @throws IllegalArgumentException if no calendar or no celebration has the id given
   */
  public static LiturgicalCalendar of(CalendarSettings settings, List<Proper> propers) {
    return new LiturgicalCalendar(new ChurchCalendar(settings, propers));
  }

  /**
   * @throws IllegalArgumentException if the date is before {@link #FIRST} or after {@link #LAST}
   */
  public Day day(LocalDate date) {
    if (date.isBefore(FIRST) || date.isAfter(LAST)) {
      throw new IllegalArgumentException(
          "The calendar reaches from " + FIRST + " to " + LAST + ", not to " + date + ".");
    }
    return year(date.getYear()).get(date.getDayOfYear() - 1);
  }

  /** Kept once built, yet not all three centuries of it, whoever leafs through them. */
  private List<Day> year(int year) {
    List<Day> kept = years.get(year);
    if (kept == null && years.size() >= MOST_YEARS_KEPT) {
      years.clear();
    }
    return kept != null ? kept : years.computeIfAbsent(year, y -> List.copyOf(builder.build(y)));
  }

  /**
   * The days from the first to the last, both included, in order; empty if last is before first.
   *
   * @throws IllegalArgumentException as {@link #day}
   */
  public List<Day> days(LocalDate first, LocalDate last) {
    List<Day> days = new ArrayList<>();
    for (LocalDate date = first; !date.isAfter(last); date = date.plusDays(1)) days.add(day(date));
    return List.copyOf(days);
  }

  /** The celebration with this id in the tables of this church, whatever day it falls on. */
  public Optional<Celebration> find(String celebrationId) {
    return church.find(celebrationId).map(Entry::celebration);
  }

  /** The celebration with this id, if a church may bear it as its title (UNLY 59 I.4). */
  public Optional<Celebration> findTitle(String celebrationId) {
    return church.findTitle(celebrationId).map(Entry::celebration);
  }

  /** The celebration with this id, if a proper may give it another place, date or Sunday. */
  public Optional<Celebration> findPlaceable(String celebrationId) {
    return church.find(celebrationId).filter(ChurchPropers::canBePlaced).map(Entry::celebration);
  }

  /** The celebrations that a church may bear as its title, by their English names. */
  public List<Celebration> titles() {
    return church.titles().stream()
        .map(Entry::celebration)
        .sorted(Comparator.comparing(c -> c.name().english()))
        .toList();
  }

  /**
   * The Mass that is said at this hour when none was chosen: {@code ANTICIPATED} on an evening that
   * belongs to tomorrow, from Holy Thursday evening to the Vigil the Triduum's own liturgies,
   * otherwise the Mass of the day. Whether that may be said then is for {@link #ruling}.
   *
   * @throws IllegalArgumentException as {@link #day}
   */
  public MassKind kindAt(LocalDateTime start) {
    boolean evening = church.settings().evenings().isEvening(start.toLocalTime());
    return MassTimes.kindAt(day(start.toLocalDate()), evening);
  }

  /**
   * The date whose celebration the Mass takes: the next one for an anticipated Mass and for the
   * Easter Vigil, unless that begins before dawn on Easter Sunday itself.
   *
   * @throws IllegalArgumentException as {@link #day}
   */
  public LocalDate liturgicalDate(LocalDateTime start, MassKind kind) {
    return MassTimes.liturgicalDate(start, kind, day(start.toLocalDate()));
  }

  /**
   * Whether this Mass may be said, and which celebrations and colours are lawful for it. A Mass
   * that may not be said has the options of the day.
   *
   * @param votiveOf what a votive or needs Mass is of, by id ({@code holy-spirit}, {@code famine},
   *     a celebration), or empty
   * @param leave whose judgement or order is recorded with it
   * @throws IllegalArgumentException as {@link #day}, also when the day it belongs to is too late
   */
  public MassRuling ruling(LocalDateTime start, MassKind kind, String votiveOf, Leave leave) {
    Day date = day(start.toLocalDate());
    MassRequest request = new MassRequest(start.toLocalTime(), kind, votiveOf, leave);
    if (request.isRitual() && isEveningOfSunday(date, start.toLocalTime())) {
      return rulings.onAnEve(request, date, day(date.date().plusDays(1)));
    }
    return rulings.of(request, date, day(liturgicalDate(start, kind)));
  }

  /** A wedding on Saturday evening before a Sunday of Advent takes the Sunday's Mass. */
  private boolean isEveningOfSunday(Day date, LocalTime start) {
    return date.date().getDayOfWeek() == DayOfWeek.SATURDAY
        && church.settings().evenings().isEvening(start)
        && date.evening().tomorrow()
        && !MassTimes.isHolySaturday(date);
  }
}
