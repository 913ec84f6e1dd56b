package vestiary.users;

import io.restassured.RestAssured;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import vestiary.access.Role;
import vestiary.access.Secret;
import vestiary.scenario.Credentials;
import vestiary.scenario.Scenario;

/** People of a test: let in past the pages, or as a browser sees it. */
@ApplicationScoped
public class LettingIn {

  /** Strong enough by any count. */
  public static final String PASSWORD = "thurible otter seventy lanterns";

  private static final Pattern FEED_KEY = Pattern.compile("\\?key=([A-Za-z0-9_.-]+)</code>");
  private static final Pattern TOKEN = Pattern.compile("name=\"form-token\" value=\"([^\"]+)\"");

  private final Scenario scenario;
  private final SaveUser save;
  private final ChoosePassword choose;
  private final Tokens tokens;
  private final SignIn signIn;
  private final TokenRows tokenRows;
  private final Traces traces;

  LettingIn(
      Scenario scenario,
      SaveUser save,
      ChoosePassword choose,
      Tokens tokens,
      SignIn signIn,
      TokenRows tokenRows,
      Traces traces) {
    this.traces = traces;
    this.tokenRows = tokenRows;
    this.scenario = scenario;
    this.save = save;
    this.choose = choose;
    this.tokens = tokens;
    this.signIn = signIn;
  }

  /** Enters somebody with this role, who signs in by its name. */
  public UUID user(Role role, String... churches) {
    return user(role.id(), role, churches);
  }

  public UUID user(String login, Role role, String... churches) {
    return named(login, "Some " + role.word(), role, churches);
  }

  /** Somebody with a name of their own. */
  public UUID named(String login, String name, Role role, String... churches) {
    UUID[] made = new UUID[1];
    scenario.within(
        scenario.ours(),
        () ->
            made[0] = save.enter(new SaveUser.Request(login, name, role.id(), List.of(churches))));
    return made[0];
  }

  /** Somebody of another cluster; answers a token that may do all that role may. */
  public String tokenIn(UUID cluster, String login, Role role) {
    return in(cluster, login, role).token();
  }

  /** Somebody of any cluster. */
  public Somebody in(UUID cluster, String login, Role role) {
    UUID[] user = new UUID[1];
    Somebody[] made = new Somebody[1];
    scenario.within(
        cluster,
        () -> user[0] = save.enter(new SaveUser.Request(login, login, role.id(), List.of())));
    scenario.within(
        cluster,
        () ->
            made[0] =
                new Somebody(
                    user[0],
                    tokens.make(user[0], new Tokens.Request("A test", "", false)).text(),
                    signIn.open(user[0], SignIn.PASSING).text()));
    return made[0];
  }

  /** A person of a test, as a program and as a browser. */
  public record Somebody(UUID id, String token, String session) {}

  /** Somebody with a password. */
  public UUID withPassword(String login, Role role) {
    UUID user = user(login, role);
    String link = link(user);
    scenario.within(scenario.ours(), () -> choose.byLink(link, PASSWORD, PASSWORD));
    return user;
  }

  public String link(UUID user) {
    Secret[] made = new Secret[1];
    scenario.within(scenario.ours(), () -> made[0] = choose.link(user));
    return made[0].text();
  }

  /** A token that may do all its user may. */
  public String token(UUID user) {
    return token(user, false);
  }

  String token(UUID user, boolean looksOnly) {
    Secret[] made = new Secret[1];
    scenario.within(
        scenario.ours(),
        () -> made[0] = tokens.make(user, new Tokens.Request("A test", "", looksOnly)));
    return made[0].text();
  }

  /** By what a new token of that user is ended. */
  public String tokenId(UUID user) {
    token(user);
    String[] found = new String[1];
    scenario.within(scenario.ours(), () -> found[0] = tokenRows.of(user).get(0).id.toString());
    return found[0];
  }

  /** That user can be written to there. */
  public void writtenTo(UUID user, String address) {
    scenario.within(scenario.ours(), () -> traces.provenMail(user, address));
  }

  /** A link that proves an address of that user. */
  public String mailLink(UUID user) {
    String[] made = new String[1];
    scenario.within(scenario.ours(), () -> made[0] = traces.mailLink(user));
    return made[0];
  }

  /** By what a device of that user is removed. */
  public String passkeyId(UUID user) {
    String[] made = new String[1];
    scenario.within(scenario.ours(), () -> made[0] = traces.passkey(user));
    return made[0];
  }

  /** The cookie of a new session. */
  public String session(UUID user) {
    Secret[] made = new Secret[1];
    scenario.within(scenario.ours(), () -> made[0] = signIn.open(user, SignIn.PASSING));
    return made[0].text();
  }

  /** Every table of this feature has a row of that user afterwards. */
  public void leaveTracesEverywhere(UUID user) {
    token(user);
    session(user);
    link(user);
    scenario.within(scenario.ours(), () -> traces.leave(user));
    browser().formParam("login", "nobody").formParam("password", "x").post("/sign-in");
  }

  /** Nobody, with a browser that follows no redirect. */
  public static RequestSpecification browser() {
    return RestAssured.given()
        .header(Credentials.nobody())
        .redirects()
        .follow(false)
        .accept("text/html,application/xhtml+xml,*/*;q=0.8");
  }

  /** A browser with that session. */
  public static RequestSpecification browser(String session) {
    return RestAssured.given()
        .cookie("vestiary-session", session)
        .redirects()
        .follow(false)
        .accept("text/html,application/xhtml+xml,*/*;q=0.8");
  }

  /** Whoever holds that token. */
  public static RequestSpecification program(String token) {
    return RestAssured.given()
        .header("Authorization", "Bearer " + token)
        .redirects()
        .follow(false)
        .contentType("application/json");
  }

  /** Nobody, with a program. */
  public static RequestSpecification nobody() {
    return RestAssured.given()
        .header(Credentials.nobody())
        .redirects()
        .follow(false)
        .contentType("application/json");
  }

  /** Tries a name and a password. */
  public static Response tries(String login, String password) {
    return browser()
        .formParams(Map.of("login", login, "password", password, "back", "/week"))
        .post("/sign-in");
  }

  /** The page on which whoever has signed in sees the key of a calendar, just made. */
  public static String feedPage(String session) {
    String page = browser(session).get("/account").asString();
    return browser(session)
        .formParam("form-token", formToken(page))
        .formParam("feed", "My telephone")
        .post("/account/feeds")
        .asString();
  }

  /** The key that such a page shows. */
  public static String feedKey(String page) {
    return first(FEED_KEY, page);
  }

  /** What the forms of a page carry. */
  public static String formToken(String page) {
    return first(TOKEN, page);
  }

  private static String first(Pattern what, String page) {
    Matcher found = what.matcher(page);
    if (!found.find()) {
      throw new AssertionError("no %s in %s".formatted(what, page));
    }
    return found.group(1);
  }
}
