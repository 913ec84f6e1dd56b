package vestiary.schedule;

import static java.util.Map.entry;
import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import java.util.Map;
import vestiary.calendar.MassKind;

/** The kinds of Mass as a form names them. */
public final class MassKindWords {

  private static final Map<MassKind, String> WORDS =
      Map.ofEntries(
          entry(MassKind.OF_THE_DAY, word("Mass of the day")),
          entry(MassKind.ANTICIPATED, word("Mass of the next day, anticipated")),
          entry(MassKind.WEDDING, word("Wedding Mass")),
          entry(MassKind.FUNERAL, word("Funeral Mass")),
          entry(MassKind.CONFIRMATION, word("Confirmation")),
          entry(MassKind.BAPTISM, word("Baptism within Mass")),
          entry(MassKind.ANOINTING, word("Anointing of the sick within Mass")),
          entry(MassKind.SCRUTINY, word("Scrutiny before baptism")),
          entry(MassKind.ORDINATION, word("Ordination")),
          entry(MassKind.PROFESSION, word("Religious profession")),
          entry(MassKind.DEDICATION, word("Dedication of a church or altar")),
          entry(
              MassKind.DEAD_ANNIVERSARY,
              word("Mass for the dead: first anniversary, news of a death")),
          entry(MassKind.DEAD, word("Mass for the dead on another day")),
          entry(MassKind.VOTIVE, word("Votive Mass")),
          entry(MassKind.VARIOUS_NEEDS, word("Mass for various needs")),
          entry(MassKind.CHRISM, word("Chrism Mass")),
          entry(MassKind.LORDS_SUPPER, word("Evening Mass of the Lord's Supper")),
          entry(MassKind.EASTER_VIGIL, word("Easter Vigil")),
          entry(MassKind.GOOD_FRIDAY, word("Celebration of the Passion (no Mass)")),
          entry(MassKind.BENEDICTION, word("Benediction (no Mass)")),
          entry(MassKind.PROCESSION, word("Procession (no Mass)")),
          entry(MassKind.BAPTISM_OUTSIDE_MASS, word("Baptism outside Mass")),
          entry(MassKind.FUNERAL_OUTSIDE_MASS, word("Funeral without Mass")),
          entry(MassKind.OTHER, word("Another liturgy (no Mass)")));

  private MassKindWords() {}

  public static String of(MassKind kind) {
    return say(WORDS.get(kind));
  }
}
