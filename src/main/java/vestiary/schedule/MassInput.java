package vestiary.schedule;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import vestiary.calendar.Term;
import vestiary.problem.Asked;
import vestiary.problem.FieldFault;
import vestiary.vesting.Brings;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Role;
import vestiary.web.English;
import vestiary.web.Field;

/**
 * The form of a Mass as it stands in the browser: every field as text, kept even if it is wrong,
 * and beside it what is wrong.
 */
record MassInput(Map<String, String> fields, Map<String, String> errors) {

  /** Fields that the form has whatever the calendar offers. */
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

  /** What those bring who bring their own, as far as the form asks. */
  private static final List<String> OWN = List.of(PieceKind.CHASUBLE.id(), PieceKind.STOLE.id());

  MassInput {
    fields = Map.copyOf(fields);
    errors = Map.copyOf(errors);
  }

  static MassInput of(Map<String, String> typed) {
    return new MassInput(typed, Map.of());
  }

  /** The form of a Mass that is entered already. */
  static MassInput from(DatedMass mass) {
    DatedMass.Chosen chosen = mass.chosen();
    Map<String, String> fields = new LinkedHashMap<>();
    fields.put("church", mass.church().slug());
    fields.put("date", mass.date().toString());
    fields.put("time", English.clock(mass.start()));
    fields.put("minutes", String.valueOf(mass.length().toMinutes()));
    fields.put("mass", chosen.kind());
    fields.put("votiveOf", chosen.votiveOf());
    fields.put("leave", chosen.leave());
    fields.put("celebration", chosen.celebration());
    fields.put("colour", chosen.colour());
    fields.put("celebrant", mass.findCelebrant().map(p -> p.name()).orElse(""));
    fields.put("concelebrants", String.valueOf(mass.concelebrants()));
    fields.put("deacons", String.valueOf(mass.deacons()));
    fields.put("bringsPrincipal", bringing(mass, Role.PRINCIPAL) > 0 ? "true" : "");
    int own = bringing(mass, Role.CONCELEBRANT);
    fields.put("bringsConcelebrants", own == 0 ? "" : String.valueOf(own));
    fields.put(
        "setOutMinutes", chosen.setOutMinutes() < 0 ? "" : String.valueOf(chosen.setOutMinutes()));
    fields.put("note", chosen.note());
    fields.put("intention", chosen.intention());
    return new MassInput(fields, Map.of());
  }

  MassInput with(List<FieldFault> faults) {
    return new MassInput(
        fields,
        faults.stream()
            .collect(
                Collectors.toMap(
                    f -> fieldOf(f.field()), FieldFault::besideField, (a, b) -> a + " " + b)));
  }

  String text(String field) {
    return fields.getOrDefault(field, "");
  }

  String error(String field) {
    return errors.getOrDefault(field, "");
  }

  Field field(String name) {
    return new Field(text(name), error(name));
  }

  String mass() {
    return text("mass");
  }

  String votiveOf() {
    return text("votiveOf");
  }

  String leave() {
    return text("leave");
  }

  String celebration() {
    return text("celebration");
  }

  String colour() {
    return text("colour");
  }

  boolean bringsPrincipal() {
    return text("bringsPrincipal").equals("true");
  }

  /**
   * The request that the API would send; numbers that are none are noted as faults.
   *
   * @param before what is brought already; what the form does not ask stays as it was
   */
  SaveMass.Request toRequest(List<Brings> before, Asked asked) {
    String version = text("version");
    return new SaveMass.Request(
        text("church"),
        start(),
        asked.number("minutes", text("minutes")),
        mass(),
        votiveOf(),
        leave(),
        celebration(),
        colour(),
        text("celebrant"),
        asked.number("concelebrants", text("concelebrants")),
        asked.number("deacons", text("deacons")),
        brings(before, asked),
        asked.number("setOutMinutes", text("setOutMinutes")),
        text("note"),
        text("intention"),
        version.isEmpty() ? null : asked.number("version", version));
  }

  private String start() {
    return text("date").isBlank() || text("time").isBlank()
        ? ""
        : text("date").strip() + "T" + text("time").strip();
  }

  private List<BringsValue> brings(List<Brings> before, Asked asked) {
    Integer typed = asked.number("bringsConcelebrants", text("bringsConcelebrants"));
    int concelebrants = typed == null ? 0 : typed;
    List<BringsValue> brings = new ArrayList<>();
    brings.addAll(own(Role.PRINCIPAL, bringsPrincipal() ? 1 : 0, before));
    brings.addAll(own(Role.CONCELEBRANT, concelebrants, before));
    before.stream()
        .filter(b -> b.role() != Role.PRINCIPAL && b.role() != Role.CONCELEBRANT)
        .map(MassInput::value)
        .forEach(brings::add);
    return brings;
  }

  private static List<BringsValue> own(Role role, int count, List<Brings> before) {
    List<Brings> known = before.stream().filter(b -> b.role() == role).toList();
    if (count == 0) {
      return List.of();
    }
    return known.stream().mapToInt(Brings::count).sum() == count
        ? known.stream().map(MassInput::value).toList()
        : List.of(new BringsValue(role.id(), count, OWN));
  }

  private static BringsValue value(Brings brings) {
    return new BringsValue(
        brings.role().id(),
        brings.count(),
        brings.kinds().stream().map(Term::id).sorted().toList());
  }

  private static int bringing(DatedMass mass, Role role) {
    return mass.brings().stream().filter(b -> b.role() == role).mapToInt(Brings::count).sum();
  }

  /** The API says start where the form has a date and a time. */
  private static String fieldOf(String field) {
    return switch (field) {
      case "start" -> "date";
      case "brings.count" -> "bringsConcelebrants";
      default -> field;
    };
  }
}
