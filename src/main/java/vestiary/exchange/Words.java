package vestiary.exchange;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import vestiary.calendar.Colour;
import vestiary.calendar.Leave;
import vestiary.calendar.MassKind;
import vestiary.calendar.ProperPlace;
import vestiary.calendar.Season;
import vestiary.calendar.SundayBeside;
import vestiary.calendar.Term;
import vestiary.pattern.LiturgicalDays;
import vestiary.pattern.SchoolTime;
import vestiary.people.PersonRole;
import vestiary.pool.CareKind;
import vestiary.pool.OwnerPolicy;
import vestiary.vesting.Grade;
import vestiary.vesting.Ministers;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Role;

/**
 * Words of which a cell may hold one.
 *
 * @param all in small letters, in the order in which they are told to people
 */
record Words(List<String> all) {

  static final Words COLOURS = of(Colour.class);
  static final Words PROPER_PLACES = of(ProperPlace.class);
  static final Words SUNDAYS = of(SundayBeside.class);
  static final Words MASSES = of(MassKind.class);
  static final Words LEAVES = of(Leave.class);
  static final Words SEASONS = of(Season.class);
  static final Words LITURGICAL_DAYS = of(LiturgicalDays.class);
  static final Words SCHOOL_TIMES = of(SchoolTime.class);
  static final Words GRADES = of(Grade.class);
  static final Words OWNER_POLICIES = of(OwnerPolicy.class);
  static final Words CARE_KINDS = of(CareKind.class);
  static final Words ROLES = of(PersonRole.class);
  static final Words VESTED = of(Role.class);
  static final Words FURTHER_MINISTERS = new Words(ids(Role.FURTHER));
  static final Words BESIDES = new Words(ids(Ministers.BESIDES));
  static final Words PIECE_KINDS = of(PieceKind.class);
  static final Words LANGUAGES = new Words(List.of("en", "es"));
  static final Words YES_OR_NO = new Words(List.of("true", "false", "yes", "no"));

  /** Kinds of piece that are worn in the colour of the Mass. Source: GIRM 346. */
  static final Words COLOURED_KINDS =
      new Words(
          Stream.of(
                  PieceKind.CHASUBLE,
                  PieceKind.STOLE,
                  PieceKind.DEACON_STOLE,
                  PieceKind.DALMATIC,
                  PieceKind.COPE,
                  PieceKind.HUMERAL_VEIL)
              .map(Term::id)
              .toList());

  Words {
    all = List.copyOf(all);
  }

  /** The written forms of those terms. */
  static <T extends Enum<T> & Term> Words of(Class<T> type) {
    return new Words(ids(Arrays.asList(type.getEnumConstants())));
  }

  private static List<String> ids(List<? extends Term> terms) {
    return terms.stream().map(Term::id).toList();
  }

  /** The word written so, letter case aside, or empty if it is none of these. */
  Optional<String> find(String text) {
    return Optional.of(text.toLowerCase(Locale.ROOT)).filter(all::contains);
  }

  /** The words with commas between. */
  @Override
  public String toString() {
    return String.join(", ", all);
  }
}
