package vestiary.onemore;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.List;
import java.util.UUID;
import vestiary.acceptance.AcceptSteps;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.pool.HoldForWearer;
import vestiary.pool.PlannedWear;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.schedule.AddMinister;
import vestiary.schedule.DatedMass;
import vestiary.setout.ReadSetOut;
import vestiary.vesting.AlbLength;
import vestiary.vesting.MassId;
import vestiary.vesting.Role;
import vestiary.web.Speech;

/**
 * Adds one who has come to a Mass, and holds what he wears, all of it or nothing; and takes that
 * back.
 */
@ApplicationScoped
@Transactional
public class TakeOneMore {

  private final FindWays find;
  private final ReadSetOut setOut;
  private final OneMoreRows rows;
  private final AddMinister ministers;
  private final HoldForWearer hold;
  private final AcceptSteps steps;
  private final CurrentVisitor visitor;
  private final Clock clock;

  TakeOneMore(
      FindWays find,
      ReadSetOut setOut,
      OneMoreRows rows,
      AddMinister ministers,
      HoldForWearer hold,
      AcceptSteps steps,
      CurrentVisitor visitor,
      Clock clock) {
    this.find = find;
    this.setOut = setOut;
    this.rows = rows;
    this.ministers = ministers;
    this.hold = hold;
    this.steps = steps;
    this.visitor = visitor;
    this.clock = clock;
  }

  /**
   * Somebody who has come, as it was asked.
   *
   * @param way one of those offered; not given: the first
   * @param pieces those that were offered with it; not given: whatever there is
   * @param height in centimetres, for the alb; not given: unknown
   */
  public record Request(String role, String way, List<String> pieces, Integer height) {}

  /** What is wrong with a request is gathered; the rest is read. */
  record Wish(Role role, String way, List<String> pieces, AlbLength albs) {}

  static Wish read(Request request) {
    Asked asked = new Asked();
    Role role = asked.term("role", request.role(), Role.CONCELEBRANT);
    if (role != Role.CONCELEBRANT && role != Role.DEACON) {
      asked.fault(
          "role", say("role \"%s\" cannot come; it can be concelebrant or deacon.", role.id()));
    }
    int height =
        asked.whole("height", request.height(), AlbLength.SHORTEST_MAN, AlbLength.TALLEST_MAN, 0);
    String way = asked.text("way", request.way());
    asked.refuseIfFaulty();
    return new Wish(
        role, way, request.pieces() == null ? List.of() : request.pieces(), new AlbLength(height));
  }

  /**
   * Adds him.
   *
   * @throws Refused if the Mass is over or cancelled, or what was offered is not at hand any more
   */
  OneMoreRow take(String mass, Request request) {
    Wish wish = read(request);
    DatedMass known = locked(mass);
    FindWays.Found found = find.find(mass, wish.role(), wish.albs());
    Way way = chosen(found, wish);
    List<StepValue> taken = way.steps().stream().map(StepValue::of).toList();
    OneMoreRow row = new OneMoreRow();
    row.massId = known.id().value();
    row.role = wish.role().id();
    row.own = way.isOwn();
    row.pieces = way.codes().toArray(String[]::new);
    row.steps = taken;
    row.takenAt = clock.instant();
    ministers.add(known.id(), wish.role(), way.isOwn());
    steps.accept(
        taken.stream()
            .map(
                one ->
                    one.accepted(
                        known.id(),
                        known.church().id(),
                        wish.role(),
                        visitor.visitor().name(),
                        row.takenAt))
            .toList());
    row.held =
        hold.hold(way.given().stream().map(given -> held(found, given)).toList())
            .toArray(UUID[]::new);
    rows.persistAndFlush(row);
    return row;
  }

  /** It is locked before it is read, so that it is read as whoever came before has left it. */
  private DatedMass locked(String mass) {
    ministers.lock(new MassId(Asked.id("Mass", mass)));
    DatedMass known = setOut.standing(mass);
    visitor.refuseOutsideOwn(Action.SET_OUT, known.church().id().value());
    return known;
  }

  private static Way chosen(FindWays.Found found, Wish wish) {
    Way way =
        found.ways().stream()
            .filter(one -> wish.way().isEmpty() || one.id().equals(wish.way()))
            .findFirst()
            .orElseThrow(() -> gone(say("That is not at hand any more.") + " " + lookAgain()));
    if (!wish.pieces().isEmpty() && !way.codes().equals(wish.pieces())) {
      List<String> missing =
          wish.pieces().stream().filter(code -> !way.codes().contains(code)).toList();
      throw gone(
          say(
              "%s was taken by somebody just now. %s",
              missing.isEmpty() ? say("A piece") : String.join(", ", missing), lookAgain()));
    }
    return way;
  }

  private static Refused gone(String sentence) {
    return new Refused(new Refusal.Taken("", sentence));
  }

  private static PlannedWear held(FindWays.Found found, Way.Given given) {
    return new PlannedWear(
        given.piece().code(),
        given.need().wearer(),
        found.mass().church().id(),
        0,
        found.window().setOut(),
        found.window().cleared());
  }

  /**
   * Takes the latest of his role away again, with all that was held and accepted for him. Once it
   * is undone, undoing it again changes nothing.
   *
   * @throws Refused if there is no such Mass, or another came after him
   */
  public void undo(String mass, String id) {
    DatedMass known = locked(mass);
    UUID row = Asked.id("person", id);
    rows.find(known.id(), row).ifPresent(one -> undo(known, one));
  }

  private void undo(DatedMass mass, OneMoreRow row) {
    boolean isLatest =
        rows.of(mass.id()).stream()
            .filter(one -> one.role.equals(row.role))
            .findFirst()
            .filter(one -> one.id.equals(row.id))
            .isPresent();
    if (!isLatest) {
      throw new Refused(
          new Refusal.AgainstRule(
              "",
              say("Another %s came after him; undo that one first.", Speech.noun(1, row.role))));
    }
    hold.letGo(List.of(row.held));
    steps.withdraw(
        row.steps.stream()
            .map(one -> one.accepted(mass.id(), mass.church().id(), row.role(), "", row.takenAt))
            .toList());
    ministers.remove(mass.id(), row.role(), row.own);
    rows.delete(row);
    rows.flush();
  }

  /** Those who came to a Mass, the latest first. */
  List<OneMoreRow> taken(DatedMass mass) {
    return rows.of(mass.id());
  }

  private static String lookAgain() {
    return say("Nothing was changed; look what is still there.");
  }
}
