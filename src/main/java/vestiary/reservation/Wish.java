package vestiary.reservation;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import vestiary.cluster.Church;
import vestiary.schedule.DatedMass;

/**
 * A set or piece that somebody asks for.
 *
 * @param keeper church whose sacristan answers
 * @param answeredBy what whoever answered is called; empty until then
 * @param told when whoever asked was told that it is free, or none
 */
record Wish(
    UUID id,
    String code,
    boolean isSet,
    DatedMass mass,
    Church keeper,
    WishState state,
    String note,
    String by,
    String askedBy,
    Instant askedAt,
    String answer,
    String answeredBy,
    List<Instant> told) {

  Wish {
    told = List.copyOf(told);
  }
}
