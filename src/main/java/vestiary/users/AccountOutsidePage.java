package vestiary.users;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
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
import vestiary.web.Frames;
import vestiary.web.PageAnswer;

/** Links one's own account to another service, and parts them. */
@Path("/account/outside")
@Produces(MediaType.TEXT_HTML)
@Needs(Action.KEEP_OWN_ACCOUNT)
class AccountOutsidePage {

  private final LinkOutside link;
  private final OpenIdProvider provider;
  private final OwnAccount own;
  private final OutsideCookie cookie;
  private final Frames frames;

  AccountOutsidePage(
      LinkOutside link,
      OpenIdProvider provider,
      OwnAccount own,
      OutsideCookie cookie,
      Frames frames) {
    this.link = link;
    this.provider = provider;
    this.own = own;
    this.cookie = cookie;
    this.frames = frames;
  }

  @CheckedTemplate(basePath = "users")
  static class Templates {
    private Templates() {}

    static native TemplateInstance outside(OutsideView view);
  }

  /** Answers a page with a link to go on, since a form of ours may lead to no other site. */
  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response begin(MultivaluedMap<String, String> form, @Context HttpServerRequest request) {
    Entries typed = Entries.of(form);
    UUID me = own.id();
    return FormAnswer.of(
        () ->
            Response.fromResponse(
                    PageAnswer.of(
                        200,
                        Templates.outside(
                            new OutsideView(frames.of("account", "/account"), provider.name()))))
                .cookie(
                    cookie.of(
                        link.begin(
                            me,
                            typed.text("outside-password"),
                            request.remoteAddress().hostAddress()),
                        request))
                .build(),
        refusal -> own.again(typed, refusal));
  }

  @POST
  @Path("/removal")
  public Response part() {
    link.part(own.id());
    return PageAnswer.seeOther("/account?done=no-outside");
  }
}
