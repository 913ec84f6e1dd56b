package vestiary.access;

/**
 * Knows the links that letters hold beside those of {@link WhoAsks}. This room knows no letters, so
 * the feature that writes them answers. The cluster of the secret is the current one when it is
 * asked.
 */
public interface LinksInLetters {

  /** Whether it is the secret of a link that is still good. */
  boolean isLink(Secret secret);
}
