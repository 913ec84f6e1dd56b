package vestiary.web;

/**
 * A link with its words. An empty address means that there is none to offer, and nothing is shown.
 */
public record Link(String text, String address) {

  public static final Link NONE = new Link("", "");
}
