package vestiary.users;

import io.vertx.core.http.HttpServerRequest;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.UUID;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.problem.FormAnswer;
import vestiary.web.Entries;
import vestiary.web.PageAnswer;

/** One's own mail address, for when the password is forgotten. */
@Path("/account/mail")
@Produces(MediaType.TEXT_HTML)
@Needs(Action.KEEP_OWN_ACCOUNT)
class AccountMailPage {

  private final KeepUserMail mails;
  private final OwnAccount own;

  AccountMailPage(KeepUserMail mails, OwnAccount own) {
    this.mails = mails;
    this.own = own;
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response keep(MultivaluedMap<String, String> form, @Context HttpServerRequest request) {
    Entries typed = Entries.of(form);
    UUID me = own.id();
    return FormAnswer.of(
        () -> {
          mails.ask(
              me,
              typed.text("mail"),
              typed.text("mail-password"),
              request.remoteAddress().hostAddress());
          return PageAnswer.seeOther("/account?done=mail");
        },
        refusal -> own.again(typed, refusal));
  }

  @POST
  @Path("/removal")
  public Response forget() {
    mails.forget(own.id());
    return PageAnswer.seeOther("/account?done=no-mail");
  }
}
