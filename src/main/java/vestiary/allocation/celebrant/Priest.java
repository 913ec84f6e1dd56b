package vestiary.allocation.celebrant;

import java.time.DayOfWeek;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import vestiary.vesting.ChurchId;

/**
 * A priest among whom Masses may be divided.
 *
 * @param mostADay Masses that he takes on one counted day, 1 or more; what the law and the leave on
 *     file allow is another matter
 * @param permitted by the leave on file
 * @param churches where he serves; none means all
 * @param days of the week on which he serves; none means all
 * @param absences in any order
 * @param languages in which he celebrates, as language tags
 * @param homes the church he sets out from; empty if it is not known, else one
 */
public record Priest(
    PriestId id,
    int mostADay,
    Permitted permitted,
    Set<ChurchId> churches,
    Set<DayOfWeek> days,
    List<Absence> absences,
    Set<String> languages,
    List<ChurchId> homes) {

  /** Who sets no bound of his own: no law allows more than three. */
  public static final int NO_BOUND_OF_HIS_OWN = 9;

  public Priest {
    Objects.requireNonNull(id, "id");
    if (mostADay < 1) {
      throw new IllegalArgumentException("A priest takes one Mass a day or more, not " + mostADay);
    }
    Objects.requireNonNull(permitted, "permitted");
    churches = Set.copyOf(churches);
    days = Set.copyOf(days);
    absences = List.copyOf(absences);
    languages = Set.copyOf(languages);
    homes = List.copyOf(homes);
  }

  /** How many Masses he takes on a day: no more than he may, and no more than he will. */
  public int most(CountedDay day) {
    return Math.min(mostADay, permitted.most(day));
  }

  /** The same, away at one more time. */
  public Priest away(Absence absence) {
    return new Priest(
        id,
        mostADay,
        permitted,
        churches,
        days,
        Stream.concat(absences.stream(), Stream.of(absence)).toList(),
        languages,
        homes);
  }

  /** Whether he is away at any moment from {@code start}, included, to {@code end}, excluded. */
  public boolean isAway(Instant start, Instant end) {
    return absences.stream().anyMatch(absence -> absence.meets(start, end));
  }

  /** Whether he serves in that church, and on that day of the week. */
  boolean serves(Stay stay) {
    return (churches.isEmpty() || churches.contains(stay.church()))
        && (days.isEmpty() || days.contains(stay.date().getDayOfWeek()));
  }

  /** The church he sets out from, if it is known. */
  public Optional<ChurchId> findHome() {
    return homes.stream().findFirst();
  }

  /** Whether he celebrates in that language; a Mass of which none is said is for everybody. */
  public boolean celebratesIn(String language) {
    return language.isEmpty() || languages.contains(language);
  }
}
