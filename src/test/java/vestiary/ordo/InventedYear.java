package vestiary.ordo;

import static vestiary.web.Invented.ribbon;

import java.util.List;
import vestiary.ordo.OrdoView.Dated;
import vestiary.ordo.OrdoView.Day;
import vestiary.ordo.OrdoView.Line;
import vestiary.ordo.OrdoView.Month;
import vestiary.ordo.OrdoView.Named;
import vestiary.ordo.OrdoView.Note;
import vestiary.ordo.OrdoView.Option;
import vestiary.ordo.OrdoView.Text;
import vestiary.web.Celebrated;
import vestiary.web.Frame;
import vestiary.web.Link;

/** A year of four days, as its page gets it, with every part filled. */
final class InventedYear {

  private static final Named ADVENT =
      new Named(new Celebrated("", "sunday", "", "First Sunday of Advent"), "");
  private static final Named WEEKDAY =
      new Named(new Celebrated("", "feria", "", "Advent weekday"), "");
  private static final Named DAMASCENE =
      new Named(
          new Celebrated("or", "optional-memorial", "Optional memorial", "San Juan Damasceno"),
          "es");
  private static final Named MARY =
      new Named(new Celebrated("", "solemnity", "Solemnity", "The Immaculate Conception"), "");
  private static final Named MARY_EVE =
      new Named(
          new Celebrated("evening:", "solemnity", "Solemnity", "The Immaculate Conception"), "");
  private static final Named DEDICATION =
      new Named(new Celebrated("", "solemnity", "Solemnity", "Dedication of This Church"), "");

  private InventedYear() {}

  static OrdoView of(Frame frame) {
    return view(
        frame,
        false,
        "Wenlow Valley",
        churches(),
        List.of(
            new OrdoView.Own(
                "Saint Martin, Sandreach",
                List.of(new Dated("day-2026-12-04", "Friday 4 December", DEDICATION)))));
  }

  /** Of a cluster's only church, before it has days of its own. */
  static OrdoView ofChurch(Frame frame) {
    return view(frame, true, "Saint Martin, Sandreach", List.of(), List.of());
  }

  private static OrdoView view(
      Frame frame, boolean ofChurch, String of, List<Option> churches, List<OrdoView.Own> own) {
    return new OrdoView(
        frame,
        of,
        ofChurch,
        "The liturgical year 2027",
        "Sunday B, weekdays I",
        "29 November 2026 to 27 November 2027",
        "United States",
        "a5",
        List.of(
            new Link("← 2026", "/year/2026"),
            new Link("2028 →", "/year/2028"),
            new Link("Today", "#day-2026-12-04")),
        List.of(
            new Option(new Link("Sheets of A4, a month each", "/year/2027"), false),
            new Option(new Link("Booklet of A5 pages", "/year/2027?paper=a5"), true)),
        churches,
        List.of(new Dated("day-2026-11-29", "Sunday 29 November", ADVENT)),
        List.of(new Dated("day-2026-12-08", "Tuesday 8 December", MARY)),
        "Rose may be worn on 13 December and 7 March (GIRM 346 f).",
        own,
        List.of(
            new Month("november-2026", "November 2026", true, List.of(advent())),
            new Month("december-2026", "December 2026", false, december())));
  }

  private static List<Option> churches() {
    return List.of(
        new Option(new Link("All churches", "/year/2027?paper=a5"), true),
        new Option(new Link("Saint Martin, Sandreach", "/year/2027?church=sm&paper=a5"), false));
  }

  private static Day advent() {
    return new Day(
        "day-2026-11-29",
        "29",
        "S",
        "Sunday 29",
        "/day/2026-11-29",
        true,
        false,
        List.of(new Line("", List.of(ribbon("violet"), ribbon("rose")), ADVENT)),
        "Advent, first week",
        "",
        List.of(
            new Note("Rose may be worn.", List.of()),
            new Note(
                "Left out:", List.of(new Text("San Sabas", "es"), new Text("San Nicolás", "es")))));
  }

  private static List<Day> december() {
    return List.of(
        new Day(
            "day-2026-12-04",
            "4",
            "F",
            "Friday 4",
            "/day/2026-12-04",
            false,
            true,
            List.of(
                new Line("", List.of(ribbon("violet")), WEEKDAY),
                new Line("", List.of(ribbon("white")), DAMASCENE),
                new Line("Saint Martin, Sandreach", List.of(ribbon("white")), DEDICATION)),
            "",
            "",
            List.of()),
        new Day(
            "day-2026-12-07",
            "7",
            "M",
            "Monday 7",
            "/day/2026-12-07",
            false,
            false,
            List.of(
                new Line("", List.of(ribbon("violet")), WEEKDAY),
                new Line("", List.of(ribbon("white")), MARY_EVE)),
            "",
            "",
            List.of()),
        new Day(
            "day-2026-12-08",
            "8",
            "T",
            "Tuesday 8",
            "/day/2026-12-08",
            true,
            false,
            List.of(new Line("", List.of(ribbon("white")), MARY)),
            "",
            "Holy day of obligation",
            List.of()));
  }
}
