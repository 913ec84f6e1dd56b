package vestiary.access;

import java.util.Optional;

/**
 * Knows people by what they hold. This room knows neither users nor what a cluster is, so the
 * feature that does answers. The cluster of the secret is the current one when it is asked.
 */
public interface WhoAsks {

  /** Whoever holds the cookie of an open session. */
  Optional<Visitor> findBySession(Secret secret);

  /** Whoever holds a token of the API that has not ended. */
  Optional<Visitor> findByToken(Secret secret);

  /** Whoever holds the key of a feed that has not ended; it reads only. */
  Optional<Visitor> findByFeed(Secret secret);

  /** Whether it is the secret of a link that is still good. */
  boolean isLink(Secret secret);

  /** Whether the current cluster is the demo, which everybody may look at. */
  boolean isDemo();
}
