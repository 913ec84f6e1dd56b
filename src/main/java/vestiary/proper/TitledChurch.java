package vestiary.proper;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import vestiary.calendar.Proper;
import vestiary.vesting.ChurchId;

/**
 * A church as far as propers are held against it.
 *
 * @param own what its title and its dedication bring
 */
public record TitledChurch(ChurchId id, String slug, String name, List<Proper> own) {

  /** Ids of what a church brings itself: the same in every church, and each time its own. */
  static final List<String> OWN =
      List.of(Proper.OwnTitular.CELEBRATION, Proper.Dedication.CELEBRATION);

  /** Stands for all: bound by what binds every church, and by nothing else. */
  static final TitledChurch ANY =
      new TitledChurch(new ChurchId(new UUID(0, 0)), "", "a church", List.of());

  public TitledChurch {
    own = List.copyOf(own);
  }

  /** The celebration of its title, where the calendar or a proper has it. */
  Optional<String> findTitular() {
    return find(Proper.Titular.class).map(Proper.Titular::celebration);
  }

  /** Whether its title, with a day of its own, bears this name. */
  boolean isTitled(String name) {
    return find(Proper.OwnTitular.class)
        .filter(title -> title.name().english().equalsIgnoreCase(name.strip()))
        .isPresent();
  }

  /** Whether the celebration is that of its title or its dedication, known by no other id. */
  boolean brings(String celebration) {
    return switch (celebration) {
      case Proper.OwnTitular.CELEBRATION -> find(Proper.OwnTitular.class).isPresent();
      case Proper.Dedication.CELEBRATION -> find(Proper.Dedication.class).isPresent();
      default -> false;
    };
  }

  private <T extends Proper> Optional<T> find(Class<T> kind) {
    return own.stream().filter(kind::isInstance).map(kind::cast).findFirst();
  }
}
