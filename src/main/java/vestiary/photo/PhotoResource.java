package vestiary.photo;

import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.pool.ReadPool;

/** Photographs of a piece; sent as a form with the file in it, kept and answered as JPEG. */
@Path("/api/pieces/{code}/photos")
@Produces(MediaType.APPLICATION_JSON)
@Needs(Action.KEEP_VESTMENTS)
class PhotoResource {

  private final KeepPhoto photos;
  private final ReadPool pool;

  PhotoResource(KeepPhoto photos, ReadPool pool) {
    this.photos = photos;
    this.pool = pool;
  }

  /**
   * A photograph as the API writes it.
   *
   * @param care id of the time in care whose cause it shows, or {@code null}
   * @param addedAt ISO 8601, UTC
   * @param picture address of the picture
   */
  record PhotoBody(String id, String care, int width, int height, String addedAt, String picture) {
    static PhotoBody from(String code, Photo photo) {
      return new PhotoBody(
          photo.id().toString(),
          photo.care().stream().map(Object::toString).findFirst().orElse(null),
          photo.width(),
          photo.height(),
          photo.addedAt().toString(),
          "/api/pieces/%s/photos/%s".formatted(code, photo.id()));
    }
  }

  @GET
  @Transactional
  public List<PhotoBody> all(@RestPath String code) {
    return photos.of(pool.id(code)).stream().map(p -> PhotoBody.from(code, p)).toList();
  }

  @POST
  @Consumes(MediaType.MULTIPART_FORM_DATA)
  @Operation(
      summary = "Add a photograph",
      description =
          "The part `photo` is a JPEG or PNG; `care` the id of a time in care, or left out.")
  public Response add(
      @RestPath String code, @RestForm(ReadPicture.FIELD) FileUpload photo, @RestForm String care) {
    pool.id(code);
    Photo added = photos.add(code, care == null ? "" : care, photos.look(PhotoPage.sent(photo)));
    PhotoBody body = PhotoBody.from(code, added);
    return Response.created(URI.create(body.picture())).entity(body).build();
  }

  @GET
  @Path("/{id}")
  @Produces(PhotoPage.JPEG)
  public byte[] one(@RestPath String code, @RestPath String id) {
    return photos.jpeg(code, id, false);
  }

  @DELETE
  @Path("/{id}")
  public void remove(@RestPath String code, @RestPath String id) {
    photos.remove(code, id);
  }
}
