package vestiary.setout;

import static vestiary.web.Speech.say;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import vestiary.pool.PooledPiece;
import vestiary.vesting.Step;

/**
 * A set-out sheet as the API writes it. Moments are local with their offset.
 *
 * @param setOutBy when everything lies ready
 * @param cleared when everything hangs in the cupboard again
 * @param people by role and number, each with a pile, lowest first
 * @param ifMissing what may stand in, kind by kind
 * @param coming what is carried here for it
 */
record SetOutBody(
    String mass,
    String church,
    String start,
    String setOutBy,
    String cleared,
    String colour,
    List<PersonBody> people,
    List<SpareBody> ifMissing,
    List<ComingBody> coming) {

  /**
   * @param pile lowest first: what is put on last
   * @param beside what lies apart
   */
  record PersonBody(
      String role, int person, String who, List<LineBody> pile, List<LineBody> beside) {}

  /**
   * @param whence {@code pool}, {@code open}, {@code brought}, {@code cupboard} or {@code left-out}
   * @param piece absent where none is named
   * @param state absent where none is named
   * @param source the norm that asks for it
   */
  record LineBody(
      String kind,
      String colour,
      String whence,
      String piece,
      String state,
      String where,
      String source) {}

  record SpareBody(
      String kind, String colour, int asked, List<String> free, List<StepBody> steps) {}

  record StepBody(String step, String sentence, String source) {}

  /**
   * @param carrier absent where the journey is made for it
   */
  record ComingBody(List<String> pieces, String from, String arriveBy, String carrier) {}

  static SetOutBody of(SetOut found, ZoneId zone) {
    return new SetOutBody(
        found.mass().id().value().toString(),
        found.mass().church().slug(),
        local(found.window().start(), zone),
        local(found.window().setOut(), zone),
        local(found.window().cleared(), zone),
        found.mass().colour().id(),
        found.people().stream().map(SetOutBody::person).toList(),
        found.spares().stream().map(SetOutBody::spare).toList(),
        found.coming().stream()
            .map(
                one ->
                    new ComingBody(
                        one.pieces(),
                        one.from(),
                        local(one.arriveBy(), zone),
                        one.carrier().isEmpty() ? null : one.carrier()))
            .toList());
  }

  private static PersonBody person(SetOut.Vested person) {
    return new PersonBody(
        person.wearer().role().id(),
        person.wearer().ordinal(),
        person.who(),
        person.laid().stream().map(SetOutBody::line).toList(),
        person.beside().stream().map(SetOutBody::line).toList());
  }

  private static LineBody line(SetOut.Line line) {
    return new LineBody(
        line.kind().id(),
        line.colour().id(),
        line.whence().id(),
        line.findPiece().map(PooledPiece::code).orElse(null),
        line.state().isEmpty() ? null : line.state(),
        line.where(),
        line.need().source());
  }

  private static SpareBody spare(SetOut.Spare spare) {
    return new SpareBody(
        spare.kind().id(),
        spare.colour().id(),
        spare.asked(),
        spare.free().stream().map(PooledPiece::code).toList(),
        spare.ladder().stream().map(SetOutBody::step).toList());
  }

  private static StepBody step(Step step) {
    return new StepBody(step.id(), say(step.sentence()), step.source());
  }

  private static String local(Instant moment, ZoneId zone) {
    return moment.atZone(zone).format(DateTimeFormatter.ISO_OFFSET_DATE_TIME);
  }
}
