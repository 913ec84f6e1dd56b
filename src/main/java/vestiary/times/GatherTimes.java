package vestiary.times;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import vestiary.calendar.MassKind;
import vestiary.calendar.Rank;
import vestiary.cluster.Church;
import vestiary.cluster.ReadCluster;
import vestiary.schedule.DatedMass;
import vestiary.schedule.ReadMasses;
import vestiary.schedule.ReadUsualTimes;
import vestiary.schedule.UsualTime;
import vestiary.telling.SettleTelling;
import vestiary.telling.Tongue;

/** Gathers from the schedule, as it is now, what people are to be told. */
@ApplicationScoped
@Transactional
class GatherTimes {

  private final ReadMasses masses;
  private final ReadUsualTimes usual;
  private final ReadCluster cluster;
  private final SettleTelling settings;

  GatherTimes(
      ReadMasses masses, ReadUsualTimes usual, ReadCluster cluster, SettleTelling settings) {
    this.masses = masses;
    this.usual = usual;
    this.cluster = cluster;
    this.settings = settings;
  }

  /**
   * The times of these dates.
   *
   * @param first first date in the cluster's zone, included
   * @param last last date, included
   */
  PublicTimes of(LocalDate first, LocalDate last) {
    Map<UUID, Church> churches =
        cluster.churches().stream()
            .collect(Collectors.toMap(c -> c.id().value(), Function.identity()));
    List<DatedMass> said = masses.between(first, last);
    List<UsualTime> recurring = usual.between(first, last);
    Map<UUID, UsualTime> byMass =
        recurring.stream()
            .collect(Collectors.toMap(one -> one.mass().value(), Function.identity()));
    boolean naming = settings.read().namesPublic();
    List<PublicTimes.Gap> gaps =
        recurring.stream()
            .filter(UsualTime::cancelled)
            .filter(one -> said.stream().noneMatch(mass -> takesItsPlace(mass, one)))
            .map(one -> gap(one, churches))
            .sorted(
                Comparator.comparing(PublicTimes.Gap::date).thenComparing(PublicTimes.Gap::time))
            .toList();
    return InsteadOf.pair(
        new PublicTimes(
            said.stream().map(mass -> mass(mass, byMass, churches, naming)).toList(), gaps));
  }

  /** Whether another Mass is said in the same church at the very hour. */
  private static boolean takesItsPlace(DatedMass mass, UsualTime usual) {
    return mass.church().id().value().equals(usual.church())
        && mass.start().toInstant().equals(usual.usual().toInstant());
  }

  private static PublicTimes.Gap gap(UsualTime one, Map<UUID, Church> churches) {
    return new PublicTimes.Gap(
        church(churches.get(one.church())), one.usual().toLocalDate(), one.usual().toLocalTime());
  }

  private static PublicTimes.Mass mass(
      DatedMass mass, Map<UUID, UsualTime> byMass, Map<UUID, Church> churches, boolean naming) {
    return new PublicTimes.Mass(
        mass.id().value(),
        church(mass.church()),
        mass.date(),
        mass.start().toLocalTime(),
        (int) mass.length().toMinutes(),
        mass.kind() == MassKind.OF_THE_DAY || mass.kind() == MassKind.ANTICIPATED,
        what(mass),
        naming ? mass.findCelebrant().map(p -> p.calledName()).orElse("") : "",
        differing(mass, byMass.get(mass.id().value()), churches));
  }

  /** One that was entered for a day alone, or stands elsewhere than its pattern has it. */
  private static List<PublicTimes.Usual> differing(
      DatedMass mass, UsualTime usual, Map<UUID, Church> churches) {
    if (usual == null) {
      return mass.chosen().ofPattern()
          ? List.of()
          : List.of(
              new PublicTimes.Usual(
                  true, mass.date(), mass.start().toLocalTime(), church(mass.church())));
    }
    boolean same =
        usual.usual().toInstant().equals(mass.start().toInstant())
            && usual.church().equals(mass.church().id().value());
    ZonedDateTime by = usual.usual();
    return same
        ? List.of()
        : List.of(
            new PublicTimes.Usual(
                false, by.toLocalDate(), by.toLocalTime(), church(churches.get(usual.church()))));
  }

  private static PublicTimes.Church church(Church church) {
    return new PublicTimes.Church(church.slug(), church.name(), church.place());
  }

  private static Map<String, String> what(DatedMass mass) {
    Map<String, String> what = new LinkedHashMap<>();
    Tongue.ALL.forEach(locale -> what.put(locale.toLanguageTag(), said(mass, Tongue.of(locale))));
    return what;
  }

  private static String said(DatedMass mass, Tongue tongue) {
    return tongue.inLanguage(plain(mass, tongue), mass);
  }

  private static String plain(DatedMass mass, Tongue tongue) {
    String celebration = mass.option().celebration().name().in(tongue.locale());
    Rank rank = mass.option().celebration().rank();
    boolean sunday = Tongue.isOfSunday(mass);
    if (mass.kind() == MassKind.ANTICIPATED) {
      return sunday
          ? tongue.say("people.sunday-evening-before")
          : tongue.say("people.vigil-mass", celebration);
    }
    if (mass.kind() == MassKind.OF_THE_DAY) {
      boolean named = !sunday && (rank == Rank.SOLEMNITY || rank == Rank.FEAST);
      String plain = tongue.say(sunday ? "people.sunday-mass" : "people.mass");
      return named ? plain + ", " + celebration : plain;
    }
    return tongue.sentence(tongue.say("kind." + mass.kind().id()));
  }
}
