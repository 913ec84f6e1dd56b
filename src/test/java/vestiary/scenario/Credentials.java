package vestiary.scenario;

import io.restassured.RestAssured;
import io.restassured.filter.Filter;
import io.restassured.filter.FilterContext;
import io.restassured.response.Response;
import io.restassured.specification.FilterableRequestSpecification;
import io.restassured.specification.FilterableResponseSpecification;
import java.util.List;

/**
 * Tests speak as the administrator whose token stands in the server's environment, unless they
 * bring a token or a session of their own, or say that they are nobody.
 */
public final class Credentials implements Filter {

  /** As the server is told it. */
  public static final String SERVER_TOKEN = "only-for-tests-4f1c";

  private static final String NOBODY = "X-Test-Nobody";

  private Credentials() {}

  /** From now on every request carries the token. */
  public static void send() {
    RestAssured.replaceFiltersWith(List.of(new Credentials()));
  }

  /** A header that keeps the token away and is not sent itself. */
  public static io.restassured.http.Header nobody() {
    return new io.restassured.http.Header(NOBODY, "true");
  }

  @Override
  public Response filter(
      FilterableRequestSpecification request,
      FilterableResponseSpecification answer,
      FilterContext context) {
    boolean bringsItsOwn =
        request.getHeaders().hasHeaderWithName("Authorization")
            || request.getHeaders().hasHeaderWithName(NOBODY)
            || request.getCookies().hasCookieWithName("vestiary-session");
    if (!bringsItsOwn) {
      request.header("Authorization", "Bearer " + SERVER_TOKEN);
    }
    request.removeHeader(NOBODY);
    return context.next(request, answer);
  }
}
