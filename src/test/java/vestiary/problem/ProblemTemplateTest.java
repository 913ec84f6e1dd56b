package vestiary.problem;

import java.util.List;
import org.junit.jupiter.api.Test;
import vestiary.web.Frame;
import vestiary.web.Invented;
import vestiary.web.Link;
import vestiary.web.RenderedPage;

class ProblemTemplateTest {

  @Test
  void a_refusal_says_what_happened_and_what_to_do_next() {
    ProblemView view =
        new ProblemView(
            Invented.frame(""),
            "There is no such Mass",
            "The Mass you asked for was cancelled, or its address is mistyped.",
            List.of("Look for it in its week."),
            List.of(new Link("The week", "/week")),
            "");

    RenderedPage page = RenderedPage.of("problem/problem", "problem", view);

    page.keepsTheHouseRules()
        .says("There is no such Mass", "What to do Look for it in its week. The week")
        .keepsSilentOn("reference");
  }

  @Test
  void with_the_database_away_the_page_still_stands() {
    ProblemView view =
        new ProblemView(
            Frame.empty(),
            "The database is away",
            "Nothing can be read or saved for the moment; nothing is lost.",
            List.of("Try again in a minute.", "If it stays so, tell your administrator."),
            List.of(new Link("Try again", "/")),
            "7F3K");

    RenderedPage page = RenderedPage.of("problem/problem", "problem-away", view);

    page.keepsTheHouseRules()
        .says("The database is away", "Tell your administrator this reference: 7F3K")
        .keepsSilentOn("Clashes");
  }
}
