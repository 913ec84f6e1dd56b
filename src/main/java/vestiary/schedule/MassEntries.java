package vestiary.schedule;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.people.Person;
import vestiary.problem.Asked;
import vestiary.vesting.Brings;
import vestiary.vesting.Ministers;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Role;
import vestiary.web.Entries;
import vestiary.web.Speech;

/** What stands in the form of a Mass: what is stored becomes entries, what was typed a request. */
final class MassEntries {

  /** The API says start where the form has a date and a time. */
  static final Map<String, String> NAMES = names();

  private static final List<String> OWN_FIELDS =
      List.of(
          "church",
          "date",
          "time",
          "minutes",
          "mass",
          "celebrant",
          "concelebrants",
          "deacons",
          "named",
          "bringsConcelebrants",
          "setOutMinutes",
          "note",
          "intention",
          "language");

  static final List<String> FIELDS = fields();

  private static final List<String> HIS_OWN =
      List.of(
          PieceKind.CHASUBLE.id(),
          PieceKind.STOLE.id(),
          PieceKind.ALB.id(),
          PieceKind.AMICE.id(),
          PieceKind.CINCTURE.id());

  private MassEntries() {}

  /** What was stored when the form was opened; what the form does not ask stays as it was. */
  record Before(Ministers ministers, boolean bishopFollows) {

    static final Before NOTHING = new Before(new Ministers(false, 0, 0, List.of()), false);

    static Before of(DatedMass mass) {
      return new Before(mass.ministers(), mass.ministers().bishop() && !mass.chosen().bishop());
    }
  }

  private static Map<String, String> names() {
    Map<String, String> names = new HashMap<>(MinistersEntries.names());
    names.put("start", "date");
    names.put("brings.count", "bringsConcelebrants");
    return Map.copyOf(names);
  }

  private static List<String> fields() {
    return Stream.concat(OWN_FIELDS.stream(), MinistersEntries.fields().stream()).toList();
  }

  /** The entries of a Mass that is stored. */
  static Entries from(DatedMass mass) {
    DatedMass.Chosen chosen = mass.chosen();
    int own = bringing(mass, Role.CONCELEBRANT);
    return MinistersEntries.with(Entries.empty(), mass.ministers())
        .with("church", mass.church().slug())
        .with("date", mass.date().toString())
        .with("time", Speech.clock(mass.start()))
        .with("minutes", String.valueOf(mass.length().toMinutes()))
        .with("mass", chosen.kind())
        .with("votiveOf", chosen.votiveOf())
        .with("leave", chosen.leave())
        .with("celebration", chosen.celebration())
        .with("colour", chosen.colour())
        .with("celebrant", mass.findCelebrant().map(Person::name).orElse(""))
        .with("concelebrants", String.valueOf(mass.concelebrants()))
        .with("named", mass.named().stream().map(Person::name).collect(Collectors.joining(", ")))
        .with("deacons", String.valueOf(mass.deacons()))
        .with("bringsPrincipal", String.valueOf(bringing(mass, Role.PRINCIPAL) > 0))
        .with("bringsConcelebrants", own == 0 ? "" : String.valueOf(own))
        .with("bishop", String.valueOf(mass.ministers().bishop()))
        .with(
            "setOutMinutes",
            chosen.setOutMinutes() < 0 ? "" : String.valueOf(chosen.setOutMinutes()))
        .with("note", chosen.note())
        .with("intention", chosen.intention())
        .with("language", chosen.language())
        .with("version", String.valueOf(chosen.version()));
  }

  /**
   * The request that the API would send; numbers that are none are noted as faults.
   *
   * @param before what is stored; what the form does not ask, such as a mitre that is brought,
   *     stays
   */
  static SaveMass.Request request(Entries typed, Before before, Asked asked) {
    return new SaveMass.Request(
        typed.text("church"),
        start(typed),
        asked.number("minutes", typed.text("minutes")),
        typed.text("mass"),
        typed.text("votiveOf"),
        typed.text("leave"),
        typed.text("celebration"),
        typed.text("colour"),
        typed.text("celebrant"),
        asked.number("concelebrants", typed.text("concelebrants")),
        asked.number("deacons", typed.text("deacons")),
        List.of(typed.text("named").split("[,;]")),
        brings(typed, before.ministers().brings(), asked),
        typed.isTicked("bishop") && !before.bishopFollows(),
        MinistersEntries.ministers(typed, before.ministers(), asked),
        MinistersEntries.also(typed),
        asked.number("setOutMinutes", typed.text("setOutMinutes")),
        typed.text("note"),
        typed.text("intention"),
        typed.text("language"),
        asked.number("version", typed.text("version")));
  }

  private static String start(Entries typed) {
    String date = typed.text("date").strip();
    String time = typed.text("time").strip();
    return date.isEmpty() || time.isEmpty() ? "" : date + "T" + time;
  }

  private static List<BringsValue> brings(Entries typed, List<Brings> before, Asked asked) {
    Integer others = asked.number("bringsConcelebrants", typed.text("bringsConcelebrants"));
    List<BringsValue> brings = new ArrayList<>();
    brings.addAll(own(Role.PRINCIPAL, typed.isTicked("bringsPrincipal") ? 1 : 0, before));
    brings.addAll(own(Role.CONCELEBRANT, others == null ? 0 : others, before));
    before.stream()
        .filter(b -> b.role() != Role.PRINCIPAL && b.role() != Role.CONCELEBRANT)
        .map(BringsValue::from)
        .forEach(brings::add);
    return brings;
  }

  private static List<BringsValue> own(Role role, int count, List<Brings> before) {
    if (count == 0) {
      return List.of();
    }
    List<Brings> known = before.stream().filter(b -> b.role() == role).toList();
    return known.stream().mapToInt(Brings::count).sum() == count
        ? known.stream().map(BringsValue::from).toList()
        : List.of(new BringsValue(role.id(), count, HIS_OWN));
  }

  private static int bringing(DatedMass mass, Role role) {
    return mass.brings().stream().filter(b -> b.role() == role).mapToInt(Brings::count).sum();
  }
}
