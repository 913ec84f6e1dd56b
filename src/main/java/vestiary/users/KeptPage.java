package vestiary.users;

import static vestiary.web.Speech.say;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.Set;
import vestiary.access.OpenToAll;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.web.Entries;
import vestiary.web.PageAnswer;

/**
 * Where a form is led that somebody filled in without having signed in: the page where they do,
 * which carries what they typed.
 */
@Path("/sign-in/kept")
@Produces(MediaType.TEXT_HTML)
@OpenToAll
class KeptPage {

  /** What is typed there are secrets, or belongs to whoever was signed in before. */
  private static final Set<String> NEVER = Set.of("account", "users", "sign-in", "welcome", "mail");

  /** In characters; what is longer came from no form of ours. */
  private static final int LONGEST = 65_536;

  private final SignInSheet sheet;

  KeptPage(SignInSheet sheet) {
    this.sheet = sheet;
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response keep(
      @QueryParam("at") @DefaultValue("/") String at, MultivaluedMap<String, String> form) {
    CarriedForm carried = CarriedForm.typed(at, Entries.of(form));
    if (!at.startsWith("/") || NEVER.contains(at.split("/", 3)[1]) || carried.length() > LONGEST) {
      throw new Refused(new Refusal.SignInFirst(say("Sign in first. Nothing was changed.")));
    }
    return Response.fromResponse(
            PageAnswer.of(401, SignInPage.Templates.signIn(sheet.view("", carried.entries(), ""))))
        .header(HttpHeaders.WWW_AUTHENTICATE, "Bearer")
        .build();
  }
}
