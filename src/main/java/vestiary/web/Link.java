package vestiary.web;

/**
 * A link with its words. An empty address means that there is none to offer, and nothing is shown.
 */
public record Link(String text, String address) {

  public static final Link NONE = new Link("", "");

  /** The same with its English words said in the language of the request. */
  public Link said() {
    return new Link(Speech.say(text), address);
  }
}
