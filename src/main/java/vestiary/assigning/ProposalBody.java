package vestiary.assigning;

import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import vestiary.allocation.celebrant.Beside;
import vestiary.allocation.celebrant.Levels;
import vestiary.allocation.celebrant.MassToServe;
import vestiary.allocation.celebrant.PriestId;
import vestiary.allocation.celebrant.Want;
import vestiary.people.Person;
import vestiary.schedule.DatedMass;

/**
 * A proposal, as the API writes it.
 *
 * @param status proven or stopped
 * @param score the weightiest first: obligatory Masses unserved, others unserved, beyond one a day,
 *     not as asked, other language, minutes, worst share, squares of shares, changes
 * @param bounds the least each can be
 */
record ProposalBody(
    String status,
    List<Long> score,
    List<Long> bounds,
    List<Line> masses,
    List<Unserved> unserved) {

  /** One Mass; {@code now} and {@code celebrant} are short names, or {@code null} for nobody. */
  record Line(
      String mass, String church, String start, String now, String celebrant, List<String> why) {}

  /** One that nobody takes: the group that proves it, and each priest's one reason. */
  record Unserved(String mass, String ground, List<String> group, List<String> proof) {}

  static ProposalBody of(ProposeCelebrants.Found found) {
    Levels values = found.proposal().values();
    return new ProposalBody(
        found.proposal().proven() ? "proven" : "stopped",
        values.asList(),
        found.proposal().bounds().asList(),
        found.question().masses().stream().map(mass -> line(mass, found)).toList(),
        found.proposal().wants().stream().map(want -> unserved(want, found)).toList());
  }

  private static Line line(MassToServe mass, ProposeCelebrants.Found found) {
    Scene scene = found.scene();
    DatedMass dated = scene.find(mass.id()).orElseThrow();
    Optional<PriestId> celebrant = found.proposal().findCelebrant(mass.id());
    boolean changed = celebrant.isPresent() && !mass.now().contains(celebrant.get());
    BesideWords words = new BesideWords(scene, new WhyNotWords(scene, found.question().pace()));
    return new Line(
        mass.id().value().toString(),
        dated.church().slug(),
        dated.start().format(DateTimeFormatter.ISO_OFFSET_DATE_TIME),
        dated.findCelebrant().map(Person::slug).orElse(null),
        celebrant.map(scene::person).map(Person::slug).orElse(null),
        changed
            ? words.of(
                mass, celebrant.get(), Beside.all(found.question(), found.proposal().given(), mass))
            : List.of());
  }

  private static Unserved unserved(Want want, ProposeCelebrants.Found found) {
    return new Unserved(
        want.mass().value().toString(),
        want.ground().name().toLowerCase(Locale.ROOT),
        want.masses().stream().map(mass -> mass.value().toString()).toList(),
        new WantWords(found.scene()).of(want));
  }
}
