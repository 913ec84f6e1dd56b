package vestiary.planning;

import static vestiary.web.English.clock;
import static vestiary.web.English.count;
import static vestiary.web.English.day;
import static vestiary.web.English.list;
import static vestiary.web.English.sentence;

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
      return "%s, %s to %s, %s"
          .formatted(
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
    return count(churches) + (churches == 1 ? " church" : " churches");
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
    return "%s; the %s that could serve them %s"
        .formatted(
            who(),
            count(shortage.available()) + " " + noun(shortage.available()),
            shortage.certificate().kind() == CertificateKind.UNPROVEN
                ? "may not suffice"
                : "do not suffice");
  }

  private String local() {
    String there =
        shortage.available() == 0
            ? "none is there"
            : "%s %s there".formatted(stock(), shortage.available() == 1 ? "is" : "are");
    return "%s; %s".formatted(who(), there);
  }

  private String cluster() {
    String there =
        shortage.available() == 0
            ? "the cluster has none for them"
            : "%s can serve them".formatted(stock());
    return "%s; %s".formatted(who(), there);
  }

  /** For example "Three concelebrants need white". */
  private String who() {
    if (shortage.masses().size() == 1) {
      return sentence(ministers()) + (shortage.needed() == 1 ? " needs " : " need ") + wanted();
    }
    String masses = count(shortage.masses().size(), "Mass");
    String liturgies = areAllMasses() ? masses : count(shortage.masses().size()) + " liturgies";
    String many =
        shortage.needed() == shortage.masses().size()
            ? liturgies
            : "%s at %s".formatted(count(shortage.needed(), "minister"), liturgies);
    return sentence(many) + " need " + wanted() + when();
  }

  private String when() {
    if (!shortage.allClash()) {
      return " close together";
    }
    return shortage.level() == Level.LOCAL ? " with no time between" : " at once";
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
    return number == 1 && RoleWords.isTheOne(role) ? "the " + noun : count(number, noun);
  }

  /** For example "white", or "a white cope". */
  private String wanted() {
    if (shortage.pieceKind() == PieceKind.CHASUBLE) {
      return colours();
    }
    String noun = PieceNouns.of(shortage.pieceKind());
    return shortage.needed() == 1 ? one(noun) : tinted(noun + "s");
  }

  private String one(String noun) {
    String tinted = tinted(noun);
    return (tinted.startsWith("a") ? "an " : "a ") + tinted;
  }

  /** The noun with its colour, if it has one that matters. */
  String tinted(String noun) {
    return hasColour() ? colours() + " " + noun : noun;
  }

  boolean isOfOneColour() {
    return shortage.needs().stream().map(Need::colour).distinct().count() == 1;
  }

  boolean hasColour() {
    return PieceNouns.hasColour(shortage.pieceKind());
  }

  private String colours() {
    List<Colour> asked = shortage.needs().stream().map(Need::colour).distinct().sorted().toList();
    return list(asked.stream().map(Colour::id).toList());
  }

  /** For example "two white sets". */
  private String stock() {
    return count(shortage.available()) + " " + tinted(noun(shortage.available()));
  }

  /** People count sets; where a chasuble has none, chasubles are counted. */
  String noun(int number) {
    boolean sets =
        shortage.pieceKind() == PieceKind.CHASUBLE
            && pieces().noneMatch(piece -> piece.set().isEmpty());
    String noun = sets ? "set" : PieceNouns.of(shortage.pieceKind());
    return number == 1 ? noun : noun + "s";
  }

  private Stream<Piece> pieces() {
    return Stream.of(
            shortage.pieces().stream(),
            shortage.elsewhere().stream(),
            shortage.notServing().stream().map(NotServing::piece))
        .flatMap(p -> p);
  }

  private String late(LateArrival late) {
    String piece = one(noun(1));
    if (late.arrives().equals(Instant.MAX)) {
      return "No journey is known by which %s could come from %s to %s"
          .formatted(piece, church(late.from()), church(late.to()));
    }
    long minutes = Duration.between(late.due(), late.arrives()).toMinutes();
    return "%s from %s is at %s by %s, %s %s after its set-out at %s"
        .formatted(
            sentence(piece),
            church(late.from()),
            church(late.to()),
            clock(late.arrives().atZone(zone)),
            count((int) minutes),
            minutes == 1 ? "minute" : "minutes",
            clock(late.due().atZone(zone)));
  }

  private String tight() {
    if (!shortage.late().isEmpty()) {
      return (shortage.pieceKind() == PieceKind.CHASUBLE ? colours() : noun(1)) + " comes too late";
    }
    String what =
        shortage.pieceKind() == PieceKind.CHASUBLE ? colours() : tinted(noun(shortage.missing()));
    return "%s %s short".formatted(count(shortage.missing()), what);
  }

  private String more() {
    List<String> more = new ArrayList<>();
    if (!shortage.allClash()) {
      more.add(new ProofWords(shortage, masses).sentence());
    }
    if (!shortage.late().isEmpty()) {
      more.add(sentence(stock()) + " cannot serve all of these Masses.");
    }
    if (!shortage.elsewhere().isEmpty()) {
      more.add(
          sentence(count(shortage.elsewhere().size()))
              + " more elsewhere in the cluster could be carried there.");
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
            .map(kind -> PieceNouns.of(kind) + "s")
            .collect(Collectors.joining(" and "));
    if (!besides.isEmpty()) {
      return "There are too few %s as well, and nothing may stand in for those.".formatted(besides);
    }
    return steps().isEmpty()
        ? "Nothing may stand in for it; another time, a loan or a visitor's own must mend it."
        : "Not even what may stand in is there for all; another time, a loan or a visitor's own must mend it.";
  }

  private String lawful() {
    return steps().isEmpty()
        ? ""
        : steps().stream()
            .map(step -> "%s (%s)".formatted(step.sentence(), step.source()))
            .collect(Collectors.joining("; or ", "Lawful instead: ", "."));
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
