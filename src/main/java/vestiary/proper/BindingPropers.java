package vestiary.proper;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import vestiary.calendar.Proper;
import vestiary.vesting.ChurchId;

/**
 * Which propers bind whom, of all that are entered. The wider come before the narrower and title
 * and dedication last, so that a church bears its title on the date that its diocese has set.
 * Source: UNLY 49, 59.
 */
public final class BindingPropers {

  private BindingPropers() {}

  /** What every church keeps. */
  public static List<Proper> all(List<EnteredProper> entered) {
    return entered.stream()
        .filter(EnteredProper::everywhere)
        .flatMap(proper -> proper.propers().stream())
        .toList();
  }

  /**
   * What one church keeps. Where it has its own Sunday, or its own date in a year, for a
   * celebration, that of all churches does not bind it.
   *
   * @param own its title and its dedication
   */
  public static List<Proper> on(ChurchId church, List<EnteredProper> entered, List<Proper> own) {
    List<Proper> narrow =
        entered.stream()
            .filter(proper -> !proper.everywhere() && proper.binds(church))
            .flatMap(proper -> proper.propers().stream())
            .toList();
    List<Proper> binding = new ArrayList<>();
    all(entered).stream().filter(isStillHeld(narrow)).forEach(binding::add);
    binding.addAll(narrow);
    binding.addAll(own);
    return List.copyOf(binding);
  }

  private static Predicate<Proper> isStillHeld(List<Proper> narrow) {
    List<String> settled = narrow.stream().flatMap(BindingPropers::settles).toList();
    return wide -> settles(wide).noneMatch(settled::contains);
  }

  /** What can be settled once only; two places of one celebration go by the higher instead. */
  private static Stream<String> settles(Proper proper) {
    if (proper instanceof Proper.OnSunday sunday) {
      return Stream.of("sunday of " + sunday.celebration());
    }
    return proper instanceof Proper.KeptOn kept
        ? Stream.of(kept.date().getYear() + " of " + kept.celebration())
        : Stream.empty();
  }
}
