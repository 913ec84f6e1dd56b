package vestiary.schedule;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.UUID;
import vestiary.people.FindPeople;
import vestiary.problem.Asked;

/** A Mass as it would be if it were entered, for whoever looks before that is done. */
@ApplicationScoped
public class MassToBe {

  private final FillMass fill;
  private final ReadMasses read;
  private final FindPeople people;
  private final ReadSurroundings surroundings;

  MassToBe(FillMass fill, ReadMasses read, FindPeople people, ReadSurroundings surroundings) {
    this.surroundings = surroundings;
    this.fill = fill;
    this.read = read;
    this.people = people;
  }

  /**
   * The Mass, under an id that nothing else has. Nothing is kept.
   *
   * @throws vestiary.problem.Refused as {@link SaveMass#enter} would
   */
  @Transactional
  public DatedMass of(SaveMass.Request request) {
    MassRow row = new MassRow();
    Asked asked = new Asked();
    fill.fill(row, request, asked, surroundings.forOne());
    String celebrant = asked.text("celebrant", request.celebrant());
    asked.refuseIfFaulty();
    row.id = UUID.randomUUID();
    row.namedIds = new UUID[0];
    if (!celebrant.isEmpty()) {
      people.findCalled(celebrant).ifPresent(person -> row.celebrantId = person.id());
    }
    return read.dated(row);
  }
}
