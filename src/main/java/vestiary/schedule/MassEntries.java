package vestiary.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import vestiary.people.Person;
import vestiary.problem.Asked;
import vestiary.vesting.Brings;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Role;
import vestiary.web.English;
import vestiary.web.Entries;

/** What stands in the form of a Mass: what is stored becomes entries, what was typed a request. */
final class MassEntries {

  /** The API says start where the form has a date and a time. */
  static final Map<String, String> NAMES =
      Map.of("start", "date", "brings.count", "bringsConcelebrants");

  static final List<String> FIELDS =
      List.of(
          "church",
          "date",
          "time",
          "minutes",
          "mass",
          "celebrant",
          "concelebrants",
          "deacons",
          "bringsConcelebrants",
          "setOutMinutes",
          "note",
          "intention");

  private static final List<String> HIS_OWN =
      List.of(PieceKind.CHASUBLE.id(), PieceKind.STOLE.id());

  private MassEntries() {}

  /** The entries of a Mass that is stored. */
  static Entries from(DatedMass mass) {
    DatedMass.Chosen chosen = mass.chosen();
    int own = bringing(mass, Role.CONCELEBRANT);
    return Entries.empty()
        .with("church", mass.church().slug())
        .with("date", mass.date().toString())
        .with("time", English.clock(mass.start()))
        .with("minutes", String.valueOf(mass.length().toMinutes()))
        .with("mass", chosen.kind())
        .with("votiveOf", chosen.votiveOf())
        .with("leave", chosen.leave())
        .with("celebration", chosen.celebration())
        .with("colour", chosen.colour())
        .with("celebrant", mass.findCelebrant().map(Person::name).orElse(""))
        .with("concelebrants", String.valueOf(mass.concelebrants()))
        .with("deacons", String.valueOf(mass.deacons()))
        .with("bringsPrincipal", String.valueOf(bringing(mass, Role.PRINCIPAL) > 0))
        .with("bringsConcelebrants", own == 0 ? "" : String.valueOf(own))
        .with(
            "setOutMinutes",
            chosen.setOutMinutes() < 0 ? "" : String.valueOf(chosen.setOutMinutes()))
        .with("note", chosen.note())
        .with("intention", chosen.intention())
        .with("version", String.valueOf(chosen.version()));
  }

  /**
   * The request that the API would send; numbers that are none are noted as faults.
   *
   * @param before what is brought already; what the form does not ask, such as a mitre, stays
   */
  static SaveMass.Request request(Entries typed, List<Brings> before, Asked asked) {
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
        brings(typed, before, asked),
        asked.number("setOutMinutes", typed.text("setOutMinutes")),
        typed.text("note"),
        typed.text("intention"),
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
