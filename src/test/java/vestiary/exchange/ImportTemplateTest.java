package vestiary.exchange;

import static vestiary.web.InventedForm.choice;

import java.util.List;
import org.junit.jupiter.api.Test;
import vestiary.exchange.ImportView.Column;
import vestiary.exchange.ImportView.Kind;
import vestiary.exchange.ImportView.Line;
import vestiary.exchange.ImportView.Result;
import vestiary.web.Invented;
import vestiary.web.RenderedPage;

class ImportTemplateTest {

  @Test
  void before_a_file_is_sent_the_columns_are_explained() {
    RenderedPage page = RenderedPage.of("exchange/imports", "import", view("", Result.NONE));

    page.keepsTheHouseRules()
        .says("Try it first", "code yes as on its label HT-W1-C")
        .keepsSilentOn("Lines that could not be brought in");
  }

  @Test
  void lines_not_understood_are_listed_with_number_and_reason() {
    Result result =
        new Result(
            "Tried, nothing changed yet.",
            List.of("48 new", "3 changed", "1 line not understood"),
            List.of(
                new Line(
                    17,
                    "colours",
                    "There is no colour \"blue\"; white with blue trim is white.",
                    "HT-M1,chasuble,blue,HT")));

    RenderedPage page = RenderedPage.of("exchange/imports", "import-tried", view("", result));

    page.keepsTheHouseRules()
        .says("48 new 3 changed", "17 colours There is no colour", "HT-M1,chasuble,blue,HT");
  }

  @Test
  void a_file_that_is_none_is_refused_at_its_field() {
    RenderedPage page =
        RenderedPage.of(
            "exchange/imports", "import-refused", view("This is no CSV file.", Result.NONE));

    page.keepsTheHouseRules().says("This is no CSV file. File");
  }

  private static ImportView view(String fileError, Result result) {
    return new ImportView(
        Invented.frame("import"),
        choice("vestments", "churches", "journeys", "people", "patterns", "Masses", "care"),
        fileError,
        result,
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
