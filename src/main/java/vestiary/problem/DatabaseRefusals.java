package vestiary.problem;

import static java.util.Map.entry;
import static vestiary.web.Speech.word;

import java.net.ConnectException;
import java.sql.SQLException;
import java.util.ArrayDeque;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.hibernate.StaleStateException;
import org.postgresql.util.PSQLException;

/**
 * What the database says no to, in words. Constraints are known by name, which only the driver
 * tells for every kind of them; causes and suppressed exceptions are both looked at, since a
 * failure at commit hides among the latter.
 */
final class DatabaseRefusals {

  /** SQLSTATE character_not_in_repertoire; fields are looked at before, addresses are not. */
  private static final String UNKNOWN_CHARACTER = "22021";

  /** As the pool says that it had none to give in time; its words alone tell it. */
  private static final String NO_CONNECTION = "acquisition timeout";

  /**
   * Two changed the same at one moment: serialization_failure, deadlock_detected,
   * lock_not_available.
   */
  private static final Set<String> CROSSED = Set.of("40001", "40P01", "55P03");

  private static final String EXCLUDED = "23P01";

  private static final Map<String, Refusal> BY_CONSTRAINT =
      Map.ofEntries(
          entry(
              "cluster_word_once",
              new Refusal.Taken(
                  "word", word("Another cluster of this server has this word; choose another."))),
          entry(
              "no_contact_of_a_child",
              new Refusal.AgainstRule(
                  "address",
                  word("No address of anybody under 18 is kept here; nothing was changed."))),
          entry(
              "absence_said_once",
              new Refusal.Taken(
                  "from", word("Somebody has just entered this absence; look again."))),
          entry("signed_week_in_turn", new Refusal.Outdated("this week")),
          entry(
              "oversight_once",
              new Refusal.Taken("code", word("This overseer may look in already."))),
          entry(
              "lending_taken",
              new Refusal.Taken(
                  "",
                  word(
                      "One of these pieces was lent elsewhere, set aside or put in care for part of that time since it was offered. Nothing was changed; ask the lender for others."))),
          entry(
              "lending_pieces_there",
              new Refusal.Taken(
                  "",
                  word(
                      "One of these pieces is no longer in the lender's pool. Nothing was changed; ask the lender for others."))),
          entry(
              "lending_by_its_side",
              new Refusal.Taken(
                  "", word("This was answered, taken back or ended meanwhile; look again."))),
          entry(
              "lending_code_once",
              new Refusal.Taken(
                  "",
                  word(
                      "Your pool has a piece or set of the same code already, under every name tried; rename yours first."))),
          entry(
              "church_slug_once",
              new Refusal.Taken(
                  "slug", word("Another church has this short name; choose another."))),
          entry(
              "parish_name_once",
              new Refusal.Taken(
                  "parish", word("Another parish was just given this name; try again."))),
          entry(
              "person_slug_once",
              new Refusal.Taken(
                  "celebrant", word("Somebody of that name was just entered; try again."))),
          entry(
              "piece_code_once",
              new Refusal.Taken("code", word("Another piece has this code; choose another."))),
          entry(
              "set_code_once",
              new Refusal.Taken("set", word("A set of this code was just entered; try again."))),
          entry(
              "suit_name_once",
              new Refusal.Taken("suit", word("A suit of this name was just entered; try again."))),
          entry(
              "journey_once",
              new Refusal.Taken(
                  "to", word("This journey was just entered by somebody else; try again."))),
          entry(
              "occupation_one_at_a_time",
              new Refusal.Taken(
                  "from",
                  word(
                      "The piece is already taken for part of that time; look at its list and choose another time or piece."))),
          entry(
              "counted_piece_stays",
              new Refusal.Taken(
                  "",
                  word(
                      "This piece stands in a stocktake, so that it cannot be taken out of the list. Withdraw it from use instead."))),
          entry(
              "stocktake_one_at_a_time",
              new Refusal.Taken(
                  "", word("Somebody has just begun a stocktake of this church; join that one."))),
          entry(
              "stocktake_elsewhere_once",
              new Refusal.Taken("date", word("This inventory was just noted by somebody else."))),
          entry(
              "stocktake_line_once",
              new Refusal.Taken("code", word("Somebody has just ticked this piece; look again."))),
          entry(
              "applied_remedy_once",
              new Refusal.Taken(
                  "", word("Somebody has just mended this clash; look at it again."))),
          entry(
              "accepted_step_once",
              new Refusal.Taken(
                  "",
                  word("Somebody has just accepted something for the same person; look again."))),
          entry(
              "asking_one_at_a_time",
              new Refusal.Taken(
                  "carrier",
                  word("Somebody was just asked to carry this; look again before you ask."))),
          entry(
              "wish_once",
              new Refusal.Taken(
                  "", word("This is asked for already for the same Mass; wait for the answer."))),
          entry(
              "consent_once",
              new Refusal.Taken(
                  "", word("The owner's answer was just noted by somebody else; look again."))),
          entry(
              "user_login_once",
              new Refusal.Taken(
                  "login", word("Somebody else signs in by this name; choose another."))),
          entry(
              "user_person_once",
              new Refusal.Taken(
                  "person", word("Another user is this person already; look there."))),
          entry(
              "proper_slug_once",
              new Refusal.Taken(
                  "id",
                  word("Another day of your own was just given this short name; try again."))),
          entry(
              "proper_of_all_once",
              new Refusal.Taken(
                  "celebration",
                  word("This celebration was just entered for all churches; look at the list."))),
          entry(
              "proper_of_church_once",
              new Refusal.Taken(
                  "celebration",
                  word(
                      "This celebration was just entered for one of these churches; look at the list."))),
          entry(
              "proper_place_once",
              new Refusal.Taken(
                  "place",
                  word(
                      "Another day was just given this place, which is held once; look at the list."))));

