package vestiary.remedy;

import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.allocation.Shortage;
import vestiary.allocation.plan.Hold;
import vestiary.allocation.plan.Provision;
import vestiary.allocation.remedy.Change;
import vestiary.allocation.remedy.Remedy;
import vestiary.cluster.Church;
import vestiary.planning.ChangeValue;
import vestiary.planning.MassWords;
import vestiary.planning.OfferedRemedy;
import vestiary.planning.PieceNouns;
import vestiary.planning.RoleWords;
import vestiary.planning.SpanToCheck;
import vestiary.planning.StepWords;
import vestiary.pool.OwnerPolicy;
import vestiary.pool.PooledPiece;
import vestiary.schedule.DatedMass;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassId;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Role;
import vestiary.vesting.Step;
import vestiary.vesting.Wearer;
import vestiary.web.English;

/** Puts a remedy in words: what is done, how, and what it costs. */
final class RemedyWords {

  private static final Set<PieceKind> STOLES = Set.of(PieceKind.STOLE, PieceKind.DEACON_STOLE);

  private final SpanToCheck span;
  private final Shortage shortage;
  private final Map<MassId, DatedMass> masses;
  private final Map<ChurchId, Church> churches;
  private final Map<String, PooledPiece> pieces;

  RemedyWords(SpanToCheck span, Shortage shortage) {
    this.span = span;
    this.shortage = shortage;
    this.masses =
        span.masses().stream().collect(Collectors.toMap(DatedMass::id, Function.identity()));
    this.churches =
        span.churches().stream().collect(Collectors.toMap(Church::id, Function.identity()));
    this.pieces =
        span.pieces().stream().collect(Collectors.toMap(PooledPiece::code, Function.identity()));
  }

  OfferedRemedy of(Remedy remedy, Deed deed, int place, String fingerprint) {
    Change change = remedy.change();
    List<Journey> journeys = Journey.of(deed.added().carried());
    String sentence = sentence(change) + ".";
    List<ChangeValue> changes = new ArrayList<>();
    changes.add(value(change, sentence));
    journeys.forEach(way -> changes.add(value(way)));
    return new OfferedRemedy(
        place,
        sentence,
        how(remedy, journeys),
        new CostWords(remedy, journeys, owners(remedy, journeys)).sentence(),
        also(remedy),
        change instanceof Change.TakeStep step ? step.step().source() : "",
        remedy.cost(),
        changes,
        OfferRemedies.isAdvice(remedy),
        change instanceof Change.TakeStep,
        remedy.onAsking(),
        fingerprint);
  }

  private String sentence(Change change) {
    if (change instanceof Change.Carry carry) {
      return "Bring %s from %s: %s"
          .formatted(counted(carry.pieces()), church(carry.from()), names(carry.pieces()));
    } else if (change instanceof Change.ChooseColour choice) {
      DatedMass mass = masses.get(choice.mass());
      return "Celebrate %s in %s instead of %s"
          .formatted(called(mass), choice.colour().id(), mass.colour().id());
    } else if (change instanceof Change.BringOwn own) {
      return "Ask %s%s to bring %s own vestments"
          .formatted(
              persons(own.role(), own.count()), at(own.mass()), own.count() == 1 ? "his" : "their");
    } else if (change instanceof Change.TakeStep step) {
      Wearer one = step.wearers().get(0);
      return "%s %s%s"
          .formatted(
              English.sentence(persons(one.role(), step.wearers().size())),
              StepWords.worn(step.step()),
              at(one.mass()));
    } else if (change instanceof Change.Release release) {
      return "Give up what is set aside for another Mass: " + held(release.holds());
    } else if (change instanceof Change.BringBack back) {
      return "Ask for %s back early (%s)"
          .formatted(names(back.pieces()), away(back.from().reason(), back.from().until()));
    } else if (change instanceof Change.MoveStart move) {
      DatedMass mass = masses.get(move.mass());
      return "Begin the %s at %s at %s instead of %s"
          .formatted(
              kind(mass),
              mass.church().name(),
              English.clock(mass.start().plus(move.by())),
              English.clock(mass.start()));
    } else if (change instanceof Change.Borrow borrow) {
      return "Borrow %s from outside the cluster".formatted(counted(borrow.pieces()));
    }
    return "Get %s of your own".formatted(counted(((Change.Buy) change).pieces()));
  }

