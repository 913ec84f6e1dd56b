package vestiary.calendar;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * A word of the trade with one fixed written form: lower case, words joined by hyphens. The form is
 * what the API, the files and the database carry; people read translated names instead.
 */
public interface Term {

  /** The constant's Java name; every enum has it already. */
  String name();

  /** The written form, for example {@code feast-of-the-lord}. */
  default String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /**
   * The constant that is written so, or empty if there is none. Letter case and surrounding blanks
   * do not matter.
   */
  static <T extends Enum<T> & Term> Optional<T> find(Class<T> type, String id) {
    String wanted = id.strip().toLowerCase(Locale.ROOT);
    return Arrays.stream(type.getEnumConstants()).filter(t -> t.id().equals(wanted)).findFirst();
  }
}
