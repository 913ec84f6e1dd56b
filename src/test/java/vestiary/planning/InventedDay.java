package vestiary.planning;

import static vestiary.web.Invented.DECIDE;
import static vestiary.web.Invented.MUST;
import static vestiary.web.Invented.ribbon;

import java.util.List;
import vestiary.calendar.Colour;
import vestiary.planning.DayView.Clash;
import vestiary.planning.DayView.Mass;
import vestiary.planning.DayView.Omitted;
import vestiary.planning.DayView.Other;
import vestiary.planning.DayView.OwnDay;
import vestiary.planning.DayView.Reason;
import vestiary.web.Celebrated;
import vestiary.web.ClashMark;
import vestiary.web.Frame;
import vestiary.web.Invented;
import vestiary.web.Link;
import vestiary.web.Ribbon;
import vestiary.web.Standing;

/** The demo's Saturday 5 December 2026, as its page gets it, with every part filled. */
final class InventedDay {

  private static final Link WHY = new Link("See why", "/clashes/2");
  private static final Link MENDS = new Link("What mends it", "/clashes/2#mends");

  private InventedDay() {}

  static DayView of(Frame frame) {
    return new DayView(
        frame,
        "Saturday, December 2026",
        "5",
        "Saturday 5 December 2026",
        "Advent, first week · Sunday B, weekdays I · psalter week I",
        false,
        List.of(Colour.VIOLET),
        new Celebrated("", "feria", "", "Saturday of the first week of Advent"),
        new Standing(
            "Violet, by day and in the evening, when Advent II begins. Five Masses in three"
                + " churches.",
            List.of(
                new Standing.Count(MUST, "Two things must be mended"),
                new Standing.Count(DECIDE, "one is to be decided"))),
        turn(),
        new Link("Add a Mass", "/masses/new?date=2026-12-05"),
        picture(),
        masses(),
        List.of(
            new DayView.Departure(
                "Saint Anne",
                "No Mass at 10:30; join us at Holy Trinity at 11:00.",
                new Link("More", "/masses/8"))),
        "Saturday of the first week of Advent; violet, for Advent.",
        List.of(
            new Reason("Violet is the colour of Advent.", "GIRM 346"),
            new Reason("The evening belongs to Sunday.", "UNLY 3")),
        List.of(
            new Other(
                ribbon("white"),
                new Celebrated(
                    "", "optional-memorial", "Optional memorial", "Our Lady on Saturday"),
                new Reason("Not in Advent.", "UNLY 15"))),
        List.of(
            new Omitted(
                "Saint Sabas, Abbot", new Reason("The parish calendar leaves it out.", ""))),
        List.of(
            new OwnDay(
                "Saint Martin",
                ribbon("white"),
                new Celebrated("", "solemnity", "Solemnity", "Dedication of the church"),
                "Its own anniversary.",
                List.of(new Reason("It stands in number 4 of the table.", "UNLY 59 I.4")))),
        List.of());
  }

  static DayView empty(Frame frame) {
    return new DayView(
        frame,
        "Tuesday, December 2026",
        "29",
        "Tuesday 29 December 2026",
        "Christmas Time · Sunday B, weekdays I · psalter week I",
        false,
        List.of(Colour.WHITE, Colour.RED),
        new Celebrated("", "feria", "", "Fifth day within the octave of Christmas"),
        new Standing("White, or red for Saint Thomas Becket.", List.of()),
        turn(),
        Link.NONE,
        DayPicture.Drawing.NONE,
        List.of(),
        List.of(),
        "White, for Christmas Time.",
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of());
  }

  private static List<Link> turn() {
    return List.of(
        new Link("← Friday 4", "/day/2026-12-04"),
        new Link("Sunday 6 →", "/day/2026-12-06"),
        new Link("The week", "/week/2026-11-30"));
  }

  private static DayPicture.Drawing picture() {
    return DayPicture.of(
        List.of(
            line("Our Lady of the Rosary", bar(17 * 60, 60, 30, Colour.VIOLET, "of Sunday")),
            line(
                "Holy Trinity",
                bar(8 * 60 + 30, 30, 20, Colour.VIOLET, "", said(MUST, "third Mass")),
                bar(
                    10 * 60 + 30,
                    105,
                    60,
                    Colour.RED,
                    "confirmation",
                    said(DECIDE, "two red short")),
                bar(17 * 60, 60, 30, Colour.VIOLET, "of Sunday")),
            line("Saint Anne"),
            line(
                "Saint Joseph",
                bar(
                    11 * 60,
                    60,
                    30,
                    Colour.WHITE,
                    "funeral",
                    said(MUST, "Tarnwick is at Tollbridge"),
                    said(MUST, "one white short")))),
        List.of(
            new DayPicture.Journey(1, 0, 955, 967, "Ilverton, 12 min", true),
            new DayPicture.Journey(2, 1, 530, 544, "SA’s two reds", false)));
  }

  private static DayPicture.Church line(String church, DayPicture.Mass... masses) {
    return new DayPicture.Church(church, Invented.place(church), List.of(masses));
  }

  private static DayPicture.Mass bar(
      int start, int minutes, int setOut, Colour colour, String words, DayPicture.Said... said) {
    return new DayPicture.Mass(
        start - setOut, start, start + minutes, start + minutes + 15, colour, words, List.of(said));
  }

  private static DayPicture.Said said(ClashMark mark, String words) {
    return new DayPicture.Said(mark, words);
  }

  private static List<Mass> masses() {
    return List.of(
        mass(
            "08:30",
            "Holy Trinity",
            ribbon("violet"),
            "Advent weekday",
            "Ilverton",
            "",
            "one chasuble with stole",
            new Clash(MUST, "His third Mass on a weekday; two are permitted him.", WHY, MENDS)),
        mass(
            "10:30",
            "Holy Trinity",
            ribbon("red"),
            "confirmation, 46 to be confirmed",
            "Bishop Fenwarden",
            "five concelebrants, deacons Greywater and Pellmoor",
            "five chasubles with stole, two dalmatics with stole; the bishop brings his own",
            new Clash(DECIDE, "Five need red, three red sets are there.", WHY, MENDS),
            new Clash(DECIDE, "One red dalmatic for two deacons.", WHY, MENDS)),
        mass(
            "11:00",
            "Saint Joseph",
            ribbon("white"),
            "funeral",
            "no celebrant",
            "one concelebrant",
            "two chasubles with stole",
            new Clash(MUST, "Tarnwick is at Tollbridge until 12:30.", WHY, MENDS)),
        mass(
            "17:00",
            "Our Lady of the Rosary",
            ribbon("violet"),
            "of Sunday, Advent II",
            "Ilverton",
            "",
            "one chasuble with stole"));
  }

  private static Mass mass(
      String time,
      String church,
      Ribbon ribbon,
      String what,
      String celebrant,
      String company,
      String needs,
      Clash... clashes) {
    return new Mass(
        "/masses/7",
        time,
        "set out by 08:10",
        church,
        Invented.place(church),
        ribbon,
        what,
        celebrant,
        company,
        what.equals("funeral") ? "Servers: Ida F., Rollo T.; reader: Ada Fennimore" : "",
        needs,
        List.of(clashes),
        new Reason("Colour of Advent:", "GIRM 346"),
        what.equals("funeral") ? "If violet were chosen, nothing would be short." : "");
  }
}
