package vestiary.mail;

import java.util.Optional;
import java.util.UUID;

/**
 * Where a reader is written to. This room knows neither people nor users, so the feature that does
 * answers.
 */
public interface ReaderAddresses {

  /** Empty if none is kept, or nobody has that id any more. */
  Optional<String> find(UUID reader);
}
