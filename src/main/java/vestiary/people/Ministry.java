package vestiary.people;

import java.time.DayOfWeek;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import vestiary.vesting.ChurchId;

/**
 * What somebody serves. What was not said binds nobody.
 *
 * @param churches where; none means all
 * @param languages BCP 47, the best spoken first; none means not said
 * @param days usual days; none means any
 * @param mostADay how many Masses a day he wishes to say at most; 0 means not said
 * @param wishes in words; may be empty
 * @param ownSet what he wears of his own, in words; may be empty
 * @param permissions the one on file, or none
 */
public record Ministry(
    Set<ChurchId> churches,
    List<String> languages,
    Set<DayOfWeek> days,
    int mostADay,
    String wishes,
    String ownSet,
    List<Permission> permissions) {

  /** Of whom nothing was said. */
  public static final Ministry UNSAID =
      new Ministry(Set.of(), List.of(), Set.of(), 0, "", "", List.of());

  public Ministry {
    churches = Set.copyOf(churches);
    languages = List.copyOf(languages);
    days = Set.copyOf(days);
    permissions = List.copyOf(permissions);
  }

  /** The same, in that language where none was said: whoever serves here celebrates in it. */
  public Ministry orIn(String language) {
    return languages.isEmpty()
        ? new Ministry(churches, List.of(language), days, mostADay, wishes, ownSet, permissions)
        : this;
  }

  public boolean isAt(ChurchId church) {
    return churches.isEmpty() || churches.contains(church);
  }

  public boolean isOn(DayOfWeek day) {
    return days.isEmpty() || days.contains(day);
  }

  /** What the bishop has permitted him; empty where what the cluster has for all holds. */
  public Optional<Permission> findPermission() {
    return permissions.stream().findFirst();
  }
}
