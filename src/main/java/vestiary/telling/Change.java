package vestiary.telling;

import java.time.Instant;
import java.util.UUID;

/** Something was changed that may have to be told. */
interface Change {

  UUID id();

  Instant at();
}
