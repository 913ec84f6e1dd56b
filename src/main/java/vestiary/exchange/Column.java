package vestiary.exchange;

/**
 * A column of a list that can be brought in.
 *
 * @param name as written in the header line; letter case does not matter there
 * @param required whether the column must be there and filled in on every line
 * @param meaning what it holds, in a few words for people
 */
public record Column(String name, boolean required, String meaning) {

  static Column required(String name, String meaning) {
    return new Column(name, true, meaning);
  }

  static Column optional(String name, String meaning) {
    return new Column(name, false, meaning);
  }
}
