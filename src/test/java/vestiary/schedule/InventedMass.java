package vestiary.schedule;

import static vestiary.web.Invented.DECIDE;
import static vestiary.web.InventedForm.choice;

import java.util.List;
import vestiary.calendar.Colour;
import vestiary.schedule.MassForm.Found;
import vestiary.schedule.MassForm.Saved;
import vestiary.web.Choice;
import vestiary.web.ColourChoice;
import vestiary.web.Field;
import vestiary.web.Frame;
import vestiary.web.Link;
import vestiary.web.Ribbon;

/** The confirmation of 5 December, as its form gets it. */
final class InventedMass {

  private InventedMass() {}

  static MassForm saved(Frame frame) {
    return form(
        frame,
        Field.of("10:30"),
        new Saved(
            "Saved. This Mass now falls short:",
            List.of(),
            List.of(
                new Found(
                    DECIDE,
                    "Five concelebrants need red; three red sets are there.",
                    new Link("See why", "/clashes/2")))));
  }

  static MassForm refused(Frame frame) {
    return form(
        frame,
        new Field("half past ten", "\"half past ten\" is no time; write 10:30."),
        Saved.NONE);
  }

  static MassChoices choices() {
    return new MassChoices(
        "Saturday of the first week of Advent: violet. The evening belongs to Sunday.",
        choice("Confirmation", "Mass of the day", "Wedding Mass", "Funeral Mass"),
        false,
        Field.empty(),
        false,
        choice("nobody’s"),
        choice("as the calendar says", "Advent weekday"),
        true,
        "as the norms say: red",
        new ColourChoice(
            List.of(
                new ColourChoice.Option(new Ribbon(Colour.RED, "red"), false),
                new ColourChoice.Option(new Ribbon(Colour.WHITE, "white"), false)),
            ""),
        true,
        Field.of("1"),
        Field.empty(),
        List.of(
            new MassChoices.NotPermitted(
                "Daily Mass for the dead",
                "Not on weekdays of Advent from 17 December on.",
                "GIRM 381")));
  }

  private static MassForm form(Frame frame, Field time, Saved saved) {
    return new MassForm(
        frame,
        "Saturday 5 December, 10:30, Holy Trinity",
        "/masses/7",
        "Not at 10:00 but at 10:30.",
        Choice.of(
            List.of(
                new Choice.Option("", "No other Mass: it is simply not said", true),
                Choice.Option.of("8", "Saint Anne, Saturday 5 December, 18:00"))),
        "/masses/7/cancellation",
        "",
        "",
        saved,
        List.of(
            new PlanFit.Unfit(
                List.of(
                    "Mass at Holy Trinity on Saturday 5 December, 10:00 has moved to 10:30.",
                    "The plan that holds no longer fits."),
                "2026-11-30",
                "2026-12-06")),
        List.of(new Link("The day", "/day/2026-12-05"), new Link("The week", "/week/2026-11-30")),
        "",
        "Servers: Ida F., Rollo T.; reader: Ada Fennimore",
        choice("Holy Trinity", "Saint Anne"),
        Field.of("2026-12-05"),
        time,
        Field.of("105"),
        choices(),
        Field.of("Bishop Fenwarden"),
        List.of("Tarnwick", "Ilverton"),
        Field.of("5"),
        Field.of("2"),
        true,
        Field.of("0"),
        new MassForm.Besides(
            Field.of("Tarnwick, Ilverton"),
            true,
            Field.of("5"),
            Field.empty(),
            Field.of("2"),
            Field.empty(),
            Field.of("120, 130, 130"),
            false,
            true),
        Field.empty(),
        "60 minutes: a bishop celebrates",
        Field.of("46 to be confirmed"),
        choice("English, as usual", "Spanish"),
        true,
        Field.empty(),
        "2");
  }
}
