package vestiary.planning;

import java.util.List;

/**
 * One thing that a remedy changes, as the API writes it; what does not apply is {@code null}.
 *
 * @param kind carry, colour, bring-own, step, release, bring-back, borrow, move or buy
 * @param sentence for people
 * @param mass the Mass that is changed or served
 * @param pieces their codes; empty where none is named
 * @param from short name of a church
 * @param by who travels that way anyway
 * @param start the new one
 */
public record ChangeValue(
    String kind,
    String sentence,
    String mass,
    List<String> pieces,
    String from,
    String to,
    String leaveBy,
    String arriveBy,
    String by,
    String colour,
    String start,
    String step,
    String source) {

  public ChangeValue {
    pieces = List.copyOf(pieces);
  }

  /** Nothing but what it is. */
  public static ChangeValue of(String kind, String sentence, List<String> pieces) {
    return new ChangeValue(
        kind, sentence, null, pieces, null, null, null, null, null, null, null, null, null);
  }

  /** Of that Mass. */
  public ChangeValue of(String id) {
    return new ChangeValue(
        kind, sentence, id, pieces, from, to, leaveBy, arriveBy, by, colour, start, step, source);
  }

  /** For that Mass, from church to church, by short name. */
  public ChangeValue at(String id, String there, String here) {
    return new ChangeValue(
        kind, sentence, id, pieces, there, here, leaveBy, arriveBy, by, colour, start, step,
        source);
  }

  /** At those hours. */
  public ChangeValue when(String leaves, String arrives, String carrier) {
    return new ChangeValue(
        kind, sentence, mass, pieces, from, to, leaves, arrives, carrier, colour, start, step,
        source);
  }

  /** In that colour, or at that hour. */
  public ChangeValue to(String otherColour, String otherStart) {
    return new ChangeValue(
        kind,
        sentence,
        mass,
        pieces,
        from,
        to,
        leaveBy,
        arriveBy,
        by,
        otherColour,
        otherStart,
        step,
        source);
  }

  /** By that substitute. */
  public ChangeValue by(String substitute, String norm) {
    return new ChangeValue(
        kind,
        sentence,
        mass,
        pieces,
        from,
        to,
        leaveBy,
        arriveBy,
        by,
        colour,
        start,
        substitute,
        norm);
  }
}
