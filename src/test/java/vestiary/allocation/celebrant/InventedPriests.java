package vestiary.allocation.celebrant;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import java.util.stream.IntStream;
import vestiary.allocation.Journey;
import vestiary.allocation.Journeys;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassId;

/** Priests, churches and Masses invented at random; the same seed invents the same. */
public final class InventedPriests {

  private static final LocalDate SATURDAY = LocalDate.of(2026, 12, 5);

  private static final int WEEKS = 4;
  private static final List<Integer> SUNDAY_HOURS = List.of(8, 9, 10, 11, 17, 18);

  private final Random random;

  public InventedPriests(long seed) {
    this.random = new Random(seed);
  }

  /** Few of everything on a Saturday and a Sunday, so close that much is impossible. */
  public Question few() {
    int churches = 2 + random.nextInt(3);
    int priests = 1 + random.nextInt(3);
    boolean byLiturgy = random.nextBoolean();
    List<MassToServe> masses =
        IntStream.range(0, 1 + random.nextInt(5))
            .mapToObj(number -> mass(number, churches, priests, byLiturgy))
            .toList();
    List<Engagement> engagements =
        IntStream.range(0, random.nextInt(3))
            .mapToObj(
                number -> engagement(mass(100 + number, churches, priests, byLiturgy), priests))
            .toList();
    return new Question(
        IntStream.range(0, priests).mapToObj(number -> priest(number, churches)).toList(),
        masses,
        engagements,
        journeys(churches, 10, 50, random.nextInt(4) > 0),
        Pace.USUAL,
        Duration.ofMinutes(25));
  }

  /**
   * Four weeks of the same hours, as clusters have them: two in five on Sundays, one in five on
   * Saturday evenings, the rest on weekdays. Of four in five somebody usually says it; four of the
   * priests are away for a week each.
   */
  public Question month(int priests, int churches, int masses) {
    List<MassToServe> all = new ArrayList<>();
    int aWeek = masses / WEEKS;
    for (int slot = 0; slot < aWeek; slot++) {
      LocalDateTime start = hour(slot, aWeek);
      int church = random.nextInt(churches);
      List<PriestId> usual = random.nextInt(5) > 0 ? List.of(id(church % priests)) : List.of();
      String language = random.nextInt(8) == 0 ? "es" : "";
      for (int week = 0; week < WEEKS; week++) {
        int number = slot * WEEKS + week;
        all.add(ofMonth(stay(number, church, start.plusWeeks(week), 60), usual, language));
      }
    }
    return new Question(
        IntStream.range(0, priests).mapToObj(number -> atHome(number, churches)).toList(),
        all,
        List.of(),
        journeys(churches, 8, 30, true),
        Pace.USUAL,
        Duration.ofMinutes(20));
  }

  private LocalDateTime hour(int slot, int aWeek) {
    LocalDate monday = SATURDAY.minusDays(5);
    if (slot < aWeek * 2 / 5) {
      return monday
          .plusDays(6)
          .atTime(SUNDAY_HOURS.get(random.nextInt(SUNDAY_HOURS.size())), 30 * random.nextInt(2));
    }
    return slot < aWeek * 3 / 5
        ? SATURDAY.atTime(16 + random.nextInt(3), 30 * random.nextInt(2))
        : monday.plusDays(random.nextInt(5)).atTime(random.nextInt(2) * 10 + 8, 0);
  }

  private static MassToServe ofMonth(Stay stay, List<PriestId> usual, String language) {
    boolean sunday = stay.date().getDayOfWeek() == DayOfWeek.SUNDAY;
    return new MassToServe(
        stay,
        new CountedDay(stay.date(), Portion.DAY, sunday, 1),
        sunday || stay.date().getDayOfWeek() == DayOfWeek.SATURDAY
            ? Occasion.PRECEPT
            : Occasion.OTHER,
        stay.start().atZone(ZoneOffset.UTC).getHour() < 9,
        language,
        usual,
        usual);
  }