  /** For example "three matching white sets". */
  private String counted(List<Piece> all) {
    List<Piece> chief = chief(all);
    Piece first = chief.get(0);
    String suit = suit(first);
    boolean match =
        chief.size() > 1 && !suit.isEmpty() && chief.stream().allMatch(p -> suit(p).equals(suit));
    return "%s %s%s"
        .formatted(
            English.count(chief.size()),
            match ? "matching " : "",
            tinted(shortage.needs().get(0), noun(first, chief.size())));
  }

  private String suit(Piece piece) {
    return pieces.containsKey(piece.code()) ? pieces.get(piece.code()).suit() : "";
  }

  private static List<Piece> chief(List<Piece> all) {
    PieceKind kind = all.get(0).kind();
    return all.stream().filter(piece -> piece.kind() == kind).toList();
  }

  private static String tinted(Need need, String noun) {
    return PieceNouns.hasColour(need.kind()) ? need.colour().id() + " " + noun : noun;
  }

  private static String noun(Piece piece, int number) {
    String noun =
        piece.kind() == PieceKind.CHASUBLE && !piece.set().isEmpty()
            ? "set"
            : PieceNouns.of(piece.kind());
    return number == 1 ? noun : noun + "s";
  }

  /** Sets by their own code, single pieces by theirs. */
  private static String names(List<Piece> all) {
    return English.list(
        all.stream()
            .map(piece -> piece.set().isEmpty() ? piece.code() : piece.set())
            .distinct()
            .toList());
  }

  private String held(List<Hold> holds) {
    Set<String> names = new TreeSet<>();
    for (Hold hold : holds) {
      PooledPiece piece = pieces.get(hold.piece());
      names.add(piece == null || piece.set().isEmpty() ? hold.piece() : piece.set());
    }
    Hold first = holds.get(0);
    return "%s, held for %s, %s"
        .formatted(
            English.list(List.copyOf(names)),
            church(first.church()),
            clock(first.window().start()));
  }

  private String away(String given, Instant until) {
    String reason =
        given.isEmpty()
            ? "away"
            : given.substring(0, 1).toLowerCase(Locale.ROOT) + given.substring(1);
    return until.equals(Instant.MAX)
        ? "%s, until further notice".formatted(reason)
        : "%s, to %s".formatted(reason, English.date(date(until.minusSeconds(1))));
  }

  private static String persons(Role role, int count) {
    return RoleWords.isTheOne(role)
        ? "the " + RoleWords.noun(role)
        : English.count(count, RoleWords.noun(role));
  }

  /** Which Mass is meant, where several are concerned. */
  private String at(MassId id) {
    DatedMass mass = masses.get(id);
    return shortage.masses().size() == 1
        ? ""
        : " at %s, %s,".formatted(mass.church().name(), English.clock(mass.start()));
  }

  private String called(DatedMass mass) {
    return "the %s of %s at %s"
        .formatted(kind(mass), English.clock(mass.start()), mass.church().name());
  }

  private String kind(DatedMass mass) {
    return mass.kind().isMass() ? "Mass" : MassWords.whole(mass, span.cluster().language());
  }

  private String how(Remedy remedy, List<Journey> journeys) {
    List<String> how = new ArrayList<>();
    if (remedy.change() instanceof Change.TakeStep step) {
      how.add(lawful(step.step()));
    } else if (remedy.change() instanceof Change.BringOwn) {
      how.add("It is noted for the Mass as agreed; ask first.");
    } else if (remedy.change() instanceof Change.Borrow) {
      how.add(
          "From a neighbour or the diocese; once it is here, enter it under Vestments with its owner.");
    } else if (remedy.change() instanceof Change.BringBack) {
      how.add("Once it is back, end its care under Vestments.");
    }
    journeys.forEach(way -> how.add(journey(way)));
    return String.join(" ", how);
  }

  /** RS 124: where the need is foreseen, vestments are to be provided as far as possible. */
  private static String lawful(Step step) {
    String sentence = "Lawful: %s (%s).".formatted(step.sentence(), step.source());
    return step == Step.STOLE_OVER_ALB
        ? sentence + " For a just cause; as far as possible vestments are to be provided."
        : sentence;
  }

  private String journey(Journey way) {
    String takes =
        way.carrier().isEmpty()
            ? "Somebody brings " + named(way.pieces())
            : "%s takes %s along".formatted(way.carrier(), named(way.pieces()));
    String ready =
        way.ready().stream()
            .map(from -> "free from %s, ".formatted(clock(from)))
            .findFirst()
            .orElse("");
    return "%s: %sleaves %s by %s, at %s by %s."
        .formatted(
            takes,
            ready,
            church(way.from()),
            clock(way.leaveBy()),
            church(way.to()),
            clock(way.arriveBy()));
  }

