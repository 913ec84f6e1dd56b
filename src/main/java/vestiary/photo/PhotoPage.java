package vestiary.photo;

import static vestiary.web.Speech.say;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.Map;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.pool.PooledPiece;
import vestiary.pool.ReadPool;
import vestiary.problem.FormAnswer;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.web.Field;
import vestiary.web.Frames;
import vestiary.web.Link;
import vestiary.web.PageAnswer;
import vestiary.web.Speech;

/** The photographs of a piece: looked at, added, removed. */
@Path("/vestments/{code}/photos")
@Produces(MediaType.TEXT_HTML)
@Needs(Action.KEEP_VESTMENTS)
class PhotoPage {

  static final String JPEG = "image/jpeg";

  private static final Map<String, String> DONE =
      Map.of(
          "added",
          Speech.word("The photograph is kept."),
          "removed",
          Speech.word("The photograph is removed."));

  private final KeepPhoto keep;
  private final ReadPhotos photos;
  private final ReadPool pool;
  private final Frames frames;

  PhotoPage(KeepPhoto keep, ReadPhotos photos, ReadPool pool, Frames frames) {
    this.keep = keep;
    this.photos = photos;
    this.pool = pool;
    this.frames = frames;
  }

  @CheckedTemplate(basePath = "photo")
  static class Templates {
    private Templates() {}

    static native TemplateInstance photos(PhotoView view);
  }

  @GET
  @Transactional
  public TemplateInstance all(
      @RestPath String code, @QueryParam("done") @DefaultValue("") String done) {
    return Templates.photos(view(code, Speech.say(DONE.getOrDefault(done, "")), ""));
  }

  @POST
  @Consumes(MediaType.MULTIPART_FORM_DATA)
  public Response add(
      @RestPath String code,
      @RestForm(ReadPicture.FIELD) FileUpload photo,
      @RestForm @DefaultValue("") String care) {
    return FormAnswer.of(
        () -> {
          keep.add(code, care, keep.look(sent(photo)));
          return PageAnswer.seeOther("/vestments/%s/photos?done=added".formatted(code));
        },
        refusal ->
            PageAnswer.of(refusal.status(), Templates.photos(view(code, "", refusal.detail()))));
  }

  @POST
  @Path("/{id}/removal")
  public Response remove(@RestPath String code, @RestPath String id) {
    keep.remove(code, id);
    return PageAnswer.seeOther("/vestments/%s/photos?done=removed".formatted(code));
  }

  @GET
  @Path("/{id}")
  @Produces(JPEG)
  public byte[] large(@RestPath String code, @RestPath String id) {
    return keep.jpeg(code, id, false);
  }

  @GET
  @Path("/{id}/small")
  @Produces(JPEG)
  public byte[] small(@RestPath String code, @RestPath String id) {
    return keep.jpeg(code, id, true);
  }

  /** The file that was sent. */
  static java.nio.file.Path sent(FileUpload photo) {
    if (photo == null || photo.size() == 0) {
      throw new Refused(Refusal.Unfit.of(ReadPicture.FIELD, say("Choose a photograph first.")));
    }
    return photo.uploadedFile();
  }

  private PhotoView view(String code, String done, String problem) {
    PooledPiece piece = pool.get(code);
    String address = "/vestments/" + piece.code();
    return new PhotoView(
        frames.of("vestments", address + "/photos"),
        say("Photographs of ") + piece.code(),
        done,
        new Field("", problem),
        new Link(piece.code(), address),
        piece.home().value().toString(),
        address + "/photos",
        photos.of(piece.code()));
  }
}
