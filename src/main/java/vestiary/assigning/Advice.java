package vestiary.assigning;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import vestiary.allocation.celebrant.CountedDay;
import vestiary.allocation.celebrant.MassToServe;
import vestiary.allocation.celebrant.Pace;
import vestiary.allocation.celebrant.PriestId;
import vestiary.allocation.celebrant.WaysOut;
import vestiary.allocation.celebrant.WhyNot;
import vestiary.schedule.DatedMass;

/**
 * Who could celebrate one Mass, all else staying as it is.
 *
 * @param mass as it is or is to be
 * @param priests of the cluster, by surname
 * @param ways out; empty if somebody can
 */
record Advice(Scene scene, MassToServe mass, Pace pace, List<Advised> priests, Ways ways) {

  Advice {
    priests = List.copyOf(priests);
  }

  /**
   * One priest.
   *
   * @param why he cannot; empty if he can
   * @param counted as the cluster counts
   * @param otherwise as it would be counted by the other kind of day
   * @param drive from home and back, or from and to what else he has that day, more than without
   *     it; zero where nothing is known
   * @param inItsLanguage whether he celebrates in the language of the Mass
   */
  record Advised(
      PriestId priest,
      List<WhyNot> why,
      Count counted,
      Count otherwise,
      Duration drive,
      boolean inItsLanguage) {

    Advised {
      why = List.copyOf(why);
    }

    boolean can() {
      return why.isEmpty();
    }

    /** Whether it depends on how days are counted whether he can. */
    boolean dependsOnCounting() {
      return counted.tooMany() != otherwise.tooMany();
    }
  }

  /**
   * Which of his Masses it would be.
   *
   * @param tooMany whether it is more than he may, or takes
   */
  record Count(int number, CountedDay day, boolean tooMany) {}

  /** What can be done where nobody can. */
  record Ways(
      List<WaysOut.OtherTime> times,
      List<WaysOut.Exchange> exchanges,
      List<WaysOut.Neighbour> neighbours) {

    static final Ways NONE = new Ways(List.of(), List.of(), List.of());

    Ways {
      times = List.copyOf(times);
      exchanges = List.copyOf(exchanges);
      neighbours = List.copyOf(neighbours);
    }
  }

  /** The Mass as the schedule has it, or is to have it. */
  DatedMass dated() {
    return scene.find(mass.id()).orElseThrow();
  }

  /** What is said of one priest; empty if he is none of those of the cluster. */
  Optional<Advised> find(PriestId priest) {
    return priests.stream().filter(one -> one.priest().equals(priest)).findFirst();
  }

  /** Those who can. */
  List<Advised> able() {
    return priests.stream().filter(Advised::can).toList();
  }
}