  /** Sets by their own code; a stole that travels without its chasuble by its own. */
  private String named(List<String> codes) {
    Set<String> whole =
        codes.stream()
            .map(pieces::get)
            .filter(piece -> !STOLES.contains(piece.kind()) && !piece.set().isEmpty())
            .map(PooledPiece::set)
            .collect(Collectors.toSet());
    return English.list(
        codes.stream()
            .map(pieces::get)
            .map(piece -> whole.contains(piece.set()) ? piece.set() : piece.code())
            .distinct()
            .toList());
  }

  /** What others would wear for it, where that is less than it was. */
  private List<String> also(Remedy remedy) {
    return remedy.changed().stream()
        .filter(one -> one.depth() > 0 || one instanceof Provision.Unmet)
        .map(
            one -> {
              DatedMass mass = masses.get(one.need().mass());
              String then =
                  one.findStep()
                      .map(StepWords::worn)
                      .orElse("short of a " + one.need().kind().id());
              return "At %s, %s, %s would be %s."
                  .formatted(
                      mass.church().name(),
                      English.clock(mass.start()),
                      persons(one.need().role(), 1),
                      then);
            })
        .distinct()
        .toList();
  }

  private List<String> owners(Remedy remedy, List<Journey> journeys) {
    Stream<String> carried =
        Stream.concat(
            journeys.stream().flatMap(way -> way.pieces().stream()),
            remedy.change() instanceof Change.Carry carry
                ? carry.pieces().stream().map(Piece::code)
                : Stream.of());
    return carried
        .map(pieces::get)
        .filter(piece -> piece.ownerPolicy() == OwnerPolicy.ASKING)
        .map(PooledPiece::owner)
        .distinct()
        .toList();
  }

  private ChangeValue value(Change change, String sentence) {
    if (change instanceof Change.Carry carry) {
      return ChangeValue.of("carry", sentence, codes(carry.pieces()))
          .at(
              id(carry.holds().get(0).mass()),
              slug(carry.from()),
              slug(carry.holds().get(0).church()));
    } else if (change instanceof Change.ChooseColour choice) {
      return ChangeValue.of("colour", sentence, List.of())
          .of(id(choice.mass()))
          .to(choice.colour().id(), null);
    } else if (change instanceof Change.BringOwn own) {
      return ChangeValue.of("bring-own", sentence, List.of()).of(id(own.mass()));
    } else if (change instanceof Change.TakeStep step) {
      return ChangeValue.of("step", sentence, List.of())
          .of(id(step.wearers().get(0).mass()))
          .by(step.step().id(), step.step().source());
    } else if (change instanceof Change.Release release) {
      return ChangeValue.of("release", sentence, release.holds().stream().map(Hold::piece).toList())
          .of(id(release.holds().get(0).mass()));
    } else if (change instanceof Change.BringBack back) {
      return ChangeValue.of("bring-back", sentence, codes(back.pieces()));
    } else if (change instanceof Change.MoveStart move) {
      DatedMass mass = masses.get(move.mass());
      return ChangeValue.of("move", sentence, List.of())
          .of(id(move.mass()))
          .to(null, mass.start().plus(move.by()).format(DateTimeFormatter.ISO_OFFSET_DATE_TIME));
    }
    return ChangeValue.of(change instanceof Change.Borrow ? "borrow" : "buy", sentence, List.of());
  }

  private ChangeValue value(Journey way) {
    return ChangeValue.of("journey", journey(way), way.pieces())
        .at(null, slug(way.from()), slug(way.to()))
        .when(
            local(way.leaveBy()),
            local(way.arriveBy()),
            way.carrier().isEmpty() ? null : way.carrier());
  }

  private static List<String> codes(List<Piece> pieces) {
    return pieces.stream().map(Piece::code).toList();
  }

  private static String id(MassId mass) {
    return mass.value().toString();
  }

  private String slug(ChurchId church) {
    return churches.get(church).slug();
  }

  private String church(ChurchId church) {
    return churches.get(church).name();
  }

  private String clock(Instant moment) {
    return English.clock(moment.atZone(span.cluster().zone()));
  }

  private LocalDate date(Instant moment) {
    return moment.atZone(span.cluster().zone()).toLocalDate();
  }

  private String local(Instant moment) {
    return moment.atZone(span.cluster().zone()).format(DateTimeFormatter.ISO_OFFSET_DATE_TIME);
  }
}
