package vestiary.plan;

import java.util.List;

/**
 * Pieces carried together, as the API writes it.
 *
 * @param id the same for the same trip in any plan
 * @param from short name of a church
 * @param ready from when they can be taken; absent if they lie there from the start
 * @param by who travels that way anyway; absent if the journey is made for them
 * @param carriage whether the journey is made for the vestments alone
 * @param onAsking whether an owner must be asked first
 * @param state proposed, asked, accepted, declined or done; absent of a plan, applied or not
 * @param carrier who was asked; absent while nobody is
 * @param version of the asking, to be sent with an answer; absent while nobody is asked
 * @param changed when the state became what it is
 * @param offered id of the plan that was made after a refusal
 */
public record MovementBody(
    String id,
    List<String> pieces,
    String from,
    String to,
    String ready,
    String leaveBy,
    String arriveBy,
    String by,
    boolean carriage,
    boolean onAsking,
    String state,
    String carrier,
    Integer version,
    String changed,
    String offered) {

  public MovementBody {
    pieces = List.copyOf(pieces);
  }
}
