package vestiary.planning;

import static vestiary.web.Speech.clock;
import static vestiary.web.Speech.count;
import static vestiary.web.Speech.day;
import static vestiary.web.Speech.list;
import static vestiary.web.Speech.say;
import static vestiary.web.Speech.sayOf;
import static vestiary.web.Speech.sentence;
import static vestiary.web.Speech.word;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.allocation.CertificateKind;
import vestiary.allocation.LateArrival;
import vestiary.allocation.Level;
import vestiary.allocation.NotServing;
import vestiary.allocation.Shortage;
import vestiary.calendar.Colour;
import vestiary.schedule.DatedMass;
import vestiary.vesting.MassId;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Role;
import vestiary.vesting.Step;
import vestiary.web.NormWords;
import vestiary.web.Speech;

/** Puts a shortage in words. It shows needs alike and never says who goes without. */
final class ShortageWords {

  /** Of more Masses a line names the hours and counts the churches. */
  private static final int MOST_NAMED = 6;

  private final Shortage shortage;
  private final Map<MassId, DatedMass> masses;
  private final ZoneId zone;

  ShortageWords(Shortage shortage, Map<MassId, DatedMass> masses, ZoneId zone) {
    this.shortage = shortage;
    this.masses = masses;
    this.zone = zone;
  }

  ClashWords words() {
    return new ClashWords(about(), title(), tight(), more(), lawful());
  }

  private String about() {
    List<DatedMass> concerned = masses();
    String day = day(concerned.get(0).date());
    if (new LongList(shortage).isLong() && concerned.size() > MOST_NAMED) {
      return say(
          "%s, %s to %s, %s",
          day,
          clock(shortage.from().atZone(zone)),
          clock(shortage.to().atZone(zone)),
          churches(concerned));
    }
    if (concerned.size() == 1) {
      return "%s, %s, %s".formatted(place(concerned.get(0)), day, clock(concerned.get(0).start()));
    }
    return day + ", " + list(concerned.stream().map(this::placeAndTime).distinct().toList());
  }

  private static String churches(List<DatedMass> masses) {
    int churches = (int) masses.stream().map(ShortageWords::place).distinct().count();
    return Speech.count(churches, "church");
  }

  private String title() {
    if (!shortage.allClash()) {
      return notAllClash();
    }
    if (!shortage.late().isEmpty()) {
      return late(shortage.late().get(0));
    }
    return shortage.level() == Level.LOCAL ? local() : cluster();
  }

  private String notAllClash() {
    return say(
        "%s; the %s that could serve them %s",
        who(),
        Speech.count(shortage.available(), noun(), noun(shortage.available())),
        shortage.certificate().kind() == CertificateKind.UNPROVEN
            ? say("may not suffice")
            : say("do not suffice"));
  }

  private String local() {
    String there =
        shortage.available() == 0
            ? say("none is there")
            : say(shortage.available() == 1 ? word("%s is there") : word("%s are there"), stock());
    return "%s; %s".formatted(who(), there);
  }

  private String cluster() {
    String there =
        shortage.available() == 0
            ? say("the cluster has none for them")
            : sayOf(shortage.available(), "%s can serve them", stock());
    return "%s; %s".formatted(who(), there);
  }

  /** For example "Three concelebrants need white". */
  private String who() {
    if (shortage.masses().size() == 1) {
      return sentence(ministers())
          + (shortage.needed() == 1 ? say(" needs ") : say(" need "))
          + wanted();
    }
    String masses = count(shortage.masses().size(), "Mass");
    String liturgies =
        areAllMasses() ? masses : say("%s liturgies", count(shortage.masses().size()));
    String many =
        shortage.needed() == shortage.masses().size()
            ? liturgies
            : say("%s at %s", count(shortage.needed(), "minister"), liturgies);
    return sentence(many) + say(" need ") + wanted() + when();
  }

  private String when() {
    if (!shortage.allClash()) {
      return say(" close together");
    }
    return shortage.level() == Level.LOCAL ? say(" with no time between") : say(" at once");
  }

  private String ministers() {
    Map<Role, Long> roles =
        shortage.needs().stream().collect(Collectors.groupingBy(Need::role, Collectors.counting()));
    return list(
        Stream.of(Role.values())
            .filter(roles::containsKey)
            .map(role -> minister(role, roles.get(role).intValue()))
            .toList());
  }

  private static String minister(Role role, int number) {
    String noun = RoleWords.noun(role);
    return number == 1 && RoleWords.isTheOne(role) ? Speech.the(noun) : count(number, noun);
  }

  /** For example "white", or "a white cope". */
  private String wanted() {
    if (shortage.pieceKind() == PieceKind.CHASUBLE) {
      return colours();
    }
    String noun = PieceNouns.of(shortage.pieceKind());
    return shortage.needed() == 1 ? one(noun) : tinted(Speech.noun(2, noun));
  }

