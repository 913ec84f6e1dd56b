package vestiary.onemore;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import vestiary.pool.PooledPiece;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.schedule.DatedMass;
import vestiary.setout.AtHand;
import vestiary.setout.ReadSetOut;
import vestiary.vesting.AlbLength;
import vestiary.vesting.Role;
import vestiary.vesting.Window;

/** What is still at hand for one more at a Mass. */
@ApplicationScoped
@Transactional
class FindWays {

  private final ReadSetOut setOut;
  private final Clock clock;

  FindWays(ReadSetOut setOut, Clock clock) {
    this.setOut = setOut;
    this.clock = clock;
  }

  /**
   * What was found.
   *
   * @param window from when until when the pieces are wanted
   * @param heightMatters whether albs of different lengths are at hand
   */
  record Found(DatedMass mass, Role role, Window window, List<Way> ways, boolean heightMatters) {
    Found {
      ways = List.copyOf(ways);
    }
  }

  /**
   * The ways to vest him, the nearest to what the norms ask first, his own last.
   *
   * @throws Refused if there is no such Mass, it is cancelled or over, or nobody of that role vests
   *     at it
   */
  Found find(String id, Role role, AlbLength albs) {
    DatedMass mass = setOut.standing(id);
    if (!mass.end().toInstant().isAfter(clock.instant())) {
      throw new Refused(
          new Refusal.AgainstRule(
              "mass", say("This Mass is over. Say what was worn instead, on its own page.")));
    }
    if (role == Role.CONCELEBRANT && !mass.kind().isMass()) {
      throw new Refused(
          new Refusal.AgainstRule("role", say("This is no Mass, so that nobody concelebrates.")));
    }
    ReadSetOut.Loaded loaded = setOut.load(mass.date(), mass.date());
    Window window = window(mass, loaded);
    List<PooledPiece> free =
        new AtHand(loaded.span(), loaded.carried()).at(mass.church().id(), mass.id(), window);
    WaysToVest ways = new WaysToVest(loaded.span(), mass, role, free, albs);
    return new Found(mass, role, window, ways.all(), ways.isHeightOfUse());
  }

  /** From now on, if set-out has passed; what was in use before may be in the cupboard again. */
  private Window window(DatedMass mass, ReadSetOut.Loaded loaded) {
    Window whole = Window.of(mass.toVestedMass(), loaded.span().cluster().policies().vesting());
    Instant now = clock.instant();
    Instant from = now.isAfter(whole.setOut()) ? now : whole.setOut();
    Instant latest = from.isAfter(whole.start()) ? whole.start() : from;
    return new Window(latest, whole.start(), whole.end(), whole.cleared());
  }
}
