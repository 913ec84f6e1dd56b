package vestiary.regrouping;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import vestiary.access.CurrentCluster;
import vestiary.cluster.Church;
import vestiary.cluster.ReadCluster;
import vestiary.telling.KeepSilent;
import vestiary.users.LetInAdministrator;

/**
 * Makes two clusters of one: the second begins with all that the first has, and then each gives up
 * the churches that are the other's.
 */
@ApplicationScoped
class SplitCluster {

  private static final Duration LONGEST = Duration.ofMinutes(10);

  private final CopyCluster copy;
  private final LeaveChurches leave;
  private final ReadCluster cluster;
  private final CurrentCluster current;
  private final LetInAdministrator letIn;
  private final KeepSilent letters;

  SplitCluster(
      CopyCluster copy,
      LeaveChurches leave,
      ReadCluster cluster,
      CurrentCluster current,
      LetInAdministrator letIn,
      KeepSilent letters) {
    this.letters = letters;
    this.copy = copy;
    this.leave = leave;
    this.cluster = cluster;
    this.current = current;
    this.letIn = letIn;
  }

  /**
   * Which churches go and which stay, by short name.
   *
   * @param going each is there, and some stay
   */
  record Division(List<String> going, List<String> staying) {
    Division {
      going = List.copyOf(going);
      staying = List.copyOf(staying);
    }
  }

  /**
   * Divides the churches, and sees to it that each can be given up, by doing it and giving it up.
   *
   * @throws vestiary.problem.Refused if one is unknown, none or all would go, or something that is
   *     at home in one is out
   */
  Division attempt(Side side, List<String> going, String word) {
    current.assign(side.id());
    QuarkusTransaction.begin(QuarkusTransaction.beginOptions().timeout((int) LONGEST.toSeconds()));
    try {
      List<String> staying =
          new ArrayList<>(cluster.churches().stream().map(Church::slug).toList());
      going.forEach(slug -> cluster.getChurch(slug));
      if (going.isEmpty() || !staying.removeAll(going) || staying.isEmpty()) {
        throw CannotRegroup.because(
            "Name the churches that go to %s by their short names, with commas between, and leave some in %s.",
            word, side);
      }
      leave.leave(going, word);
      leave.leave(staying, side.name());
      return new Division(going, staying);
    } finally {
      QuarkusTransaction.rollback();
    }
  }

  /** Makes the second cluster, whole or not at all; both have all churches as yet. */
  Side copy(Side side, String word, Path archive) {
    return copy.copy(side, word, archive);
  }

  /**
   * Gives up in each what is the other's; what was given up before stays so. Nobody is written that
   * a Mass does not stand any more: it does, in the other.
   */
  void part(Side side, Side made, Division division) {
    in(side, () -> leave(division.going(), made));
    in(made, () -> leave(division.staying(), side));
  }

  private void leave(List<String> slugs, Side to) {
    leave.leave(slugs, to.name());
    letters.onMasses();
  }

  /** By which the administrator of the second chooses a password. */
  String link(Side made) {
    current.assign(made.id());
    return QuarkusTransaction.requiringNew().call(() -> letIn.link("Administrator"));
  }

  private void in(Side side, Runnable work) {
    current.assign(side.id());
    QuarkusTransaction.requiringNew().timeout((int) LONGEST.toSeconds()).run(work);
  }
}
