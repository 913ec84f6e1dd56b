package vestiary.problem;

import static vestiary.scenario.Browsing.open;
import static vestiary.scenario.Browsing.page;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import vestiary.scenario.Browsing;
import vestiary.scenario.Page;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;

/** Source: RFC 9457, 3.1.1: the address of a kind of problem leads to what explains it. */
@QuarkusTest
class ProblemPageTest {

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  @BeforeEach
  void an_empty_cluster() {
    scenario.empty();
  }

  @ParameterizedTest
  @EnumSource
  void every_kind_of_problem_is_explained_where_its_type_points(ProblemKind kind) {
    Page page = page(kind.address()).isHeaded(kind.title()).says(kind.meaning());

    kind.next().forEach(page::says);
  }

  @Test
  void a_kind_that_is_none_is_not_there() {
    open("/problems/boredom").is(404).isHeaded("Not there");
  }

  @Test
  void a_verb_that_a_page_does_not_take_is_told_with_a_page() {
    refusing.unchanged(() -> Browsing.press("/week")).is(405).isHeaded("Not possible here");
  }
}