  private DatabaseRefusals() {}

  /** The refusal that lies behind an exception, or empty if it is no refusal of the database. */
  static Optional<Refusal> find(Throwable failure) {
    return search(failure, DatabaseRefusals::refusal);
  }

  private static Optional<Refusal> refusal(Throwable cause) {
    if (cause instanceof StaleStateException) {
      return Optional.of(new Refusal.Outdated("this"));
    }
    if (cause instanceof PSQLException psql && psql.getServerErrorMessage() != null) {
      String constraint = psql.getServerErrorMessage().getConstraint();
      if (constraint != null && BY_CONSTRAINT.containsKey(constraint)) {
        return Optional.of(BY_CONSTRAINT.get(constraint));
      }
    }
    if (cause instanceof SQLException sql && UNKNOWN_CHARACTER.equals(sql.getSQLState())) {
      return Optional.of(
          new Refusal.Unreadable(
              400,
              ProblemKind.UNREADABLE_REQUEST.title(),
              word("The address holds a character that cannot be kept.")));
    }
    if (cause instanceof SQLException sql && CROSSED.contains(state(sql))) {
      return Optional.of(
          new Refusal.Taken(
              "",
              word(
                  "Somebody else was changing the same thing at that very moment. Nothing of yours was saved; look again, then do it again.")));
    }
    return isAway(cause) ? Optional.of(new Refusal.DatabaseAway()) : Optional.empty();
  }

  /** Whether somebody else was quicker: the same may be tried again, or told who it was. */
  static boolean isRaceLost(Throwable failure) {
    return search(
            failure,
            cause ->
                cause instanceof SQLException sql
                        && (CROSSED.contains(state(sql)) || EXCLUDED.equals(sql.getSQLState()))
                    ? Optional.of(true)
                    : Optional.empty())
        .isPresent();
  }

  private static String state(SQLException failure) {
    return failure.getSQLState() == null ? "" : failure.getSQLState();
  }

  /** SQLSTATE classes 08 and 57P: the connection is lost, or the server is going or coming. */
  private static boolean isAway(Throwable cause) {
    if (cause instanceof ConnectException) {
      return true;
    }
    if (!(cause instanceof SQLException sql)) {
      return false;
    }
    String state = state(sql);
    return state.startsWith("08")
        || state.startsWith("57P")
        || state.equals("53300")
        || String.valueOf(sql.getMessage()).toLowerCase(Locale.ROOT).contains(NO_CONNECTION);
  }

  private static <T> Optional<T> search(Throwable start, Function<Throwable, Optional<T>> look) {
    Set<Throwable> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    Deque<Throwable> open = new ArrayDeque<>();
    open.add(start);
    while (!open.isEmpty()) {
      Throwable next = open.poll();
      if (!seen.add(next)) {
        continue;
      }
      Optional<T> found = look.apply(next);
      if (found.isPresent()) {
        return found;
      }
      Stream.concat(
              Stream.ofNullable(next.getCause()),
              Stream.concat(Stream.of(next.getSuppressed()), next(next)))
          .forEach(open::add);
    }
    return Optional.empty();
  }

  private static Stream<Throwable> next(Throwable failure) {
    return failure instanceof SQLException sql
        ? Stream.ofNullable(sql.getNextException())
        : Stream.empty();
  }
}