  private static Priest atHome(int number, int churches) {
    Instant monday = SATURDAY.minusDays(5).atStartOfDay().toInstant(ZoneOffset.UTC);
    Instant from = monday.plus(Duration.ofDays(7L * number));
    return new Priest(
        id(number),
        number == 0 ? 1 : Priest.NO_BOUND_OF_HIS_OWN,
        new Permitted(2, 3),
        Set.of(),
        Set.of(),
        number < WEEKS ? List.of(new Absence(from, from.plus(Duration.ofDays(7)))) : List.of(),
        number % 3 == 0 ? Set.of("en", "es") : Set.of("en"),
        List.of(church(number % churches)));
  }

  private Priest priest(int number, int churches) {
    return new Priest(
        id(number),
        random.nextInt(3) == 0 ? 1 : Priest.NO_BOUND_OF_HIS_OWN,
        new Permitted(1 + random.nextInt(2), 1 + random.nextInt(3)),
        random.nextInt(5) == 0 ? Set.of(church(0), church(1)) : Set.of(),
        Set.of(),
        random.nextInt(4) == 0 ? List.of(absence()) : List.of(),
        random.nextBoolean() ? Set.of("es") : Set.of(),
        random.nextBoolean() ? List.of(church(random.nextInt(churches))) : List.of());
  }

  private Absence absence() {
    Instant from = SATURDAY.atTime(6, 0).plusHours(random.nextInt(36)).toInstant(ZoneOffset.UTC);
    return new Absence(from, from.plus(Duration.ofHours(1 + random.nextInt(12))));
  }

  private MassToServe mass(int number, int churches, int priests, boolean byLiturgy) {
    int step = random.nextInt(2 * 20);
    LocalDateTime start = SATURDAY.plusDays(step / 20).atTime(8, 0).plusMinutes(30L * (step % 20));
    LocalDate counted =
        byLiturgy && start.getHour() >= 16 ? start.toLocalDate().plusDays(1) : start.toLocalDate();
    boolean sunday = counted.getDayOfWeek().getValue() == 7;
    return new MassToServe(
        stay(number, random.nextInt(churches), start, 30 + 30 * random.nextInt(2)),
        new CountedDay(counted, Portion.DAY, sunday, 1),
        Occasion.values()[random.nextInt(Occasion.values().length)],
        start.getHour() < 9,
        random.nextInt(3) == 0 ? "es" : "",
        somebody(priests),
        somebody(priests));
  }

  private List<PriestId> somebody(int priests) {
    return random.nextBoolean() ? List.of(id(random.nextInt(priests))) : List.of();
  }

  private Engagement engagement(MassToServe mass, int priests) {
    return new Engagement(
        id(random.nextInt(priests)),
        mass.stay(),
        mass.day(),
        random.nextBoolean(),
        random.nextInt(2));
  }

  private Journeys journeys(int churches, int least, int more, boolean all) {
    List<Journey> ways = new ArrayList<>();
    for (int from = 0; from < churches; from++) {
      for (int to = 0; to < from; to++) {
        Duration way = Duration.ofMinutes(least + random.nextInt(more));
        if (all || random.nextInt(3) > 0) {
          ways.add(new Journey(church(from), church(to), way));
          ways.add(new Journey(church(to), church(from), way));
        }
      }
    }
    return Journeys.of(ways);
  }

  static PriestId id(int number) {
    return new PriestId(new UUID(2, number));
  }

  static ChurchId church(int number) {
    return new ChurchId(new UUID(3, number));
  }

  static Stay stay(int number, int church, LocalDateTime start, int minutes) {
    Instant from = start.toInstant(ZoneOffset.UTC);
    return new Stay(
        new MassId(new UUID(4, number)),
        church(church),
        start.toLocalDate(),
        from,
        from.plus(Duration.ofMinutes(minutes)));
  }
}
