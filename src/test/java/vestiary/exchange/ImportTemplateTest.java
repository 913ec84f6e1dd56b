package vestiary.exchange;

import static vestiary.web.InventedForm.choice;

import java.util.List;
import org.junit.jupiter.api.Test;
import vestiary.exchange.ImportStepView.Calendar;
import vestiary.exchange.ImportStepView.Columns;
import vestiary.exchange.ImportStepView.Outcome;
import vestiary.exchange.ImportStepView.Row;
import vestiary.exchange.ImportStepView.Working;
import vestiary.exchange.ImportView.Column;
import vestiary.exchange.ImportView.Done;
import vestiary.exchange.ImportView.Kind;
import vestiary.exchange.ImportView.Line;
import vestiary.exchange.ImportView.Result;
import vestiary.web.Choice;
import vestiary.web.Field;
import vestiary.web.Invented;
import vestiary.web.RenderedPage;

class ImportTemplateTest {

  @Test
  void before_a_file_is_sent_the_columns_are_explained() {
    RenderedPage page = RenderedPage.of("exchange/imports", "import", view("", List.of()));

    page.keepsTheHouseRules()
        .says("Look at the file", "code yes as on its label HT-W1-C")
        .keepsSilentOn("Lines that could not be brought in");
  }

  @Test
  void what_was_brought_in_is_listed_with_its_undo() {
    RenderedPage page =
        RenderedPage.of(
            "exchange/imports",
            "import-done",
            view(
                "",
                List.of(new Done("Masses: 214 lines, imported.", "/import/1", "/import/1/undo"))));

    page.keepsTheHouseRules().says("Masses: 214 lines, imported.", "Undo");
  }

  @Test
  void lines_not_understood_are_listed_with_number_and_reason() {
    Result result =
        new Result(
            "Tried, nothing changed yet.",
            List.of("48 lines understood"),
            List.of(
                new Line(
                    17,
                    "colours",
                    "There is no colour \"blue\"; white with blue trim is white.",
                    "HT-M1,chasuble,blue,HT")));

    RenderedPage page =
        RenderedPage.of(
            "exchange/step",
            "import-tried",
            step(
                Working.NONE,
                new Outcome(result, List.of(), "1 to 100 of 1,412", "", "/import/1?page=2"),
                columns()));

    page.keepsTheHouseRules()
        .says(
            "48 lines understood",
            "17 colours There is no colour",
            "HT-M1,chasuble,blue,HT",
            "1 to 100 of 1,412",
            "More lines");
  }

  @Test
  void each_column_is_shown_with_what_was_guessed() {
    RenderedPage page =
        RenderedPage.of(
            "exchange/step", "import-columns", step(Working.NONE, Outcome.NONE, columns()));

    page.keepsTheHouseRules()
        .says(
            "Date on which it begins (needed)",
            "B: Datum",
            "8.12.2026, 9.12.2026",
            "Not in the file: one column",
            "Local time (time)",
            "It is read as this list: Masses.",
            "One column holds both.",
            "Not used: Farbe.")
        .keepsSilentOn("Lines that could not be brought in", "Undo");
  }

  @Test
  void a_long_list_says_how_far_it_is() {
    RenderedPage page =
        RenderedPage.of(
            "exchange/step",
            "import-working",
            step(
                new Working("Bringing in 10,000 lines: 40 percent done.", 8000, 20000),
                Outcome.NONE,
                Columns.NONE));

    page.keepsTheHouseRules().says("40 percent done.", "Stop, and change nothing");
  }

  @Test
  void a_file_that_is_none_is_refused_at_its_field() {
    RenderedPage page =
        RenderedPage.of(
            "exchange/imports", "import-refused", view("This is no CSV file.", List.of()));

    page.keepsTheHouseRules().says("This is no CSV file. File");
  }

  private static Columns columns() {
    return new Columns(
        List.of(
            new Row(
                "date",
                true,
                "Date on which it begins",
                "",
                "column-date",
                Choice.of(List.of(new Choice.Option("1", "B: Datum", true))),
                "8.12.2026, 9.12.2026",
                "same-date",
                Field.empty())),
        List.of(
            new Row(
                "time",
                false,
                "Time",
                "Local time",
                "column-time",
                Choice.of(List.of(new Choice.Option("", "not in the file", true))),
                "",
                "",
                Field.empty())),
        "Not in the file: one column",
        "",
        List.of("One column holds both."),
        "Farbe",
        Choice.of(List.of()));
  }

  private static ImportStepView step(Working working, Outcome outcome, Columns columns) {
    return new ImportStepView(
        Invented.frame("import"),
        "Masses",
        choice("Journeys", "Masses"),
        false,
        "messen.csv",
        "/import/1",
        "",
        working,
        outcome,
        columns,
        Calendar.NONE,
        "");
  }

  private static ImportView view(String fileError, List<Done> done) {
    return new ImportView(
        Invented.frame("import"),
        choice("vestments", "churches", "journeys", "people", "patterns", "Masses", "care"),
        fileError,
        "",
        done,
        List.of(
            new Kind(
                "pieces",
                "Vestments",
                "One line a piece.",
                List.of(
                    new Column("code", true, "as on its label", "HT-W1-C"),
                    new Column(
                        "colours", true, "what it is, then what it may serve as", "gold white"),
                    new Column("size", false, "length of the back in centimetres", "132"))),
            new Kind(
                "care",
                "Care",
                "One line a spell in care.",
                List.of(new Column("piece", true, "its code", "SA-W3-C")))));
  }
}
