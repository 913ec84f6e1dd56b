package vestiary.planning;

import static vestiary.web.Invented.DECIDE;
import static vestiary.web.Invented.MUST;
import static vestiary.web.Invented.ribbon;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import vestiary.calendar.Colour;
import vestiary.planning.WeekView.Cell;
import vestiary.planning.WeekView.Choice;
import vestiary.planning.WeekView.Church;
import vestiary.planning.WeekView.Day;
import vestiary.planning.WeekView.Entry;
import vestiary.planning.WeekView.Mark;
import vestiary.planning.WeekView.Note;
import vestiary.planning.WeekView.Option;
import vestiary.planning.WeekView.Own;
import vestiary.web.Celebrated;
import vestiary.web.ClashMark;
import vestiary.web.Frame;
import vestiary.web.Invented;
import vestiary.web.Link;
import vestiary.web.Standing;

/** The demo's first week, 30 November to 6 December 2026, as its page gets it. */
final class InventedWeek {

  private static final String[] THIRD = {
    "Saturday 08:30, Holy Trinity",
    "With the confirmation and the 17:00 Ilverton would say three Masses on a weekday; two are"
        + " permitted him."
  };
  private static final String[] REDS = {
    "Saturday 10:30, Holy Trinity",
    "Five concelebrants need red; three red sets are there. Two red sets of Saint Anne can be"
        + " carried, 14 minutes away."
  };
  private static final String[] FUNERAL = {
    "Saturday 11:00, Saint Joseph",
    "The family asks for Tarnwick, who concelebrates at Tollbridge until 12:30."
  };
  private static final String[] COPES = {
    "Sunday 16:00, Our Lady of the Rosary",
    "Three Benedictions at one hour, two white copes, two humeral veils."
  };
  private static final String[] NOBODY = {
    "Sunday 09:45, Saint Martin",
    "From Upper Wenlow Ilverton could begin at 10:24 at the earliest, from Ashlanding Tarnwick at"
        + " 10:04."
  };

  private final Map<String, List<Entry>> masses = new LinkedHashMap<>();
  private final List<Day> days = new ArrayList<>();
  private final List<Note> notes = new ArrayList<>();
  private Own ownDay;

  static WeekView of(Frame frame) {
    InventedWeek week = new InventedWeek();
    week.fill();
    return week.view(frame, Choice.NONE);
  }

  /** Long names, a church's own day, and more churches than one page holds. */
  static WeekView crowded(Frame frame) {
    InventedWeek week = new InventedWeek();
    for (int i = 0; i < 5; i++) {
      week.mass(
          "Our Lady of the Rosary",
          "1" + i + ":45",
          "Monsignor Bartholomew Wetherington-Castlemaine",
          "gold",
          "thanksgiving for fifty years of priesthood",
          "12 concelebrants, 2 deacons, mitre-bearer",
          week.note(DECIDE, "eleven chasubles short", REDS));
    }
    week.ownDay = new Own(ribbon("white"), named("solemnity", "Solemnity", "Dedication"));
    week.day(3, "Thursday", "rose or violet", weekday());
    return week.view(
        frame,
        new Choice(
            "/week/2026-11-30",
            "Six of eight churches are shown.",
            List.of(
                new Option("ht", "Holy Trinity", "Tollbridge", true),
                new Option("mm", "Saint Mary Magdalen", "Lower Wenlow", false))));
  }

  private WeekView view(Frame frame, Choice choice) {
    return new WeekView(
        frame,
        "",
        "Advent, first week",
        "Sundays B, weekdays I",
        "30 November to 6 December 2026",
        List.of(
            new Link("← 23 November", "/week/2026-11-23"),
            new Link("7 December →", "/week/2026-12-07")),
        new Link("Add a Mass", "/masses/new"),
        new WeekView.Plan(
            "2026-11-30",
            "2026-12-06",
            List.of(
                new Link("The plan that holds", "/plans/of/2026-11-30"),
                new Link("The journeys", "/movements?week=2026-11-30")),
            List.of()),
        new Standing(
            "Nineteen Masses and three Benedictions.",
            List.of(
                new Standing.Count(MUST, "Four things must be mended"),
                new Standing.Count(DECIDE, "one is to be decided"))),
        choice,
        Invented.churches().stream().map(c -> new Church(c, Invented.place(c))).toList(),
        days,
        notes,
        List.of(
            new WeekView.Ahead(
                DECIDE,
                "Saint Anne, Tuesday 8 December, 18:30",
                "Three concelebrants need white; two white sets are there",
                new Link("See why", "/clashes/8"))),
        "");
  }

