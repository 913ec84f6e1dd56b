package vestiary.web;

/**
 * A field of a form: what stands in it, and what is wrong with it.
 *
 * @param value as it was typed or as it is stored
 * @param error one whole sentence; empty if nothing is wrong
 */
public record Field(String value, String error) {

  /** A field with nothing wrong. */
  public static Field of(String value) {
    return new Field(value, "");
  }

  /** A field with nothing in it. */
  public static Field empty() {
    return of("");
  }
}
