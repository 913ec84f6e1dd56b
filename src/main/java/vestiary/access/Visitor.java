package vestiary.access;

import java.util.Set;
import java.util.UUID;

/** Whoever makes the present request. */
public sealed interface Visitor {

  /** As pages call them; empty for nobody. */
  String name();

  /** What the history of changes knows them by; no name, so that names can be forgotten. */
  String mark();

  /** How far they may go with that action. */
  Reach reach(Action action);

  /** Whether they may do it somewhere at least. */
  default boolean may(Action action) {
    return reach(action) != Reach.NOWHERE;
  }

  /** Whether they may do it in that church. */
  default boolean mayIn(Action action, UUID church) {
    return reach(action) == Reach.EVERYWHERE;
  }

  /** Somebody who has not signed in, or a job of the server itself. */
  record Nobody() implements Visitor {
    @Override
    public String name() {
      return "";
    }

    @Override
    public String mark() {
      return "";
    }

    @Override
    public Reach reach(Action action) {
      return Reach.NOWHERE;
    }
  }

  /** Whoever holds the token that stands in the server's environment. */
  record KeeperOfServer() implements Visitor {
    @Override
    public String name() {
      return "The token of the server";
    }

    @Override
    public String mark() {
      return "server";
    }

    /** It is nobody's, so that there is no account to keep. */
    @Override
    public Reach reach(Action action) {
      return action == Action.KEEP_OWN_ACCOUNT ? Reach.NOWHERE : action.reach(Role.ADMINISTRATOR);
    }
  }

  /**
   * A user, in a browser or by a program's token.
   *
   * @param churches ids of those named for the user
   * @param looksOnly whether the token they come by is for reading alone
   */
  record User(UUID id, String name, Role role, Set<UUID> churches, boolean looksOnly)
      implements Visitor {

    public User {
      churches = Set.copyOf(churches);
    }

    @Override
    public String mark() {
      return id.toString();
    }

    @Override
    public Reach reach(Action action) {
      return looksOnly && action != Action.LOOK ? Reach.NOWHERE : action.reach(role);
    }

    @Override
    public boolean mayIn(Action action, UUID church) {
      return switch (reach(action)) {
        case EVERYWHERE -> true;
        case OWN_CHURCHES -> churches.contains(church);
        case NOWHERE -> false;
      };
    }
  }

  /**
   * A phone or computer that a sacristy shares. It does what a sacristan of its church may do, but
   * for what is one's own; whoever holds it says so when something is changed.
   *
   * @param church id of its church
   * @param hand id of the person who says to be holding it; empty while nobody has
   */
  record Device(UUID id, String name, UUID church, String hand) implements Visitor {

    private static final Set<Action> NOT_SHARED =
        Set.of(
            Action.KEEP_OWN_ACCOUNT,
            Action.LET_DEVICES,
            Action.SAY_OWN_ABSENCE,
            Action.SEE_CHILDREN);

    @Override
    public String mark() {
      return hand;
    }

    @Override
    public Reach reach(Action action) {
      return NOT_SHARED.contains(action) ? Reach.NOWHERE : action.reach(Role.SACRISTAN);
    }

    @Override
    public boolean mayIn(Action action, UUID where) {
      return switch (reach(action)) {
        case EVERYWHERE -> true;
        case OWN_CHURCHES -> church.equals(where);
        case NOWHERE -> false;
      };
    }
  }

  /**
   * A user of another cluster, who looks into the present one because it lets them.
   *
   * @param home id of the cluster in which they sign in
   * @param looksOnly whether the token they come by is for reading alone
   */
  record Overseer(UUID id, String name, UUID home, boolean looksOnly) implements Visitor {

    @Override
    public String mark() {
      return id.toString();
    }

    /** Their password and tokens are kept at home, not here. */
    @Override
    public Reach reach(Action action) {
      boolean shut = action == Action.KEEP_OWN_ACCOUNT || looksOnly && action != Action.LOOK;
      return shut ? Reach.NOWHERE : action.reach(Role.OVERSEER);
    }
  }
}
