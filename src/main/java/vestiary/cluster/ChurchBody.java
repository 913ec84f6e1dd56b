package vestiary.cluster;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import vestiary.calendar.Proper;

/**
 * A church as the API writes it.
 *
 * @param titular id of a celebration, or an object with name, month, day and colour
 */
record ChurchBody(
    String slug,
    String name,
    String parish,
    String place,
    String title,
    @Schema(description = "id of a celebration, or {name, month, day, colour}") JsonNode titular,
    String dedication,
    Integer setOutMinutes,
    Integer clearanceMinutes,
    Double latitude,
    Double longitude) {

  static ChurchBody from(Church church) {
    return new ChurchBody(
        church.slug(),
        church.name(),
        church.parish(),
        church.place(),
        church.title(),
        titular(church),
        church.findDedication().map(Object::toString).orElse(null),
        (int) church.setOut().toMinutes(),
        (int) church.clearance().toMinutes(),
        church.coordinates().stream().map(Church.Coordinates::latitude).findFirst().orElse(null),
        church.coordinates().stream().map(Church.Coordinates::longitude).findFirst().orElse(null));
  }

  SaveChurch.Request toRequest() {
    boolean own = titular != null && titular.isObject();
    return new SaveChurch.Request(
        slug,
        name,
        parish,
        place,
        title,
        own || titular == null || titular.isNull() ? null : titular.asText(),
        own ? ownTitular() : null,
        dedication,
        setOutMinutes,
        clearanceMinutes,
        latitude,
        longitude,
        null);
  }

  private SaveChurch.OwnTitular ownTitular() {
    return new SaveChurch.OwnTitular(
        titular.path("name").asText(null),
        titular.path("month").isInt() ? titular.path("month").asInt() : null,
        titular.path("day").isInt() ? titular.path("day").asInt() : null,
        titular.path("colour").asText(null));
  }

  private static JsonNode titular(Church church) {
    for (Proper proper : church.propers()) {
      if (proper instanceof Proper.Titular known) {
        return JsonNodeFactory.instance.textNode(known.celebration());
      }
      if (proper instanceof Proper.OwnTitular own) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("name", own.name().english());
        node.put("month", own.day().getMonthValue());
        node.put("day", own.day().getDayOfMonth());
        node.put("colour", own.colour().id());
        return node;
      }
    }
    return null;
  }
}
