package vestiary.vesting;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import vestiary.calendar.Colour;

/**
 * What one vested person at one Mass must have: one piece of one kind and colour, from set-out to
 * clearance.
 *
 * @param festive whether gold and silver may stand for red or green (RS 127)
 * @param preferred what would suit best, which never decides who is short
 */
public record Need(
    Wearer wearer,
    ChurchId church,
    Window window,
    PieceKind kind,
    Colour colour,
    boolean festive,
    Norm norm,
    Make preferred)
    implements Comparable<Need> {

  private static final Comparator<Need> CANONICAL =
      Comparator.comparing((Need need) -> need.window.start())
          .thenComparing(Need::church)
          .thenComparing(Need::mass)
          .thenComparing(Need::role)
          .thenComparing(Need::ordinal)
          .thenComparing(Need::kind)
          .thenComparing(Need::colour);

  public Need {
    Objects.requireNonNull(wearer, "wearer");
    Objects.requireNonNull(church, "church");
    Objects.requireNonNull(window, "window");
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(colour, "colour");
    Objects.requireNonNull(norm, "norm");
    Objects.requireNonNull(preferred, "preferred");
  }

  /** A need for which every lawful piece suits alike. */
  public Need(
      Wearer wearer,
      ChurchId church,
      Window window,
      PieceKind kind,
      Colour colour,
      boolean festive,
      Norm norm) {
    this(wearer, church, window, kind, colour, festive, norm, Make.ANY);
  }

  public MassId mass() {
    return wearer.mass();
  }

  public Role role() {
    return wearer.role();
  }

  public int ordinal() {
    return wearer.ordinal();
  }

  /** Lawful substitutes, the nearest first. */
  public List<Step> ladder() {
    return norm.ladder();
  }

  /** Whether it must be mended when neither the piece nor a substitute can be had. */
  public boolean isMust() {
    return norm.must();
  }

  /** The norm that asks for the piece. */
  public String source() {
    return norm.source();
  }

  /** Whether a piece of these colours serves the colour asked for, substitutes left aside. */
  public boolean isServedBy(List<Colour> colours) {
    return ColourMatch.of(colours, colour, festive).serves();
  }

  /** Whether a piece of these colours serves the colour asked for or a substitute's. */
  public boolean isLawfullyServedBy(List<Colour> colours) {
    return isServedBy(colours) || ladder().stream().anyMatch(step -> isServedBy(step, colours));
  }

  /** Whether a piece of these colours serves as this substitute: gold never for violet or black. */
  public boolean isServedBy(Step step, List<Colour> colours) {
    return !step.isWithout()
        && ColourMatch.mayStandFor(colours, colour)
        && ColourMatch.of(colours, step.colourFor(colour), festive).serves();
  }

  /**
   * What is asked once a substitute of the ladder is taken: the piece in its colour, for which
   * nothing stands in any more, or nothing where the piece is left out.
   */
  public Optional<Need> with(Step step) {
    return step.isWithout()
        ? Optional.empty()
        : Optional.of(
            new Need(
                wearer,
                church,
                window,
                kind,
                step.colourFor(colour),
                festive,
                new Norm(norm.must(), List.of(), step.source()),
                preferred));
  }

  /** By start, church, Mass, role, number, kind and colour: the order of all findings. */
  @Override
  public int compareTo(Need other) {
    return CANONICAL.compare(this, other);
  }
}
