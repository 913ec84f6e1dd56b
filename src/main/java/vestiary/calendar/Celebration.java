package vestiary.calendar;

import java.util.List;
import java.util.Objects;

/**
 * What the calendar offers on a day.
 *
 * @param colours lawful colours, the usual one first; never empty, never gold or silver
 * @param source the calendar it stands in and its place in the table of liturgical days
 * @param colourReason why this colour
 */
public record Celebration(
    String id,
    LocalName name,
    Rank rank,
    Precedence precedence,
    List<Colour> colours,
    String source,
    Reason colourReason) {

  public Celebration {
    if (id.isBlank()) throw new IllegalArgumentException("A celebration needs an id.");
    Objects.requireNonNull(name);
    Objects.requireNonNull(rank);
    Objects.requireNonNull(precedence);
    colours = List.copyOf(colours);
    if (colours.isEmpty()) throw new IllegalArgumentException(id + " has no colour.");
    if (colours.contains(Colour.GOLD) || colours.contains(Colour.SILVER)) {
      throw new IllegalArgumentException("Gold and silver are facts of a vestment, not of " + id);
    }
    Objects.requireNonNull(source);
    Objects.requireNonNull(colourReason);
  }

  /**
   * Whether two churches that keep these keep the same day: one memorial can be another church's
   * solemnity, since it is its title.
   */
  public boolean isKeptLike(Celebration other) {
    return id.equals(other.id) && rank == other.rank && colours.equals(other.colours);
  }
}
