package vestiary.pool;

import static vestiary.web.Invented.ribbon;
import static vestiary.web.InventedForm.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import vestiary.calendar.Colour;
import vestiary.pool.PoolView.Cell;
import vestiary.pool.PoolView.Group;
import vestiary.pool.PoolView.Piece;
import vestiary.pool.PoolView.Row;
import vestiary.pool.PoolView.Store;
import vestiary.pool.PoolView.Tally;
import vestiary.web.Choice;
import vestiary.web.Field;
import vestiary.web.Frame;
import vestiary.web.Invented;
import vestiary.web.InventedForm;
import vestiary.web.Link;

/** The demo's vestments, as their pages get them. */
final class InventedPool {

  private static final String[] COLOURS = {
    "white", "red", "green", "violet", "rose", "black", "gold"
  };
  private static final int[][] STOCK = {
    {3, 3, 4, 4, 1, 1, 1},
    {3, 2, 3, 2, 0, 0, 0},
    {2, 1, 2, 2, 0, 0, 0},
    {2, 1, 2, 2, 0, 0, 0},
    {1, 2, 2, 1, 0, 0, 0},
    {1, 1, 1, 1, 0, 0, 0}
  };

  private InventedPool() {}

  static PoolView full(Frame frame) {
    return view(frame, tally(), stores(), "");
  }

  static PoolView empty(Frame frame) {
    return view(frame, Tally.NONE, List.of(), "No vestments are entered yet.");
  }

  private static PoolView view(Frame frame, Tally tally, List<Store> stores, String nothing) {
    return new PoolView(
        frame,
        "",
        "Fifty-one sets in six churches; two are away.",
        new Link("Add a piece", "/vestments/new"),
        choice("All churches", "Holy Trinity", "Saint Anne"),
        choice("All colours", "white", "red"),
        choice("All kinds", "chasuble", "stole"),
        tally,
        stores,
        nothing);
  }

  private static Tally tally() {
    List<Row> rows = new ArrayList<>();
    for (int i = 0; i < STOCK.length; i++) {
      rows.add(row(Invented.churches().get(i), STOCK[i], i == 1 || i == 2 ? 1 : 0));
    }
    List<Integer> sums =
        IntStream.range(0, COLOURS.length)
            .mapToObj(c -> Arrays.stream(STOCK).mapToInt(r -> r[c]).sum())
            .toList();
    return new Tally(
        Arrays.stream(COLOURS).map(c -> ribbon(c)).toList(),
        rows,
        sums,
        sums.stream().mapToInt(Integer::intValue).sum());
  }

  private static Row row(String church, int[] stock, int whitesAway) {
    List<Cell> cells =
        IntStream.range(0, COLOURS.length)
            .mapToObj(
                c -> {
                  int away = c == 0 ? whitesAway : 0;
                  return new Cell(ribbon(COLOURS[c]), stock[c] - away, away);
                })
            .toList();
    return new Row(
        church, Invented.place(church), "/vestments?church=ht", cells, Arrays.stream(stock).sum());
  }

  private static List<Store> stores() {
    return List.of(
        new Store(
            "Holy Trinity",
            "Tollbridge",
            "2 sets and 1 piece besides",
            List.of(
                new Group(
                    "HT-W1",
                    "",
                    "matches HT-W2 and HT-W3",
                    List.of(
                        piece("HT-W1-C", "chasuble", "white", "132 cm, press 2, good", "", ""),
                        piece("HT-W1-S", "stole", "white", "press 2, good", "", ""))),
                new Group(
                    "HT-W4",
                    "the jubilee gold with embroidered orphreys",
                    "",
                    List.of(
                        piece(
                            "HT-W4-C",
                            "chasuble",
                            "gold",
                            "128 cm, safe, precious",
                            "Does not leave this church",
                            ""))),
                new Group(
                    "",
                    "Pieces of no set",
                    "",
                    List.of(piece("HT-HV", "humeral veil", "white", "press 1", "", ""))))),
        new Store(
            "Saint Anne",
            "Millferry",
            "1 set",
            List.of(
                new Group(
                    "SA-W3",
                    "",
                    "",
                    List.of(
                        piece(
                            "SA-W3-C",
                            "chasuble",
                            "white",
                            "122 cm, rail",
                            "",
                            "At the cleaner until 11 December"))))));
  }

  private static Piece piece(
      String code, String kind, String colour, String details, String stays, String care) {
    return new Piece(
        code,
        "/vestments/" + code,
        kind,
        ribbon(colour),
        colour.equals("gold") ? "also as white" : "",
        details,
        stays,
        care);
  }

  static PieceForm known(Frame frame) {
    return form(
        frame,
        Field.of("HT-W4-C"),
        new PieceForm.Care(
            "/care/HT-W4-C",
            List.of(
                new PieceForm.Spell(
                    "27 November to 11 December",
                    "at the cleaner",
                    "/care/HT-W4-C/2/end",
                    "It is back"),
                new PieceForm.Spell("3 to 20 May", "lining mended", "", "")),
            List.of(
                new PiecePhotos.Shown(
                    "/vestments/HT-W4-C/photos/1", "/vestments/HT-W4-C/photos/1/small", ""))));
  }

  static PieceForm refused(Frame frame) {
    return form(
        frame,
        new Field("HT-W1-C", "There is a piece HT-W1-C already, at Holy Trinity."),
        PieceForm.Care.NONE);
  }

  private static PieceForm form(Frame frame, Field code, PieceForm.Care care) {
    boolean fresh = care.action().isEmpty();
    return new PieceForm(
        frame,
        fresh ? "A new piece" : "Chasuble " + code.value(),
        fresh ? "" : "Last worn on Sunday 29 November 2026.",
        "/vestments/HT-W4-C",
        fresh ? "" : "Saved.",
        fresh ? "Nothing was saved; one thing below is to be put right." : "",
        new Link("All vestments", "/vestments"),
        code,
        choice("chasuble", "stole", "dalmatic"),
        new Choice(
            List.of(
                new Choice.Option("gold", "gold", true),
                new Choice.Option("white", "white", false)),
            ""),
        InventedForm.colours(Colour.WHITE),
        Field.of("old gold"),
        choice("solemn", "festive", "ferial"),
        Field.of("128"),
        Field.of("full"),
        Field.of("HT-W4"),
        List.of("HT-W1", "HT-W4"),
        Field.empty(),
        choice("Holy Trinity", "Saint Anne"),
        Field.empty(),
        choice("freely", "on asking", "never"),
        Field.of("precious, silk and metal thread"),
        Field.of("safe"),
        true,
        new PieceForm.Told(
            Field.of("Cloth of gold, pelican on the back"),
            Field.of("Gift of the guild"),
            Field.of("1911"),
            true,
            Field.empty()),
        "",
        fresh ? "" : "3",
        fresh ? "" : "/vestments/HT-W4-C/removal",
        care,
        fresh
            ? PieceForm.Leave.NONE
            : new PieceForm.Leave(
                "", "/vestments/HT-W4-C/withdrawal", Field.empty(), Field.empty(), Field.empty()),
        fresh
            ? PieceForm.Where.NONE
            : new PieceForm.Where(
                "At Holy Trinity, safe.",
                List.of("Saint Anne: Monday 30 November, 06:00 to Friday 4 December, 09:00."),
                new Link("Out or back", "/s/HT-W4-C")));
  }
}
