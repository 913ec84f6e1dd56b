package vestiary.inventory;

import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.problem.Asked;

/** What a piece is worth, for those who answer for the goods. */
@Path("/api/pieces/{code}/values")
@Produces(MediaType.APPLICATION_JSON)
@Needs(Action.SEE_VALUES)
class ValueResource {

  private final ValuePiece values;

  ValueResource(ValuePiece values) {
    this.values = values;
  }

  /**
   * A value as the API writes it.
   *
   * @param amount with a point before its decimals
   * @param currency ISO 4217
   * @param basis whose estimate it is, or what it was bought for
   * @param at ISO 8601, UTC
   */
  record ValueBody(
      String amount, String currency, String basis, @Schema(readOnly = true) String at) {
    static ValueBody from(Valuation one) {
      return new ValueBody(
          one.amount().toPlainString(), one.currency(), one.basis(), one.at().toString());
    }
  }

  @GET
  @Transactional
  @Needs(Action.SEE_VALUES)
  public List<ValueBody> all(@RestPath String code) {
    return values.of(code).stream().map(ValueBody::from).toList();
  }

  @POST
  @Transactional
  @Consumes(MediaType.APPLICATION_JSON)
  public List<ValueBody> value(@RestPath String code, ValueBody body) {
    Asked.body(body);
    values.value(code, new ValuePiece.Request(body.amount(), body.currency(), body.basis()));
    return all(code);
  }
}
