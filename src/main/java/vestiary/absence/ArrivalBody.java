package vestiary.absence;

import java.time.OffsetDateTime;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * When somebody comes to a Mass, as the API writes it.
 *
 * @param mass its id
 * @param church short name
 * @param start local, with offset
 * @param arrives likewise; absent where nobody has said
 * @param brings not-said, own or nothing
 */
record ArrivalBody(
    String mass, String church, OffsetDateTime start, OffsetDateTime arrives, String brings) {

  /**
   * What is said.
   *
   * @param arrives absent to forget it
   * @param brings absent for not-said
   */
  record Wanted(
      @Schema(description = "as in 18:10, on the day of the Mass; absent to forget it")
          String arrives,
      @Schema(description = "not-said, own or nothing") String brings) {}
}
