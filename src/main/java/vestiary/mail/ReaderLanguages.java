package vestiary.mail;

import java.util.Locale;
import java.util.UUID;

/**
 * In which language a reader is written to. This room knows neither what people chose nor their
 * cluster, so the feature that does answers.
 */
public interface ReaderLanguages {

  /** One that pages and letters are written in: as the reader chose, else as the cluster. */
  Locale language(UUID reader);
}
