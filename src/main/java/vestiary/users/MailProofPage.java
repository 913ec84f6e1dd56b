package vestiary.users;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.OpenToAll;
import vestiary.web.Frame;

/**
 * Proves a mail address by one press. Opening the page alone proves nothing, since programs that
 * guard mails open every link in them.
 */
@Path("/mail/{link}")
@Produces(MediaType.TEXT_HTML)
@OpenToAll
class MailProofPage {

  private final KeepUserMail mails;

  MailProofPage(KeepUserMail mails) {
    this.mails = mails;
  }

  @CheckedTemplate(basePath = "users")
  static class Templates {
    private Templates() {}

    static native TemplateInstance mailProof(MailProofView view);
  }

  @GET
  public TemplateInstance look(@RestPath String link) {
    return Templates.mailProof(new MailProofView(Frame.empty(), address(link), "/mail/" + link));
  }

  @POST
  public TemplateInstance prove(@RestPath String link) {
    String address = address(link);
    mails.prove(link);
    return Templates.mailProof(new MailProofView(Frame.empty(), address, ""));
  }

  private String address(String link) {
    return mails.findToProve(link).map(row -> row.wanted).orElseThrow(KeepUserMail::notGood);
  }
}