  private String one(String noun) {
    return Speech.one(noun, tinted(Speech.noun(1, noun)));
  }

  /** The noun with its colour, if it has one that matters. */
  String tinted(String noun) {
    return hasColour() ? Speech.tinted(colours(), noun) : noun;
  }

  boolean isOfOneColour() {
    return shortage.needs().stream().map(Need::colour).distinct().count() == 1;
  }

  boolean hasColour() {
    return PieceNouns.hasColour(shortage.pieceKind());
  }

  private String colours() {
    List<Colour> asked = shortage.needs().stream().map(Need::colour).distinct().sorted().toList();
    return list(asked.stream().map(Speech::colour).toList());
  }

  /** For example "two white sets". */
  private String stock() {
    return counted(shortage.available());
  }

  /** For example "two white sets". */
  String counted(int number) {
    return Speech.count(number, noun(), tinted(noun(number)));
  }

  String noun(int number) {
    return Speech.noun(number, noun());
  }

  /** People count sets; where a chasuble has none, chasubles are counted. */
  String noun() {
    boolean sets =
        shortage.pieceKind() == PieceKind.CHASUBLE
            && pieces().noneMatch(piece -> piece.set().isEmpty());
    return sets ? "set" : PieceNouns.of(shortage.pieceKind());
  }

  private Stream<Piece> pieces() {
    return Stream.of(
            shortage.pieces().stream(),
            shortage.elsewhere().stream(),
            shortage.notServing().stream().map(NotServing::piece))
        .flatMap(p -> p);
  }

  private String late(LateArrival late) {
    String piece = one(noun());
    if (late.arrives().equals(Instant.MAX)) {
      return say(
          "No journey is known by which %s could come from %s to %s",
          piece, church(late.from()), church(late.to()));
    }
    long minutes = Duration.between(late.due(), late.arrives()).toMinutes();
    return say(
        "%s from %s is at %s by %s, %s after its set-out at %s",
        sentence(piece),
        church(late.from()),
        church(late.to()),
        clock(late.arrives().atZone(zone)),
        Speech.count((int) minutes, "minute"),
        clock(late.due().atZone(zone)));
  }

  private String tight() {
    if (!shortage.late().isEmpty()) {
      return say(
          "%s comes too late", shortage.pieceKind() == PieceKind.CHASUBLE ? colours() : noun(1));
    }
    String what =
        shortage.pieceKind() == PieceKind.CHASUBLE ? colours() : tinted(noun(shortage.missing()));
    return sayOf(shortage.missing(), "%s %s short", count(shortage.missing()), what);
  }

  private String more() {
    List<String> more = new ArrayList<>();
    if (!shortage.allClash()) {
      more.add(new ProofWords(shortage, masses).sentence());
    }
    if (!shortage.late().isEmpty()) {
      more.add(
          sayOf(shortage.available(), "%s cannot serve all of these Masses.", sentence(stock())));
    }
    if (!shortage.elsewhere().isEmpty()) {
      more.add(
          sayOf(
              shortage.elsewhere().size(),
              "%s more elsewhere in the cluster could be carried there.",
              sentence(count(shortage.elsewhere().size()))));
    }
    if (!shortage.exhausted().isEmpty()) {
      more.add(exhausted());
    }
    return String.join(" ", more);
  }

  /** Why nothing lawful mends it: a chasuble may be left out, the stole that comes with it not. */
  private String exhausted() {
    String besides =
        shortage.exhausted().stream()
            .map(Need::kind)
            .filter(kind -> kind != shortage.pieceKind())
            .distinct()
            .map(kind -> Speech.noun(2, PieceNouns.of(kind)))
            .collect(Collectors.joining(say(" and ")));
    if (!besides.isEmpty()) {
      return say("There are too few %s as well, and nothing may stand in for those.", besides);
    }
    return steps().isEmpty()
        ? say("Nothing may stand in for it; another time, a loan or a visitor's own must mend it.")
        : say(
            "Not even what may stand in is there for all; another time, a loan or a visitor's own must mend it.");
  }

  private String lawful() {
    return steps().isEmpty()
        ? ""
        : steps().stream()
            .map(step -> "%s (%s)".formatted(say(step.sentence()), NormWords.source(step.source())))
            .collect(Collectors.joining(say("; or "), say("Lawful instead: "), "."));
  }

  List<Step> steps() {
    return shortage.needs().stream().flatMap(n -> n.ladder().stream()).distinct().toList();
  }

  private boolean areAllMasses() {
    return masses().stream().allMatch(m -> m.kind().isMass());
  }

  private List<DatedMass> masses() {
    return shortage.masses().stream().map(masses::get).toList();
  }

  private String placeAndTime(DatedMass mass) {
    return "%s (%s)".formatted(place(mass), clock(mass.start()));
  }

  private static String place(DatedMass mass) {
    return mass.church().name();
  }

  private String church(Need need) {
    return place(masses.get(need.mass()));
  }
}
