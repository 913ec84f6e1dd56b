package vestiary.onemore;

import java.util.List;
import vestiary.pool.PooledPiece;
import vestiary.vesting.Need;
import vestiary.vesting.Step;

/**
 * One way to vest somebody who has come.
 *
 * @param id {@code colour}, a step of the ladder, or {@code own}
 * @param given the pieces he gets, outermost first
 * @param steps the lawful substitutes he takes; none where he is vested as the norms ask
 * @param lacking needs for which nothing is at hand and without which he can yet vest
 */
record Way(String id, List<Given> given, List<Taken> steps, List<Need> lacking) {

  /** In the colour of the Mass, as the norms ask. */
  static final String COLOUR = "colour";

  /** In what he brought. */
  static final String OWN = "own";

  Way {
    given = List.copyOf(given);
    steps = List.copyOf(steps);
    lacking = List.copyOf(lacking);
  }

  static Way own() {
    return new Way(OWN, List.of(), List.of(), List.of());
  }

  boolean isOwn() {
    return id.equals(OWN);
  }

  List<String> codes() {
    return given.stream().map(one -> one.piece().code()).toList();
  }

  /** A piece for one of his needs. */
  record Given(Need need, PooledPiece piece) {}

  /** A substitute for one of his needs. */
  record Taken(Need need, Step step) {}
}
