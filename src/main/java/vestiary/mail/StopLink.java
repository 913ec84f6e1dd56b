package vestiary.mail;

/**
 * The link by which whoever reads a letter says that they want no more of its kind.
 *
 * @param address the whole address, which holds a secret; empty for none
 * @param fingerprint by which the secret is known again; empty for none
 */
public record StopLink(String address, String fingerprint) {

  public static final StopLink NONE = new StopLink("", "");
}
