package vestiary.remedy;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import vestiary.allocation.plan.Hold;
import vestiary.allocation.remedy.Change;
import vestiary.planning.MassWords;
import vestiary.planning.PieceNouns;
import vestiary.planning.RoleWords;
import vestiary.planning.StepWords;
import vestiary.pool.PooledPiece;
import vestiary.schedule.DatedMass;
import vestiary.vesting.MassId;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Role;
import vestiary.vesting.Wearer;
import vestiary.web.English;

/** Says in one sentence what a change does. */
final class ChangeWords {

  private final RemedyScene scene;

  ChangeWords(RemedyScene scene) {
    this.scene = scene;
  }

  /** What is done, without a full stop. */
  String sentence(Change change) {
    if (change instanceof Change.Carry carry) {
      return "Bring %s from %s: %s"
          .formatted(counted(carry.pieces()), scene.church(carry.from()), names(carry.pieces()));
    } else if (change instanceof Change.ChooseColour choice) {
      DatedMass mass = scene.mass(choice.mass());
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
      DatedMass mass = scene.mass(move.mass());
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
            tinted(scene.shortage().needs().get(0), noun(first, chief.size())));
  }

  private String suit(Piece piece) {
    return scene.piece(piece.code()) != null ? scene.piece(piece.code()).suit() : "";
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
      PooledPiece piece = scene.piece(hold.piece());
      names.add(piece == null || piece.set().isEmpty() ? hold.piece() : piece.set());
    }
    Hold first = holds.get(0);
    return "%s, held for %s, %s"
        .formatted(
            English.list(List.copyOf(names)),
            scene.church(first.church()),
            scene.clock(first.window().start()));
  }

  private String away(String given, Instant until) {
    String reason =
        given.isEmpty()
            ? "away"
            : given.substring(0, 1).toLowerCase(Locale.ROOT) + given.substring(1);
    return until.equals(Instant.MAX)
        ? "%s, until further notice".formatted(reason)
        : "%s, to %s".formatted(reason, English.date(scene.date(until.minusSeconds(1))));
  }

  static String persons(Role role, int count) {
    return RoleWords.isTheOne(role)
        ? "the " + RoleWords.noun(role)
        : English.count(count, RoleWords.noun(role));
  }

  /** Which Mass is meant, where several are concerned. */
  private String at(MassId id) {
    DatedMass mass = scene.mass(id);
    return scene.shortage().masses().size() == 1
        ? ""
        : " at %s, %s,".formatted(mass.church().name(), English.clock(mass.start()));
  }

  private String called(DatedMass mass) {
    return "the %s of %s at %s"
        .formatted(kind(mass), English.clock(mass.start()), mass.church().name());
  }

  private String kind(DatedMass mass) {
    return mass.kind().isMass() ? "Mass" : MassWords.whole(mass, scene.language());
  }
}
