package vestiary.times;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/**
 * Mass times as they are published: nothing else of the schedule is shown to those who have not
 * signed in.
 *
 * @param masses by date, hour, then church
 * @param gaps Masses of the usual times that are not said, likewise
 */
record PublicTimes(List<Mass> masses, List<Gap> gaps) {

  PublicTimes {
    masses = List.copyOf(masses);
    gaps = List.copyOf(gaps);
  }

  /**
   * @param slug short name in addresses
   */
  record Church(String slug, String name, String place) {}

  /**
   * One Mass or other liturgy.
   *
   * @param id that of the Mass
   * @param minutes how long it lasts
   * @param ofTheDay whether it is the Mass of the day, or that of the next on its evening
   * @param what in plain words, by language
   * @param celebrant empty unless the cluster names them in public
   * @param usual where it differs from the usual times, else none: what it would be by them; with
   *     itself for a Mass that is besides them
   */
  record Mass(
      UUID id,
      Church church,
      LocalDate date,
      LocalTime time,
      int minutes,
      boolean ofTheDay,
      Map<String, String> what,
      String celebrant,
      List<Usual> usual) {
    Mass {
      what = Map.copyOf(what);
      usual = List.copyOf(usual);
    }

    boolean differs() {
      return !usual.isEmpty();
    }
  }

  /**
   * The usual time of a Mass that is said otherwise.
   *
   * @param extra whether there is no usual one
   */
  record Usual(boolean extra, LocalDate date, LocalTime time, Church church) {}

  /** A Mass of the usual times that is not said. */
  record Gap(Church church, LocalDate date, LocalTime time) {}
}
