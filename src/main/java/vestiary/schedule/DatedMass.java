package vestiary.schedule;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import vestiary.calendar.Colour;
import vestiary.calendar.MassKind;
import vestiary.calendar.MassOption;
import vestiary.calendar.MassRuling;
import vestiary.calendar.Rank;
import vestiary.cluster.Church;
import vestiary.people.Person;
import vestiary.vesting.Brings;
import vestiary.vesting.MassColour;
import vestiary.vesting.MassId;
import vestiary.vesting.MassTime;
import vestiary.vesting.Ministers;
import vestiary.vesting.Occasion;
import vestiary.vesting.Role;
import vestiary.vesting.Sacristy;
import vestiary.vesting.VestedMass;

/**
 * One Mass or other liturgy, with what was chosen for it and what follows from the calendar.
 *
 * @param start in the cluster's time zone
 * @param ruling what the norms say of this kind of Mass on that day
 * @param option the celebration that is chosen, or the one kept unless another is
 * @param colour the one that is chosen, or the usual one
 * @param named concelebrants and deacons who are known by name; they are counted in the numbers
 * @param ministers who vests
 * @param chosen what people chose; the rest follows
 * @param usual when and where its pattern has it
 * @param takenOver the Mass for whose sake it is cancelled; at most one, empty if it is said or
 *     simply not said
 * @param serving lay ministers who are known by name, in the order of their roles; servers and
 *     acolytes among them are counted in the numbers
 */
public record DatedMass(
    MassId id,
    Church church,
    ZonedDateTime start,
    Duration length,
    MassRuling ruling,
    MassOption option,
    Colour colour,
    List<Person> celebrants,
    List<Person> named,
    Ministers ministers,
    Chosen chosen,
    Usual usual,
    List<TakenOver> takenOver,
    List<WhoServes> serving) {

  private static final Set<Rank> FESTIVE =
      Set.of(Rank.SOLEMNITY, Rank.FEAST_OF_THE_LORD, Rank.FEAST);

  public DatedMass {
    celebrants = List.copyOf(celebrants);
    named = List.copyOf(named);
    takenOver = List.copyOf(takenOver);
    serving = List.copyOf(serving);
  }

  /**
   * What people chose; empty text and zero mean that nothing was.
   *
   * @param setOutMinutes -1 if none was chosen
   * @param language BCP 47; empty for the first of the cluster
   * @param bishop whether a bishop was said to preside, which also follows from the celebrant
   * @param celebrantLost whether he was removed for good and nobody is named in his place
   */
  public record Chosen(
      String kind,
      String votiveOf,
      String leave,
      String celebration,
      String colour,
      int setOutMinutes,
      String note,
      String intention,
      String language,
      boolean ofPattern,
      boolean cancelled,
      boolean bishop,
      boolean celebrantLost,
      int version) {

    /** With another colour; empty if none is chosen. */
    Chosen in(String other) {
      return new Chosen(
          kind,
          votiveOf,
          leave,
          celebration,
          other,
          setOutMinutes,
          note,
          intention,
          language,
          ofPattern,
          cancelled,
          bishop,
          celebrantLost,
          version);
    }
  }

  public MassKind kind() {
    return ruling.kind();
  }

  /** The principal celebrant, or empty if none is named. */
  public Optional<Person> findCelebrant() {
    return celebrants.stream().findFirst();
  }

  /** All who are known by name: the celebrant first, each once. */
  public List<Person> people() {
    return Stream.concat(celebrants.stream(), named.stream()).distinct().toList();
  }

  /** As what somebody serves; empty if not named as a lay minister. */
  public Optional<ServesAs> findServing(UUID person) {
    return serving.stream()
        .filter(one -> one.person().id().equals(person))
        .map(WhoServes::as)
        .findFirst();
  }

  /** Whether somebody is named at all, to celebrate, assist or serve. */
  public boolean isNamed(UUID person) {
    return people().stream().anyMatch(one -> one.id().equals(person))
        || findServing(person).isPresent();
  }

  /** Whether any moment belongs to both. */
  public boolean overlaps(DatedMass other) {
    return start.isBefore(other.end()) && other.start.isBefore(end());
  }

  public ZonedDateTime end() {
    return start.plus(length);
  }

  /** The civil date on which it begins. */
  public LocalDate date() {
    return start.toLocalDate();
  }

  /** Whether it is not said. */
  public boolean isCancelled() {
    return chosen.cancelled();
  }

  /** Whether it is at another hour or in another church than its pattern has it. */
  public boolean isMoved() {
    return usual.ofPattern() && !usual.is(start, church);
  }

  /** The Mass for whose sake it is cancelled. */
  public Optional<TakenOver> findTakenOver() {
    return takenOver.stream().findFirst();
  }

  /** Whether its colour is one that the norms allow for it. */
  public boolean isColourLawful() {
    return option.colours().contains(colour);
  }

  /** Whether other lawful colours are left to choose from, none being chosen. */
  public boolean isColourOpen() {
    return chosen.colour().isEmpty() && option.colours().size() > 1;
  }

  /** The same Mass in another colour. */
  public DatedMass with(Colour other) {
    return new DatedMass(
        id,
        church,
        start,
        length,
        ruling,
        option,
        other,
        celebrants,
        named,
        ministers,
        chosen,
        usual,
        takenOver,
        serving);
  }

  /** The same Mass, one more of that role vesting in what the pool gives. */
  public DatedMass withOneMore(Role role) {
    return new DatedMass(
        id,
        church,
        start,
        length,
        ruling,
        option,
        colour,
        celebrants,
        named,
        new Ministers(
            ministers.presider(),
            ministers.concelebrants() + (role == Role.CONCELEBRANT ? 1 : 0),
            ministers.deacons() + (role == Role.DEACON ? 1 : 0),
            ministers.brings(),
            ministers.further(),
            ministers.also()),
        chosen,
        usual,
        takenOver,
        serving);
  }

  /** How many concelebrate, 0 or more, the principal celebrant not among them. */
  public int concelebrants() {
    return ministers.concelebrants();
  }

  public int deacons() {
    return ministers.deacons();
  }

  public List<Brings> brings() {
    return ministers.brings();
  }

  /** Whether it belongs to a Sunday or a holy day of obligation, evening before included. */
  public boolean isOnHolyDay() {
    return ruling.day().obligation() || ruling.day().date().getDayOfWeek() == DayOfWeek.SUNDAY;
  }

  /** What the norms of vesture ask about it. */
  public VestedMass toVestedMass() {
    return new VestedMass(
        id,
        church.id(),
        kind(),
        time(),
        new MassColour(
            colour,
            option.colours().contains(Colour.ROSE),
            FESTIVE.contains(option.celebration().rank())),
        ministers,
        new Occasion(ruling.day().season(), option.celebration().rank()));
  }

  private MassTime time() {
    return new MassTime(
        start.toInstant(),
        length,
        isOnHolyDay(),
        new Sacristy(church.setOut(), church.clearance()),
        Duration.ofMinutes(Math.max(0, chosen.setOutMinutes())));
  }
}
