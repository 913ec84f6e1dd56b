package vestiary.assigning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import vestiary.allocation.celebrant.MassToServe;
import vestiary.allocation.celebrant.Priest;
import vestiary.allocation.celebrant.PriestId;
import vestiary.allocation.celebrant.Question;
import vestiary.allocation.celebrant.Reckoning;
import vestiary.allocation.celebrant.Stay;
import vestiary.planning.Serving;
import vestiary.schedule.DatedMass;
import vestiary.vesting.MassId;

/** Counts what each priest has of the Masses on some dates, concelebrated ones included. */
final class CountShares {

  private final Scene scene;
  private final Question question;
  private final Map<MassId, PriestId> given;
  private final Reckoning reckoning;

  private CountShares(Scene scene, Map<MassId, PriestId> given) {
    this.scene = scene;
    this.question = Ask.of(scene, scene.cluster().policies().countBy(), one -> true);
    this.given = given;
    this.reckoning = new Reckoning(question);
  }

  /**
   * By surname.
   *
   * @param given who celebrates what
   */
  static List<CelebrantsView.Share> of(Scene scene, Map<MassId, PriestId> given) {
    CountShares count = new CountShares(scene, given);
    return count.question.priests().stream()
        .map(count::share)
        .sorted(Comparator.comparing(CelebrantsView.Share::name))
        .toList();
  }

  private CelebrantsView.Share share(Priest priest) {
    int masses = 0;
    int early = 0;
    int far = 0;
    List<Stay> stays = new ArrayList<>();
    for (DatedMass mass : scene.masses()) {
      Optional<MassToServe> his = question.find(mass.id()).filter(one -> isHis(priest, one));
      if (scene.isWithin(mass) && his.isPresent()) {
        masses++;
        early += his.get().early() ? 1 : 0;
        far += question.isFar(priest, mass.church().id()) ? 1 : 0;
        stays.add(his.get().stay());
      } else if (scene.isWithin(mass) && isNamed(priest, mass)) {
        masses += mass.kind().isMass() ? 1 : 0;
        stays.add(Serving.stay(mass));
      }
    }
    return new CelebrantsView.Share(
        scene.person(priest.id()).tightName(),
        masses,
        early,
        far,
        reckoning.minutes(priest, stays));
  }

  private boolean isHis(Priest priest, MassToServe mass) {
    return priest.id().equals(given.get(mass.id()));
  }

  private static boolean isNamed(Priest priest, DatedMass mass) {
    return mass.named().stream().anyMatch(one -> one.id().equals(priest.id().value()))
        || !mass.kind().isMass()
            && mass.celebrants().stream().anyMatch(one -> one.id().equals(priest.id().value()));
  }
}
