package vestiary.exchange;

import java.util.Arrays;
import java.util.List;
import vestiary.calendar.Colour;
import vestiary.calendar.MassKind;
import vestiary.calendar.Term;

/** The words of the trade that cells may hold. */
final class Words {

  static final List<String> COLOURS = of(Colour.class);
  static final List<String> MASSES = of(MassKind.class);
  static final List<String> GRADES = List.of("ferial", "festive", "solemn");
  static final List<String> OWNER_POLICIES = List.of("freely", "asking", "never");
  static final List<String> LEAVES = List.of("none", "celebrant", "rector", "bishop");
  static final List<String> ROLES =
      List.of("priest", "deacon", "bishop", "administrator", "sacristan");
  static final List<String> VESTED = List.of("principal", "concelebrant", "deacon", "minister");
  static final List<String> LANGUAGES = List.of("en", "es");

  static final List<String> PIECE_KINDS =
      List.of(
          "chasuble",
          "stole",
          "deacon-stole",
          "dalmatic",
          "cope",
          "humeral-veil",
          "alb",
          "amice",
          "cincture",
          "surplice",
          "mitre",
          "vimpa",
          "pall",
          "other");

  /** Kinds of piece that are worn in the colour of the Mass. */
  static final List<String> COLOURED_KINDS =
      List.of("chasuble", "stole", "deacon-stole", "dalmatic", "cope", "humeral-veil");

  private Words() {}

  private static <T extends Enum<T> & Term> List<String> of(Class<T> type) {
    return Arrays.stream(type.getEnumConstants()).map(Term::id).toList();
  }
}
