package vestiary.backup;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.StreamingOutput;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.problem.Asked;

/** The whole cluster as one file, and back. */
@Path("/api/backups")
class BackupResource {

  static final String ZIP = "application/zip";

  private final TakeBackup take;
  private final RestoreBackup restore;

  BackupResource(TakeBackup take, RestoreBackup restore) {
    this.take = take;
    this.restore = restore;
  }

  /** What came back. */
  record RestoredBody(String cluster, String name, String made, long rows) {
    static RestoredBody from(Manifest manifest) {
      return new RestoredBody(
          manifest.cluster(),
          manifest.name(),
          manifest.made(),
          manifest.entries().stream().mapToLong(Manifest.Entry::rows).sum());
    }
  }

  @GET
  @Path("/newest.zip")
  @Produces(ZIP)
  @Needs(Action.KEEP_BACKUPS)
  public Response takeOut() {
    java.nio.file.Path file = take.take();
    StreamingOutput body =
        out -> {
          try {
            Files.copy(file, out);
          } finally {
            Files.deleteIfExists(file);
          }
        };
    return Response.ok(body, ZIP)
        .header(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"backup.zip\"")
        .header(HttpHeaders.CACHE_CONTROL, "no-store")
        .build();
  }

  @POST
  @Consumes({ZIP, MediaType.APPLICATION_OCTET_STREAM})
  @Produces(MediaType.APPLICATION_JSON)
  @Needs(Action.KEEP_BACKUPS)
  public RestoredBody bringBack(byte[] archive) {
    try {
      java.nio.file.Path file = Files.createTempFile("restore", ".zip");
      try {
        Files.write(file, Asked.body(archive));
        return RestoredBody.from(restore.restore(file));
      } finally {
        Files.deleteIfExists(file);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
