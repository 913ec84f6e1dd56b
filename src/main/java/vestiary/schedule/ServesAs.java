package vestiary.schedule;

import static vestiary.web.Speech.word;

import java.util.Optional;
import vestiary.calendar.Term;
import vestiary.people.PersonRole;
import vestiary.vesting.Role;

/**
 * As what a lay minister serves at a Mass: GIRM 98 to 105, extraordinary ministers of Holy
 * Communion also GIRM 162.
 */
public enum ServesAs implements Term {
  SERVER(word("server"), word("servers")),
  ACOLYTE(word("acolyte"), word("acolytes")),
  READER(word("reader"), word("readers")),
  COMMUNION_MINISTER(word("minister of Communion"), word("ministers of Communion")),
  SACRISTAN(word("sacristan"), word("sacristans"));

  private final String one;
  private final String many;

  ServesAs(String one, String many) {
    this.one = one;
    this.many = many;
  }

  /**
   * What somebody serves as where nothing else is said; empty for those whose task in the cluster
   * is none at Mass.
   */
  public static Optional<ServesAs> findUsual(PersonRole role) {
    return switch (role) {
      case SERVER -> Optional.of(SERVER);
      case READER -> Optional.of(READER);
      case SACRISTAN -> Optional.of(SACRISTAN);
      case MINISTER -> Optional.of(COMMUNION_MINISTER);
      case PRIEST, DEACON, BISHOP, ADMINISTRATOR -> Optional.empty();
    };
  }

  /** The English noun, to be said later. */
  public String noun(int number) {
    return number == 1 ? one : many;
  }

  /**
   * In whose alb they are counted: servers and acolytes. Readers, ministers of Communion and
   * sacristans commonly serve in what they came in (GIRM 339 leaves it open; common practice, no
   * source), so the Mass says by number who of them wears one.
   */
  public Optional<Role> findVests() {
    return switch (this) {
      case SERVER -> Optional.of(Role.SERVER);
      case ACOLYTE -> Optional.of(Role.ACOLYTE);
      default -> Optional.empty();
    };
  }
}
