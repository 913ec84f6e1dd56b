package vestiary.exchange;

import static vestiary.exchange.Column.optional;
import static vestiary.exchange.Column.required;
import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import java.util.List;
import java.util.stream.Stream;
import vestiary.pool.Particulars;

/**
 * A piece, as a line gives it. Texts that were left out are empty.
 *
 * @param line physical line in the file
 * @param kind id of a kind of piece
 * @param colours ids of the colours it may serve as, what it is first; none for albs and the like
 * @param grade ferial, festive or solemn
 * @param size length of the back in centimetres, or a maker's size
 * @param set code of the set it belongs to
 * @param home slug of the church where it is kept
 * @param owner parish, diocese or person; empty is the parish of its home
 * @param ownerPolicy freely, asking or never
 * @param particulars for the inventory, or none if the line says nothing of them
 */
record PieceLine(
    int line,
    String code,
    String kind,
    List<String> colours,
    String shade,
    String grade,
    String size,
    String set,
    String suit,
    String home,
    String owner,
    String ownerPolicy,
    String condition,
    String place,
    boolean staysHome,
    String form,
    List<Particulars> particulars) {

  static final List<Column> COLUMNS =
      List.of(
          required("code", word("Code on the label, for example HT-W1-C")),
          required("kind", word("What it is, for example chasuble, stole or alb")),
          optional(
              "colours",
              word(
                  "Colours it may serve as, with bars between; the first is what it is. Albs and the like have none")),
          optional("shade", word("Shade, for example advent (bluish violet) or lent (reddish)")),
          optional("grade", word("Grade: ferial, festive or solemn")),
          optional("size", word("Length of the back in centimetres, or a maker's size such as L")),
          optional("set", word("Code of the set it belongs to")),
          optional("suit", word("Name of the suit its set belongs to")),
          required("home", word("Church where it is kept, by its short name")),
          optional(
              "owner",
              word("Parish, diocese or person that owns it; empty is the parish of its home")),
          optional(
              "ownerPolicy",
              word("Whether the owner lets it go: freely, asking or never; empty is freely")),
          optional("condition", word("Condition, for example good or worn")),
          optional("place", word("Where it lies in the sacristy")),
          optional("staysHome", word("Whether it never leaves its church")),
          optional("form", word("Cut, for example full or narrow")),
          optional(
              "description",
              word(
                  "So that a stranger would know it again; a line that says nothing in this and the next four columns leaves them as they are")),
          optional("provenance", word("Its maker, and by whose gift it came")),
          optional("acquired", word("When, as far as it is known")),
          optional("precious", word("Whether it is precious for its art or history")),
          optional("keeper", word("Who keeps it, if not the sacristy of its home")));

  PieceLine {
    colours = List.copyOf(colours);
    particulars = List.copyOf(particulars);
  }

  static Reading<PieceLine> read(CsvTable table) {
    return table
        .read(PieceLine::parse)
        .unique("code", PieceLine::line, line -> List.of(line.code()));
  }

  static Reading<PieceLine> parse(CsvLine line) {
    Cells cells = new Cells(line, COLUMNS);
    String policy = cells.word("ownerPolicy", Words.OWNER_POLICIES);
    PieceLine piece =
        new PieceLine(
            cells.line(),
            cells.name("code", Form.CODE),
            cells.word("kind", Words.PIECE_KINDS),
            cells.words("colours", Words.COLOURS),
            cells.text("shade"),
            cells.word("grade", Words.GRADES),
            cells.text("size"),
            cells.name("set", Form.CODE),
            cells.text("suit"),
            cells.name("home", Form.CHURCH),
            cells.text("owner"),
            policy.isEmpty() ? "freely" : policy,
            cells.text("condition"),
            cells.text("place"),
            cells.flag("staysHome"),
            cells.text("form"),
            particulars(cells));
    check(cells, piece);
    return cells.reading(() -> piece);
  }

  private static List<Particulars> particulars(Cells cells) {
    boolean silent =
        Stream.of("description", "provenance", "acquired", "precious", "keeper")
            .noneMatch(cells::has);
    Particulars said =
        new Particulars(
            cells.text("description"),
            cells.text("provenance"),
            cells.text("acquired"),
            cells.flag("precious"),
            cells.text("keeper"));
    return silent ? List.of() : List.of(said);
  }

  private static void check(Cells cells, PieceLine piece) {
    if (Words.COLOURED_KINDS.all().contains(piece.kind()) && !cells.has("colours")) {
      cells.refuse("colours", say("A %s must have a colour: %s.", piece.kind(), Words.COLOURS));
    }
    if (cells.has("suit") && !cells.has("set")) {
      cells.refuse("suit", say("Fill in the column set: a suit is made of sets."));
    }
  }
}
