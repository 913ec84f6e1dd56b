package vestiary.allocation.remedy;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.allocation.Span;
import vestiary.allocation.plan.Hold;
import vestiary.allocation.plan.Provision;
import vestiary.allocation.plan.Score;
import vestiary.allocation.plan.Situation;
import vestiary.vesting.Away;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassId;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;
import vestiary.vesting.Wearer;
import vestiary.vesting.Window;

/**
 * A situation as it would be after a change.
 *
 * @param taken what the change itself answers, and which is asked no more or otherwise
 */
record Amended(Situation situation, List<Provision> taken) {

  /** The score of a plan of it, with what the change itself takes. */
  Score with(Score score) {
    List<Long> steps = new ArrayList<>(score.steps());
    taken.stream()
        .map(one -> List.of(one.need().wearer(), one.depth()))
        .distinct()
        .forEach(
            one -> {
              int place = steps.size() - Math.min(steps.size(), (int) one.get(1));
              steps.set(place, steps.get(place) + 1);
            });
    return new Score(
        score.unmet(),
        steps,
        score.carriages(),
        score.minutes(),
        score.preferences(),
        score.changes());
  }

  static Amended by(Change change, Situation situation) {
    if (change instanceof Change.Carry carry) {
      return holding(situation, carry.holds());
    } else if (change instanceof Change.TakeStep step) {
      return stepping(situation, step);
    } else if (change instanceof Change.Release release) {
      List<Hold> left = new ArrayList<>(situation.holds());
      left.removeAll(release.holds());
      return plain(situation.withHolds(left));
    } else if (change instanceof Change.BringOwn own) {
      return plain(withNeeds(situation, need -> brings(need, own) ? List.of() : List.of(need)));
    } else if (change instanceof Change.BringBack back) {
      return plain(withPieces(situation, back));
    } else if (change instanceof Change.MoveStart move) {
      Situation moved = withNeeds(situation, need -> moved(need, move));
      return plain(withoutHolds(withoutRides(moved, move.mass()), move.mass()));
    } else if (change instanceof Change.ChooseColour choice) {
      return plain(withoutHolds(recoloured(situation, choice), choice.mass()));
    } else if (change instanceof Change.Borrow borrow) {
      return adding(situation, borrow.pieces());
    }
    return adding(situation, ((Change.Buy) change).pieces());
  }

  private static Amended plain(Situation situation) {
    return new Amended(situation, List.of());
  }

  private static Amended holding(Situation situation, List<Hold> holds) {
    return plain(
        situation.withHolds(Stream.concat(situation.holds().stream(), holds.stream()).toList()));
  }

  private static Amended adding(Situation situation, List<Piece> pieces) {
    Span span = situation.span();
    List<Piece> all = Stream.concat(span.pieces().stream(), pieces.stream()).toList();
    return plain(
        situation.with(
            new Span(span.needs(), all, span.journeys(), span.policies(), span.lying())));
  }

  private static Amended stepping(Situation situation, Change.TakeStep change) {
    Set<Wearer> wearers = new HashSet<>(change.wearers());
    List<Provision> taken = new ArrayList<>();
    Situation stepped =
        withNeeds(
            situation,
            need -> {
              int depth = need.ladder().indexOf(change.step()) + 1;
              boolean concerned = need.kind() == change.kind() || isMate(need, change);
              if (depth == 0 || !concerned || !wearers.contains(need.wearer())) {
                return List.of(need);
              }
              // Counted as taken, whatever stands in for it.
              taken.add(new Provision.LeftOut(need, depth));
              return need.with(change.step()).stream().toList();
            });
    return new Amended(stepped, taken);
  }

  /** A stole follows the colour of what goes over it. */
  private static boolean isMate(Need need, Change.TakeStep change) {
    return !change.step().isWithout() && need.kind() == Candidates.mateOf(change.kind());
  }

  private static boolean brings(Need need, Change.BringOwn change) {
    return need.mass().equals(change.mass())
        && need.role() == change.role()
        && need.ordinal() <= change.count();
  }

  private static List<Need> moved(Need need, Change.MoveStart change) {
    if (!need.mass().equals(change.mass())) {
      return List.of(need);
    }
    Duration by = change.by();
    Window old = need.window();
    Window window =
        new Window(
            old.setOut().plus(by),
            old.start().plus(by),
            old.end().plus(by),
            old.cleared().plus(by));
    return List.of(
        new Need(
            need.wearer(),
            need.church(),
            window,
            need.kind(),
            need.colour(),
            need.festive(),
            need.norm(),
            need.preferred()));
  }

  /** Who drives from or to a Mass that is moved drives at another hour, or not at all. */
  private static Situation withoutRides(Situation situation, MassId mass) {
    Set<ChurchId> churches =
        situation.span().needs().stream()
            .filter(need -> need.mass().equals(mass))
            .map(Need::church)
            .collect(Collectors.toSet());
    return situation.withRides(
        situation.rides().stream()
            .filter(ride -> !churches.contains(ride.from()) && !churches.contains(ride.to()))
            .toList());
  }

  /** What was set aside for the Mass as it was is not for the Mass as it is. */
  private static Situation withoutHolds(Situation situation, MassId mass) {
    return situation.withHolds(
        situation.holds().stream().filter(hold -> !hold.mass().equals(mass)).toList());
  }

  private static Situation recoloured(Situation situation, Change.ChooseColour choice) {
    Span span = situation.span();
    List<Need> needs =
        Stream.concat(
                span.needs().stream().filter(need -> !need.mass().equals(choice.mass())),
                choice.needs().stream())
            .toList();
    return situation.with(
        new Span(needs, span.pieces(), span.journeys(), span.policies(), span.lying()));
  }

  private static Situation withNeeds(Situation situation, Function<Need, List<Need>> change) {
    Span span = situation.span();
    List<Need> needs = span.needs().stream().flatMap(need -> change.apply(need).stream()).toList();
    return situation.with(
        new Span(needs, span.pieces(), span.journeys(), span.policies(), span.lying()));
  }

  private static Situation withPieces(Situation situation, Change.BringBack change) {
    Span span = situation.span();
    Set<String> codes = new HashSet<>(change.pieces().stream().map(Piece::code).toList());
    List<Piece> pieces =
        span.pieces().stream()
            .map(piece -> codes.contains(piece.code()) ? without(piece, change.from()) : piece)
            .toList();
    return situation.with(
        new Span(span.needs(), pieces, span.journeys(), span.policies(), span.lying()));
  }

  private static Piece without(Piece piece, Away away) {
    List<Away> left = new ArrayList<>(piece.away());
    left.remove(away);
    return piece.away(left);
  }
}