  private void fill() {
    mass("Holy Trinity", "08:00", "Tarnwick", "red");
    day(30, "Monday", "red", named("feast", "Feast", "Saint Andrew, Apostle"));
    mass("Holy Trinity", "08:00", "Ilverton", "violet");
    mass("Saint Anne", "18:00", "Tarnwick", "violet");
    day(1, "Tuesday", "violet", weekday());
    mass("Holy Trinity", "12:10", "Tarnwick", "violet");
    mass("Saint Anne", "08:00", "Ilverton", "violet");
    day(2, "Wednesday", "violet", weekday());
    mass("Holy Trinity", "08:00", "Ilverton", "white");
    mass("Saint Joseph", "18:00", "Tarnwick", "white");
    day(3, "Thursday", "white", named("memorial", "Memorial", "Saint Francis Xavier"));
    mass("Holy Trinity", "12:10", "Tarnwick", "violet");
    mass("Our Lady of the Rosary", "09:00", "Ilverton", "white");
    day(
        4,
        "Friday",
        "violet or white",
        weekday(),
        new Celebrated("or", "optional-memorial", "Optional memorial", "Saint John Damascene"));
    saturday();
    sunday();
  }

  private void saturday() {
    mass("Holy Trinity", "08:30", "Ilverton", "violet", "", "", note(MUST, "third Mass", THIRD));
    mass(
        "Holy Trinity",
        "10:30",
        "Bishop Fenwarden",
        "red",
        "confirmation",
        "5 concelebrants, 2 deacons",
        note(DECIDE, "two red short", REDS));
    mass("Holy Trinity", "17:00", "Tarnwick", "violet", "of Sunday", "");
    mass(
        "Saint Joseph",
        "11:00",
        "no celebrant",
        "white",
        "funeral",
        "1 concelebrant",
        note(MUST, "Tarnwick is at Tollbridge", FUNERAL));
    mass("Our Lady of the Rosary", "17:00", "Ilverton", "violet", "of Sunday", "");
    day(5, "Saturday", "violet", weekday(), new Celebrated("evening:", "sunday", "", "Advent II"));
  }

  private void sunday() {
    mass("Holy Trinity", "10:30", "Tarnwick", "violet", "", "1 deacon");
    mass("Holy Trinity", "16:00", "Greywater", "white", "Benediction", "");
    mass("Holy Trinity", "17:30", "Oakhallow", "violet");
    mass("Saint Anne", "10:45", "Ilverton", "violet");
    mass("Saint Anne", "16:00", "Pellmoor", "white", "Benediction", "");
    mass("Saint Joseph", "08:00", "Tarnwick", "violet");
    mass(
        "Our Lady of the Rosary",
        "16:00",
        "Ilverton",
        "white",
        "Benediction",
        "",
        note(MUST, "no cope, no veil", COPES));
    mass("Saints Peter and Paul", "08:30", "Ilverton", "violet");
    mass(
        "Saint Martin",
        "09:45",
        "no celebrant",
        "violet",
        "asked for",
        "",
        note(MUST, "nobody in time", NOBODY));
    day(6, "Sunday", "violet", new Celebrated("", "sunday", "", "Second Sunday of Advent"));
  }

  private static Celebrated weekday() {
    return new Celebrated("", "feria", "", "Advent weekday");
  }

  private static Celebrated named(String rank, String word, String name) {
    return new Celebrated("", rank, word, name);
  }

  private void mass(String church, String time, String celebrant, String colour) {
    mass(church, time, celebrant, colour, "", "");
  }

  private void mass(
      String church,
      String time,
      String celebrant,
      String colour,
      String what,
      String needs,
      Mark... marks) {
    masses
        .computeIfAbsent(church, c -> new ArrayList<>())
        .add(new Entry("/masses/7", ribbon(colour), time, celebrant, what, needs, List.of(marks)));
  }

  private Mark note(ClashMark mark, String words, String[] told) {
    int number = notes.size() + 1;
    notes.add(
        new Note(
            number,
            mark,
            told[0],
            told[1],
            new Link("See why", "/clashes/" + number),
            new Link("What mends it", "/clashes/" + number + "#mends")));
    return new Mark(mark, words, number);
  }

  private void day(int number, String weekday, String colours, Celebrated... celebrations) {
    String date = number == 30 ? "2026-11-30" : "2026-12-0" + number;
    days.add(
        new Day(
            date,
            String.valueOf(number),
            weekday,
            "/day/" + date,
            weekday.equals("Sunday"),
            colours,
            colours(colours),
            List.of(celebrations),
            "",
            cells()));
    masses.clear();
  }

  private static List<Colour> colours(String names) {
    return List.of(names.split(" or ")).stream().map(n -> ribbon(n).colour()).toList();
  }

  private List<Cell> cells() {
    return Invented.churches().stream()
        .map(c -> new Cell(c, own(c), masses.getOrDefault(c, List.of()), List.of()))
        .toList();
  }

  private List<Own> own(String church) {
    return ownDay != null && church.equals("Saint Martin") ? List.of(ownDay) : List.of();
  }
}
