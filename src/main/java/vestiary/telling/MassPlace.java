package vestiary.telling;

import vestiary.schedule.DatedMass;

/** Where a Mass is, for somebody who may not know the church. */
final class MassPlace {

  private MassPlace() {}

  /** For example "Holy Trinity, Wenlow". */
  static String of(DatedMass mass) {
    String place = mass.church().place();
    return place.isEmpty() ? mass.church().name() : mass.church().name() + ", " + place;
  }
}
