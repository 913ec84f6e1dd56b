package vestiary.assigning;

import java.time.Duration;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import vestiary.allocation.celebrant.CountedDay;
import vestiary.allocation.celebrant.Engagement;
import vestiary.allocation.celebrant.MassToServe;
import vestiary.allocation.celebrant.Occasion;
import vestiary.allocation.celebrant.Pace;
import vestiary.allocation.celebrant.Precept;
import vestiary.allocation.celebrant.Priest;
import vestiary.allocation.celebrant.PriestId;
import vestiary.allocation.celebrant.Question;
import vestiary.calendar.Day;
import vestiary.calendar.MassKind;
import vestiary.cluster.CountBy;
import vestiary.people.Person;
import vestiary.planning.Serving;
import vestiary.schedule.DatedMass;
import vestiary.vesting.MassId;

/** Puts the question of a scene to the core: which Masses are open, and what binds each priest. */
final class Ask {

  /** A Mass before it is an early one (common practice, no source). */
  static final LocalTime EARLY = LocalTime.of(9, 0);

  /** A church that is so far from home is a far one (common practice, no source). */
  static final Duration FAR = Duration.ofMinutes(20);

  /** Rites for certain persons at an hour that is settled with them. */
  private static final Set<MassKind> RITES =
      Set.copyOf(EnumSet.range(MassKind.WEDDING, MassKind.DEDICATION));

  private final Scene scene;
  private final CountBy countBy;
  private final Predicate<DatedMass> open;

  private Ask(Scene scene, CountBy countBy, Predicate<DatedMass> open) {
    this.scene = scene;
    this.countBy = countBy;
    this.open = open;
  }

  /**
   * The question.
   *
   * @param open which of the Masses that can be divided at all are to be
   */
  static Question of(Scene scene, CountBy countBy, Predicate<DatedMass> open) {
    return new Ask(scene, countBy, open).question(none -> false);
  }

  /** All that is ahead on the dates that were asked for, counted as the cluster counts. */
  static Question ofAll(Scene scene) {
    return of(scene, scene.cluster().policies().countBy(), scene::isAhead);
  }

  /** Nothing to divide: what everybody does in any case. */
  static Question ofNothing(Scene scene) {
    return of(scene, scene.cluster().policies().countBy(), none -> false);
  }

  /** All that can be divided, and one Mass whatever it is. */
  static Question about(Scene scene, CountBy countBy, MassId mass) {
    return new Ask(scene, countBy, one -> true).question(one -> one.id().equals(mass));
  }

  /**
   * Whether a priest of the cluster can be named for it: a Mass at which no bishop presides, and
   * nobody from outside.
   */
  static boolean isToDivide(DatedMass mass, Scene scene) {
    return mass.kind().isMass()
        && !mass.ministers().bishop()
        && (mass.findCelebrant().isEmpty() || scene.findNamed(mass).isPresent());
  }

  private Question question(Predicate<DatedMass> inAnyCase) {
    List<DatedMass> divided =
        scene.masses().stream()
            .filter(mass -> inAnyCase.test(mass) || isToDivide(mass, scene) && open.test(mass))
            .toList();
    Question without =
        new Question(
            scene.priests(),
            divided.stream().map(this::toServe).toList(),
            List.of(),
            scene.journeys(),
            Pace.USUAL,
            FAR);
    List<Engagement> engagements = new ArrayList<>();
    for (DatedMass mass : scene.masses()) {
      Stream<Person> people =
          divided.contains(mass) ? mass.named().stream() : mass.people().stream();
      people
          .flatMap(person -> without.find(new PriestId(person.id())).stream())
          .map(priest -> engagement(priest, mass, without))
          .forEach(engagements::add);
    }
    return new Question(
        without.priests(),
        without.masses(),
        engagements,
        without.journeys(),
        without.pace(),
        without.far());
  }

  private MassToServe toServe(DatedMass mass) {
    List<PriestId> named = scene.findNamed(mass).stream().toList();
    Optional<PriestId> asked =
        Optional.ofNullable(scene.asked().get(mass.id())).filter(scene::isPriest);
    return new MassToServe(
        Serving.stay(mass),
        counted(mass),
        occasion(mass),
        mass.start().toLocalTime().isBefore(EARLY),
        language(mass),
        asked.map(List::of).orElse(named),
        named);
  }

  /** That of its community: the first of the cluster unless another is said. */
  private String language(DatedMass mass) {
    String said = mass.chosen().language();
    return said.isEmpty() ? scene.cluster().language().toLanguageTag() : said;
  }

  private Occasion occasion(DatedMass mass) {
    boolean obliges =
        Precept.isFulfilledBy(
            mass.start().toLocalDateTime(),
            civil(mass, 0),
            civil(mass, 1),
            scene.cluster().calendar().evenings().from());
    if (obliges) {
      return Occasion.PRECEPT;
    }
    return RITES.contains(mass.kind()) ? Occasion.RITE : Occasion.OTHER;
  }

  private Engagement engagement(Priest priest, DatedMass mass, Question question) {
    MassToServe asServed = toServe(mass);
    boolean his = mass.celebrants().stream().anyMatch(p -> p.id().equals(priest.id().value()));
    return new Engagement(
        priest.id(),
        asServed.stay(),
        asServed.day(),
        mass.kind().isMass(),
        his && mass.kind().isMass() && scene.isWithin(mass)
            ? question.burden(priest, asServed)
            : 0);
  }

  private CountedDay counted(DatedMass mass) {
    return Serving.counted(mass, countBy, civil(mass, 0));
  }

  private Day civil(DatedMass mass, int later) {
    return scene.days().get(mass.church()).get(mass.date().plusDays(later));
  }
}
