package vestiary.plan;

import java.util.List;

/**
 * Pieces carried together, as the API writes it.
 *
 * @param from short name of a church
 * @param ready from when they can be taken; absent if they lie there from the start
 * @param by who travels that way anyway; absent if the journey is made for them
 * @param carriage whether the journey is made for the vestments alone
 * @param onAsking whether an owner must be asked first
 */
record MovementBody(
    List<String> pieces,
    String from,
    String to,
    String ready,
    String leaveBy,
    String arriveBy,
    String by,
    boolean carriage,
    boolean onAsking) {}
