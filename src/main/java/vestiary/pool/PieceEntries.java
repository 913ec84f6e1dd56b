package vestiary.pool;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import vestiary.calendar.Colour;
import vestiary.calendar.Term;
import vestiary.problem.Asked;
import vestiary.web.Entries;

/** What stands in the form of a piece: what is stored becomes entries, what was typed a request. */
final class PieceEntries {

  /** The form asks for what a piece is and for what it may serve as besides; the API for a list. */
  static final Map<String, String> NAMES = Map.of("colours", "colour");

  static final List<String> FIELDS =
      List.of(
          "code",
          "kind",
          "colour",
          "shade",
          "grade",
          "size",
          "form",
          "set",
          "suit",
          "home",
          "owner",
          "ownerPolicy",
          "condition",
          "place",
          "description",
          "provenance",
          "acquired",
          "keeper",
          "on",
          "reason",
          "to");

  private PieceEntries() {}

  /**
   * The entries of a piece that is stored.
   *
   * @param home short name of its church
   */
  static Entries from(PooledPiece piece, String home) {
    return Entries.empty()
        .with("code", piece.code())
        .with("kind", piece.kind().id())
        .with("colour", piece.colour().id())
        .with("serves", piece.colours().stream().skip(1).map(Term::id).toArray(String[]::new))
        .with("shade", piece.shade())
        .with("grade", piece.grade())
        .with("size", piece.size())
        .with("form", piece.form())
        .with("set", piece.set())
        .with("suit", piece.suit())
        .with("home", home)
        .with("owner", piece.owner())
        .with("ownerPolicy", piece.ownerPolicy().id())
        .with("condition", piece.condition())
        .with("place", piece.place())
        .with("staysHome", String.valueOf(piece.staysHome()))
        .with("description", piece.particulars().description())
        .with("provenance", piece.particulars().provenance())
        .with("acquired", piece.particulars().acquired())
        .with("precious", String.valueOf(piece.particulars().precious()))
        .with("keeper", piece.particulars().keeper())
        .with("version", String.valueOf(piece.version()));
  }

  static SavePiece.Request request(Entries typed) {
    Asked asked = new Asked();
    Integer version = asked.number("version", typed.text("version"));
    asked.refuseIfFaulty();
    return new SavePiece.Request(
        typed.text("code"),
        typed.text("kind"),
        colours(typed),
        typed.text("shade"),
        typed.text("grade"),
        typed.text("size"),
        typed.text("form"),
        typed.text("set"),
        typed.text("suit"),
        typed.text("home"),
        typed.text("owner"),
        typed.text("ownerPolicy"),
        typed.text("condition"),
        typed.text("place"),
        typed.isTicked("staysHome"),
        new Particulars(
            typed.text("description"),
            typed.text("provenance"),
            typed.text("acquired"),
            typed.isTicked("precious"),
            typed.text("keeper")),
        version);
  }

  /** What it is comes first; without that, what it may serve as would be taken for it. */
  private static List<String> colours(Entries typed) {
    String colour = typed.text("colour");
    return colour.isBlank()
        ? List.of()
        : Stream.concat(Stream.of(colour), typed.all("serves").stream()).toList();
  }

  /** All colours, for choices. */
  static Stream<Colour> allColours() {
    return Stream.of(Colour.values());
  }
}
