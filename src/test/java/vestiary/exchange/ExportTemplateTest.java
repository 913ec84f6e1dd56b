package vestiary.exchange;

import java.util.List;
import org.junit.jupiter.api.Test;
import vestiary.exchange.ExportView.ListOut;
import vestiary.web.Invented;
import vestiary.web.RenderedPage;

class ExportTemplateTest {

  @Test
  void each_list_says_what_it_holds_and_what_it_lacks() {
    RenderedPage page =
        RenderedPage.of(
            "exchange/exports",
            "exports",
            new ExportView(
                Invented.frame("import"),
                List.of(
                    new ListOut(
                        "Care",
                        "3 lines",
                        "What is not over.",
                        "/api/exports/care.csv",
                        "care.csv"),
                    new ListOut(
                        "People",
                        "nothing in it yet",
                        "",
                        "/api/exports/people.csv",
                        "people.csv"))));

    page.keepsTheHouseRules()
        .says("Care 3 lines What is not over. care.csv", "registers")
        .says("People nothing in it yet");
  }
}
