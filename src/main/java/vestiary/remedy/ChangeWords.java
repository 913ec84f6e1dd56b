package vestiary.remedy;

import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

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
import vestiary.web.Speech;

/** Says in one sentence what a change does. */
final class ChangeWords {

  private final RemedyScene scene;

  ChangeWords(RemedyScene scene) {
    this.scene = scene;
  }

  /** What is done, without a full stop. */
  String sentence(Change change) {
    if (change instanceof Change.Carry carry) {
      return say(
          "Bring %s from %s: %s",
          counted(carry.pieces()), scene.church(carry.from()), names(carry.pieces()));
    } else if (change instanceof Change.ChooseColour choice) {
      DatedMass mass = scene.mass(choice.mass());
      return say(
          "Celebrate %s in %s instead of %s",
          called(mass), Speech.colour(choice.colour()), Speech.colour(mass.colour()));
    } else if (change instanceof Change.BringOwn own) {
      return say(
          own.count() == 1
              ? word("Ask %s%s to bring his own vestments")
              : word("Ask %s%s to bring their own vestments"),
          persons(own.role(), own.count()),
          at(own.mass()));
    } else if (change instanceof Change.TakeStep step) {
      Wearer one = step.wearers().get(0);
      return "%s %s%s"
          .formatted(
              Speech.sentence(persons(one.role(), step.wearers().size())),
              StepWords.worn(step.step()),
              at(one.mass()));
    } else if (change instanceof Change.Release release) {
      return say("Give up what is set aside for another Mass: ") + held(release.holds());
    } else if (change instanceof Change.BringBack back) {
      return say(
          "Ask for %s back early (%s)",
          names(back.pieces()), away(back.from().reason(), back.from().until()));
    } else if (change instanceof Change.MoveStart move) {
      DatedMass mass = scene.mass(move.mass());
      return say(
          "Begin the %s at %s at %s instead of %s",
          kind(mass),
          mass.church().name(),
          Speech.clock(mass.start().plus(move.by())),
          Speech.clock(mass.start()));
    } else if (change instanceof Change.Borrow borrow) {
      return say("Borrow %s from outside the cluster", counted(borrow.pieces()));
    }
    return say("Get %s of your own", counted(((Change.Buy) change).pieces()));
  }

  /** For example "three matching white sets". */
  private String counted(List<Piece> all) {
    List<Piece> chief = chief(all);
    Piece first = chief.get(0);
    String suit = suit(first);
    boolean match =
        chief.size() > 1 && !suit.isEmpty() && chief.stream().allMatch(p -> suit(p).equals(suit));
    String words = tinted(scene.shortage().needs().get(0), Speech.noun(chief.size(), noun(first)));
    return Speech.count(chief.size(), noun(first), match ? say("matching %s", words) : words);
  }

  private String suit(Piece piece) {
    return scene.piece(piece.code()) != null ? scene.piece(piece.code()).suit() : "";
  }

  private static List<Piece> chief(List<Piece> all) {
    PieceKind kind = all.get(0).kind();
    return all.stream().filter(piece -> piece.kind() == kind).toList();
  }

  private static String tinted(Need need, String noun) {
    return PieceNouns.hasColour(need.kind())
        ? Speech.tinted(Speech.colour(need.colour()), noun)
        : noun;
  }

  private static String noun(Piece piece) {
    return piece.kind() == PieceKind.CHASUBLE && !piece.set().isEmpty()
        ? "set"
        : PieceNouns.of(piece.kind());
  }

  /** Sets by their own code, single pieces by theirs. */
  private static String names(List<Piece> all) {
    return Speech.list(
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
    return say(
        "%s, held for %s, %s",
        Speech.list(List.copyOf(names)),
        scene.church(first.church()),
        scene.clock(first.window().start()));
  }

  private String away(String given, Instant until) {
    String reason =
        given.isEmpty()
            ? say("away")
            : given.substring(0, 1).toLowerCase(Locale.ROOT) + given.substring(1);
    return until.equals(Instant.MAX)
        ? say("%s, until further notice", reason)
        : say("%s, to %s", reason, Speech.date(scene.date(until.minusSeconds(1))));
  }

  static String persons(Role role, int count) {
    return RoleWords.isTheOne(role)
        ? Speech.the(RoleWords.noun(role))
        : Speech.count(count, RoleWords.noun(role));
  }

  /** Which Mass is meant, where several are concerned. */
  private String at(MassId id) {
    DatedMass mass = scene.mass(id);
    return scene.shortage().masses().size() == 1
        ? ""
        : say(" at %s, %s,", mass.church().name(), Speech.clock(mass.start()));
  }

  private String called(DatedMass mass) {
    return say("the %s of %s at %s", kind(mass), Speech.clock(mass.start()), mass.church().name());
  }

  private String kind(DatedMass mass) {
    return mass.kind().isMass() ? say("Mass") : MassWords.whole(mass, scene.language());
  }
}
