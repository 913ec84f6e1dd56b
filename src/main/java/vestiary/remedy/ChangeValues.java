package vestiary.remedy;

import java.time.format.DateTimeFormatter;
import java.util.List;
import vestiary.allocation.plan.Hold;
import vestiary.allocation.remedy.Change;
import vestiary.planning.ChangeValue;
import vestiary.schedule.DatedMass;
import vestiary.vesting.MassId;
import vestiary.vesting.Piece;

/** Writes down what a change does as the API does. */
final class ChangeValues {

  private final RemedyScene scene;

  ChangeValues(RemedyScene scene) {
    this.scene = scene;
  }

  ChangeValue of(Change change, String sentence) {
    if (change instanceof Change.Carry carry) {
      return ChangeValue.of("carry", sentence, codes(carry.pieces()))
          .at(
              id(carry.holds().get(0).mass()),
              scene.slug(carry.from()),
              scene.slug(carry.holds().get(0).church()));
    } else if (change instanceof Change.ChooseColour choice) {
      return ChangeValue.of("colour", sentence, List.of())
          .of(id(choice.mass()))
          .to(choice.colour().id(), null);
    } else if (change instanceof Change.BringOwn own) {
      return ChangeValue.of("bring-own", sentence, List.of()).of(id(own.mass()));
    } else if (change instanceof Change.TakeStep step) {
      return ChangeValue.of("step", sentence, List.of())
          .of(id(step.wearers().get(0).mass()))
          .by(step.step().id(), step.step().source());
    } else if (change instanceof Change.Release release) {
      return ChangeValue.of("release", sentence, release.holds().stream().map(Hold::piece).toList())
          .of(id(release.holds().get(0).mass()));
    } else if (change instanceof Change.BringBack back) {
      return ChangeValue.of("bring-back", sentence, codes(back.pieces()));
    } else if (change instanceof Change.MoveStart move) {
      DatedMass mass = scene.mass(move.mass());
      return ChangeValue.of("move", sentence, List.of())
          .of(id(move.mass()))
          .to(null, mass.start().plus(move.by()).format(DateTimeFormatter.ISO_OFFSET_DATE_TIME));
    }
    return ChangeValue.of(change instanceof Change.Borrow ? "borrow" : "buy", sentence, List.of());
  }

  ChangeValue of(Journey way, String sentence) {
    return ChangeValue.of("journey", sentence, way.pieces())
        .at(null, scene.slug(way.from()), scene.slug(way.to()))
        .when(
            scene.local(way.leaveBy()),
            scene.local(way.arriveBy()),
            way.carrier().isEmpty() ? null : way.carrier());
  }

  private static List<String> codes(List<Piece> pieces) {
    return pieces.stream().map(Piece::code).toList();
  }

  private static String id(MassId mass) {
    return mass.value().toString();
  }
}
