package vestiary.access;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Asking;
import vestiary.scenario.Credentials;
import vestiary.scenario.Scenario;
import vestiary.users.LettingIn;

/**
 * Every page, as every role sees it, has no form that the role may not send and no link that the
 * role may not follow.
 */
@QuarkusTest
class ButtonsTest {

  private static final Pattern SENT =
      Pattern.compile("<form\\b[^>]*method=\"post\"[^>]*>|formaction=\"[^\"]*\"");
  private static final Pattern ADDRESS = Pattern.compile("action=\"([^\"?]*)");
  private static final Pattern LINK = Pattern.compile("<a\\b[^>]*href=\"(/[^\"#?]*)");

  private static final List<Endpoint> ENDPOINTS =
      Endpoint.all().stream()
          .sorted(Comparator.comparing(e -> e.path().chars().filter(c -> c == '{').count()))
          .toList();

  @Inject Scenario scenario;
  @Inject LettingIn letting;
  @Inject OneOfEverything one;

  @BeforeEach
  void a_real_cluster() {
    scenario.load();
  }

  @Test
  void no_role_sees_a_button_or_a_link_that_is_not_for_it() {
    List<String> pages = pages();
    List<String> wrong = new ArrayList<>();
    TreeSet<String> sent = new TreeSet<>();
    for (Role role : Role.values()) {
      String token = letting.token(letting.user("one-" + role.id(), role, "ht", "sa"));
      Predicate<Endpoint> may = e -> e.isOpenToAll() || e.action().reach(role) != Reach.NOWHERE;
      for (String page : pages) {
        Response answer = LettingIn.program(token).accept("text/html").get(page);
        if (answer.statusCode() == 200) {
          look(answer.asString(), page + " as " + role.id(), may, wrong, sent);
        }
      }
    }

    assertEquals(List.of(), wrong);
    assertTrue(sent.size() > 20, "found only " + sent);
  }

  @Test
  void in_the_demo_nobody_sees_a_button_and_is_asked_to_sign_in_once() {
    List<String> pages = pages();
    scenario.becomeDemo();
    Predicate<Endpoint> open = e -> e.isOpenToAll() || e.reads() && e.action() == Action.LOOK;
    List<String> wrong = new ArrayList<>();
    for (String page : pages) {
      Response answer = nobody().get(page);
      if (answer.statusCode() == 200) {
        look(answer.asString(), page, open, wrong, new TreeSet<>());
      }
    }

    assertEquals(List.of(), wrong);
    for (String page : List.of("/vestments/HT-W1-C", mass("sa"), "/settings", "/churches/ht")) {
      String html = nobody().get(page).then().statusCode(200).extract().asString();
      assertEquals(1, html.split("Sign in to change this", -1).length - 1, page);
    }
  }

  @Test
  void whoever_opens_a_new_form_in_the_demo_signs_in_first_and_comes_back_to_it() {
    scenario.becomeDemo();

    String way =
        nobody()
            .get("/masses/new?date=2026-12-08")
            .then()
            .statusCode(303)
            .extract()
            .header("Location");

    assertTrue(way.endsWith("/sign-in?back=%2Fmasses%2Fnew%3Fdate%3D2026-12-08"), way);
  }

  @Test
  void a_sacristan_sees_what_another_church_has_without_its_form() {
    String token = letting.token(letting.user(Role.SACRISTAN, "ht"));

    String theirs = page(token, mass("sa"));
    assertFalse(
        SENT.matcher(theirs.replaceFirst("action=\"/sign-out\"", ""))
            .results()
            .anyMatch(f -> f.group().contains("/masses/")),
        theirs);
    assertTrue(
        theirs.contains("Only administrators, sacristans of this church and pastors"), theirs);
    assertTrue(page(token, mass("ht")).contains("Save</button>"));
    assertTrue(page(token, "/vestments/HT-W1-C").contains("Save</button>"));
    assertFalse(page(token, "/vestments/SA-W1-C").contains("Save</button>"));
  }

  /** The addresses of all pages, with one of everything that they can name. */
  private List<String> pages() {
    OneOfEverything.Names names = one.names();
    return ENDPOINTS.stream()
        .filter(Endpoint::reads)
        .filter(ButtonsTest::isPage)
        .map(Endpoint::path)
        .filter(path -> !path.startsWith("/problems/"))
        .map(path -> path.contains("{") ? names.fill(path) : path)
        .toList();
  }

  private static String page(String token, String address) {
    return LettingIn.program(token).get(address).then().statusCode(200).extract().asString();
  }

  private static String mass(String church) {
    return "/masses/" + Asking.masses(church, "2026-12-08").get(0).get("id");
  }

  private static void look(
      String html,
      String where,
      Predicate<Endpoint> may,
      List<String> wrong,
      TreeSet<String> sent) {
    SENT.matcher(html)
        .results()
        .map(found -> ADDRESS.matcher(found.group()).results().findFirst().orElseThrow().group(1))
        .forEach(
            address -> {
              sent.add(address);
              check(false, address, where, may, wrong);
            });
    LINK.matcher(html)
        .results()
        .map(found -> found.group(1))
        .forEach(address -> check(true, address, where, may, wrong));
  }

  private static void check(
      boolean reads, String address, String where, Predicate<Endpoint> may, List<String> wrong) {
    Optional<Endpoint> to = at(reads, address);
    if (to.isEmpty() ? !reads : !may.test(to.get())) {
      wrong.add("%s %s on %s".formatted(reads ? "GET" : "POST", address, where));
    }
  }

  private static Optional<Endpoint> at(boolean reads, String address) {
    return ENDPOINTS.stream()
        .filter(e -> reads ? e.reads() : e.verb().equals("POST"))
        .filter(e -> address.matches(e.path().replaceAll("\\{[^}]+}", "[^/]+")))
        .findFirst();
  }

  private static boolean isPage(Endpoint endpoint) {
    return Asks.find(Produces.class, endpoint.method(), endpoint.type())
        .filter(produces -> produces.value()[0].startsWith(MediaType.TEXT_HTML))
        .isPresent();
  }

  private static RequestSpecification nobody() {
    return RestAssured.given()
        .header(Credentials.nobody())
        .accept("text/html")
        .redirects()
        .follow(false);
  }
}
