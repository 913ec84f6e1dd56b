package vestiary.reservation;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonProperty.Access;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;

/**
 * What somebody asks for, as the API writes it; times are local with offset. To ask, a set or a
 * piece and the Mass are enough.
 *
 * @param set code of the set; absent if a piece is asked for
 * @param piece code of the piece; absent if a set is asked for
 * @param mass id of the Mass it is asked for
 * @param keeper short name of the church whose sacristan answers
 * @param state open, granted, refused or withdrawn
 * @param note to whoever answers
 * @param by what whoever asked is called
 * @param answer to whoever asked
 * @param answeredBy absent until then
 * @param toldAt when whoever asked was told that it is free; absent until then
 */
record WishBody(
    @JsonProperty(access = Access.READ_ONLY) String id,
    String set,
    String piece,
    String mass,
    String note,
    @JsonProperty(access = Access.READ_ONLY) String keeper,
    @JsonProperty(access = Access.READ_ONLY) String state,
    @JsonProperty(access = Access.READ_ONLY) String by,
    @JsonProperty(access = Access.READ_ONLY) String askedAt,
    @JsonProperty(access = Access.READ_ONLY) String answer,
    @JsonProperty(access = Access.READ_ONLY) String answeredBy,
    @JsonProperty(access = Access.READ_ONLY) String toldAt) {

  /**
   * An answer to whoever asked.
   *
   * @param answer a word more; absent for none
   */
  record Answer(String answer) {}

  static WishBody from(Wish one) {
    ZoneId zone = one.mass().start().getZone();
    return new WishBody(
        one.id().toString(),
        one.isSet() ? one.code() : null,
        one.isSet() ? null : one.code(),
        one.mass().id().value().toString(),
        given(one.note()),
        one.keeper().slug(),
        one.state().id(),
        one.by(),
        local(one.askedAt(), zone),
        given(one.answer()),
        given(one.answeredBy()),
        one.told().stream().findFirst().map(told -> local(told, zone)).orElse(null));
  }

  private static String given(String text) {
    return text.isEmpty() ? null : text;
  }

  private static String local(Instant moment, ZoneId zone) {
    return moment.atZone(zone).format(DateTimeFormatter.ISO_OFFSET_DATE_TIME);
  }
}
