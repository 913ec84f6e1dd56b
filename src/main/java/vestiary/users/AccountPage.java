package vestiary.users;

import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import io.vertx.core.http.HttpServerRequest;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.Map;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.access.SessionCookie;
import vestiary.problem.FormAnswer;
import vestiary.users.AccountSheet.Note;
import vestiary.web.Entries;
import vestiary.web.PageAnswer;

/** One's own password, sessions and tokens. */
@Path("/account")
@Produces(MediaType.TEXT_HTML)
@Needs(Action.KEEP_OWN_ACCOUNT)
class AccountPage {

  private static final Map<String, String> DONE =
      Map.of(
          "password", word("Your password is changed; every other session has ended."),
          "token", word("The token has ended."),
          "mail",
              word(
                  "A mail is on its way. Open the link in it within a day, and the address counts."),
          "no-mail", word("Your mail address is forgotten."),
          "outside", word("Your account is linked."),
          "no-outside", word("Your account is linked no more."),
          "passkey", word("This device lets you in from now on."),
          "no-passkey", word("The device is removed; it lets nobody in any more."));

  private final OwnAccount own;
  private final ChoosePassword choose;
  private final SignIn signIn;
  private final Tokens tokens;
  private final SessionCookie cookie;

  AccountPage(
      OwnAccount own, ChoosePassword choose, SignIn signIn, Tokens tokens, SessionCookie cookie) {
    this.own = own;
    this.choose = choose;
    this.signIn = signIn;
    this.tokens = tokens;
    this.cookie = cookie;
  }

  @GET
  @Transactional
  @Needs(Action.KEEP_OWN_ACCOUNT)
  public Response one(@QueryParam("done") @DefaultValue("") String done) {
    return own.page(Note.done(say(DONE.getOrDefault(done, ""))));
  }

  @POST
  @Path("/password")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response changePassword(
      MultivaluedMap<String, String> form, @Context HttpServerRequest request) {
    Entries typed = Entries.of(form);
    UUID me = own.id();
    return FormAnswer.of(
        () -> {
          choose.inPlaceOf(me, typed.text("old"), typed.text("password"), typed.text("again"));
          return Response.fromResponse(PageAnswer.seeOther("/account?done=password"))
              .cookie(cookie.of(signIn.open(me, SignIn.PASSING), request))
              .build();
        },
        refusal -> own.again(typed, refusal));
  }

  @POST
  @Path("/sessions/end")
  public Response endSessions(@Context HttpServerRequest request) {
    signIn.endAll(own.id());
    return Response.fromResponse(PageAnswer.seeOther("/sign-in"))
        .cookie(cookie.gone(request))
        .build();
  }

  /** The token is shown on this very answer, and never again. */
  @POST
  @Path("/tokens")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response makeToken(MultivaluedMap<String, String> form) {
    Entries typed = Entries.of(form);
    UUID me = own.id();
    return FormAnswer.of(
        () -> {
          String made =
              tokens
                  .make(
                      me,
                      new Tokens.Request(
                          typed.text("name"), typed.text("days"), !typed.isTicked("changes")))
                  .text();
          return own.page(new Note("", "", made, ""));
        },
        refusal -> own.again(typed, refusal));
  }

  /** The address is shown on this very answer, and never again. */
  @POST
  @Path("/feeds")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response makeFeed(MultivaluedMap<String, String> form) {
    Entries typed = Entries.of(form);
    UUID me = own.id();
    return FormAnswer.of(
        () -> own.page(Note.feed(tokens.makeFeed(me, typed.text("feed")).text())),
        refusal -> own.again(typed, refusal));
  }

  @POST
  @Path("/tokens/{id}/end")
  public Response endToken(@RestPath String id) {
    tokens.end(own.id(), id);
    return PageAnswer.seeOther("/account?done=token");
  }
}
