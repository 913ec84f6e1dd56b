package vestiary.reservation;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.calendar.Colour;
import vestiary.calendar.MassKind;
import vestiary.cluster.ReadCluster;
import vestiary.problem.Asked;
import vestiary.schedule.SaveMass;
import vestiary.web.Choice;
import vestiary.web.Entries;
import vestiary.web.Frames;
import vestiary.web.Speech;

/** The few questions about a Mass that is not in the schedule yet, and their answers. */
@ApplicationScoped
class ToBeForm {

  /** What the form sends, in its order. */
  static final List<String> FIELDS =
      List.of(
          "church",
          "date",
          "time",
          "minutes",
          "liturgy",
          "massColour",
          "celebrant",
          "bishop",
          "concelebrants",
          "deacons");

  /** The form's names of what the schedule calls otherwise. */
  static final Map<String, String> NAMES =
      Map.of("start", "time", "mass", "liturgy", "colour", "massColour");

  private final Frames frames;
  private final ReadCluster cluster;
  private final CurrentVisitor visitor;

  ToBeForm(Frames frames, ReadCluster cluster, CurrentVisitor visitor) {
    this.frames = frames;
    this.cluster = cluster;
    this.visitor = visitor;
  }

  @Transactional
  ToBeView view(Entries typed, String problem) {
    return new ToBeView(
        frames.of("week", "/reservations/new"),
        problem,
        typed.choice(
            "church",
            cluster.churches().stream()
                .filter(one -> visitor.isOffered(Action.SET_ASIDE, one.id().value()))
                .map(one -> Choice.Option.of(one.slug(), one.name()))),
        typed.field("date"),
        typed.field("time"),
        typed.field("minutes"),
        typed.choice(
            "liturgy",
            Stream.concat(
                Stream.of(Choice.Option.of("", say("Mass of the day"))),
                Stream.of(
                        MassKind.ORDINATION,
                        MassKind.CONFIRMATION,
                        MassKind.WEDDING,
                        MassKind.FUNERAL,
                        MassKind.PROFESSION,
                        MassKind.DEDICATION,
                        MassKind.CHRISM,
                        MassKind.OTHER)
                    .map(kind -> Choice.Option.of(kind.id(), words(kind))))),
        typed.choice(
            "massColour",
            Stream.concat(
                Stream.of(Choice.Option.of("", say("That of the day or of the rite"))),
                Stream.of(Colour.values())
                    .map(colour -> Choice.Option.of(colour.id(), Speech.colour(colour))))),
        typed.field("celebrant"),
        typed.isTicked("bishop"),
        typed.field("concelebrants"),
        typed.field("deacons"));
  }

  /** What was typed as the schedule reads it. */
  static SaveMass.Request request(Entries typed) {
    Asked asked = new Asked();
    Integer minutes = asked.number("minutes", typed.text("minutes"));
    Integer concelebrants = asked.number("concelebrants", typed.text("concelebrants"));
    Integer deacons = asked.number("deacons", typed.text("deacons"));
    String date = asked.needed("date", typed.text("date"), 40);
    String time = asked.needed("time", typed.text("time"), 40);
    asked.refuseIfFaulty();
    return new SaveMass.Request(
        typed.text("church"),
        date + "T" + time,
        minutes,
        typed.text("liturgy"),
        null,
        null,
        null,
        typed.text("massColour"),
        typed.text("celebrant"),
        concelebrants,
        deacons,
        null,
        null,
        typed.isTicked("bishop"),
        null,
        null,
        null,
        null,
        null,
        null,
        null);
  }

  private static String words(MassKind kind) {
    return switch (kind) {
      case PROFESSION -> say("Religious profession");
      case DEDICATION -> say("Dedication of a church or altar");
      case OTHER -> say("Another liturgy");
      default -> Speech.sentence(kind.id());
    };
  }
}
