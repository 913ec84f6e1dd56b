package vestiary.inventory;

import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.time.LocalDate;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** How old the inventories are; what stands in them is read as pieces. */
@Path("/api/inventories")
@Produces(MediaType.APPLICATION_JSON)
class InventoryResource {

  private final ReadInventories inventories;

  InventoryResource(ReadInventories inventories) {
    this.inventories = inventories;
  }

  /**
   * An inventory as the API writes it.
   *
   * @param church short name
   * @param last date of the last one, or {@code null}
   * @param age id of an {@link InventoryAge}
   * @param sentence the same in words
   * @param pieces how many are in use
   * @param withdrawn how many were withdrawn from use
   */
  record InventoryBody(
      String church, String last, String age, String sentence, int pieces, int withdrawn) {
    static InventoryBody from(ReadInventories.Inventory one) {
      return new InventoryBody(
          one.church().slug(),
          one.last().stream().map(LocalDate::toString).findFirst().orElse(null),
          one.age().id(),
          InventoryWords.age(one),
          one.pieces().size(),
          one.withdrawn().size());
    }
  }

  @GET
  @Transactional
  @Operation(
      summary = "Inventories of all churches, or of one",
      description =
          "`age` is current, due (12 months or older), old (36 months or older) or never.")
  public List<InventoryBody> all(@QueryParam("church") String church) {
    return church == null || church.isBlank()
        ? inventories.all().stream().map(InventoryBody::from).toList()
        : List.of(InventoryBody.from(inventories.get(church)));
  }
}
