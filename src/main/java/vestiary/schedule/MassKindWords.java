package vestiary.schedule;

import static java.util.Map.entry;

import java.util.Map;
import vestiary.calendar.MassKind;

/** The kinds of Mass as a form names them. */
final class MassKindWords {

  private static final Map<MassKind, String> WORDS =
      Map.ofEntries(
          entry(MassKind.OF_THE_DAY, "Mass of the day"),
          entry(MassKind.ANTICIPATED, "Mass of the next day, anticipated"),
          entry(MassKind.WEDDING, "Wedding Mass"),
          entry(MassKind.FUNERAL, "Funeral Mass"),
          entry(MassKind.CONFIRMATION, "Confirmation"),
          entry(MassKind.BAPTISM, "Baptism within Mass"),
          entry(MassKind.ANOINTING, "Anointing of the sick within Mass"),
          entry(MassKind.SCRUTINY, "Scrutiny before baptism"),
          entry(MassKind.ORDINATION, "Ordination"),
          entry(MassKind.PROFESSION, "Religious profession"),
          entry(MassKind.DEDICATION, "Dedication of a church or altar"),
          entry(MassKind.DEAD_ANNIVERSARY, "Mass for the dead: first anniversary, news of a death"),
          entry(MassKind.DEAD, "Mass for the dead on another day"),
          entry(MassKind.VOTIVE, "Votive Mass"),
          entry(MassKind.VARIOUS_NEEDS, "Mass for various needs"),
          entry(MassKind.CHRISM, "Chrism Mass"),
          entry(MassKind.LORDS_SUPPER, "Evening Mass of the Lord's Supper"),
          entry(MassKind.EASTER_VIGIL, "Easter Vigil"),
          entry(MassKind.GOOD_FRIDAY, "Celebration of the Passion (no Mass)"),
          entry(MassKind.BENEDICTION, "Benediction (no Mass)"),
          entry(MassKind.PROCESSION, "Procession (no Mass)"),
          entry(MassKind.BAPTISM_OUTSIDE_MASS, "Baptism outside Mass"),
          entry(MassKind.FUNERAL_OUTSIDE_MASS, "Funeral without Mass"),
          entry(MassKind.OTHER, "Another liturgy (no Mass)"));

  private MassKindWords() {}

  static String of(MassKind kind) {
    return WORDS.get(kind);
  }
}
