package vestiary.planning;

import static java.util.Map.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.calendar.MassKind;
import vestiary.people.Person;
import vestiary.schedule.DatedMass;
import vestiary.schedule.MassLanguage;
import vestiary.vesting.FurtherMinisters;
import vestiary.vesting.Need;
import vestiary.vesting.PieceKind;
import vestiary.web.English;

/** A Mass in the words of the week's and the day's page. */
public final class MassWords {

  private static final Map<MassKind, String> KINDS =
      Map.ofEntries(
          entry(MassKind.WEDDING, "wedding"),
          entry(MassKind.FUNERAL, "funeral"),
          entry(MassKind.CONFIRMATION, "confirmation"),
          entry(MassKind.BAPTISM, "baptism"),
          entry(MassKind.ANOINTING, "anointing of the sick"),
          entry(MassKind.SCRUTINY, "scrutiny"),
          entry(MassKind.ORDINATION, "ordination"),
          entry(MassKind.PROFESSION, "religious profession"),
          entry(MassKind.DEDICATION, "dedication"),
          entry(MassKind.DEAD_ANNIVERSARY, "anniversary of a death"),
          entry(MassKind.DEAD, "Mass for the dead"),
          entry(MassKind.VOTIVE, "votive Mass"),
          entry(MassKind.VARIOUS_NEEDS, "for various needs"),
          entry(MassKind.CHRISM, "Chrism Mass"),
          entry(MassKind.LORDS_SUPPER, "Mass of the Lord's Supper"),
          entry(MassKind.EASTER_VIGIL, "Easter Vigil"),
          entry(MassKind.GOOD_FRIDAY, "celebration of the Passion"),
          entry(MassKind.BENEDICTION, "Benediction"),
          entry(MassKind.PROCESSION, "procession"),
          entry(MassKind.BAPTISM_OUTSIDE_MASS, "baptism"),
          entry(MassKind.FUNERAL_OUTSIDE_MASS, "funeral without Mass"),
          entry(MassKind.OTHER, "other liturgy"));

  private static final List<PieceKind> COUNTED =
      List.of(
          PieceKind.CHASUBLE,
          PieceKind.DALMATIC,
          PieceKind.COPE,
          PieceKind.HUMERAL_VEIL,
          PieceKind.MITRE,
          PieceKind.VIMPA,
          PieceKind.PALL,
          PieceKind.ALB);

  private MassWords() {}

  /** After the colour's name, for example "confirmation, in Spanish"; often empty. */
  static String tight(DatedMass mass, Locale locale) {
    return spoken(tightKind(mass, locale), mass);
  }

  private static String tightKind(DatedMass mass, Locale locale) {
    if (mass.kind() == MassKind.ANTICIPATED) {
      return mass.isOnHolyDay() && mass.ruling().day().date().getDayOfWeek().getValue() == 7
          ? "of Sunday"
          : "of the next day";
    }
    if (mass.kind() == MassKind.OF_THE_DAY) {
      boolean kept = mass.option().celebration().id().equals(mass.ruling().day().kept().id());
      return kept ? "" : mass.option().celebration().name().in(locale);
    }
    return KINDS.get(mass.kind());
  }

  /** What is celebrated, as a noun: "Mass", "confirmation", "Benediction". */
  public static String noun(DatedMass mass) {
    return mass.kind() == MassKind.VARIOUS_NEEDS ? "Mass" : KINDS.getOrDefault(mass.kind(), "Mass");
  }

  /** The Mass with its celebration, for example "of Sunday, Second Sunday of Advent". */
  public static String whole(DatedMass mass, Locale locale) {
    String celebration = mass.option().celebration().name().in(locale);
    String what =
        switch (mass.kind()) {
          case OF_THE_DAY -> celebration;
          case ANTICIPATED -> tightKind(mass, locale) + ", " + celebration;
          default -> KINDS.get(mass.kind());
        };
    return spoken(what, mass);
  }

  private static String spoken(String what, DatedMass mass) {
    return Stream.of(what, MassLanguage.words(mass))
        .filter(words -> !words.isEmpty())
        .collect(Collectors.joining(", "));
  }

  static String celebrant(DatedMass mass) {
    return mass.findCelebrant()
        .map(MassWords::named)
        .orElse(mass.ministers().bishop() ? "a bishop" : "no celebrant");
  }

  /** For example "3 concelebrants, 1 deacon"; empty if the celebrant is alone. */
  static String companyInFigures(DatedMass mass) {
    List<String> company = new ArrayList<>();
    figure(company, mass.concelebrants(), "concelebrant");
    figure(company, mass.deacons(), "deacon");
    return String.join(", ", company);
  }

  /** For example "three concelebrants, one deacon and four servers"; empty if he is alone. */
  public static String company(DatedMass mass) {
    List<String> company = new ArrayList<>();
    if (mass.concelebrants() > 0) {
      company.add(English.count(mass.concelebrants(), "concelebrant"));
    }
    if (mass.deacons() > 0) {
      company.add(English.count(mass.deacons(), "deacon"));
    }
    for (FurtherMinisters further : mass.ministers().further()) {
      company.add(English.count(further.count(), RoleWords.noun(further.role())));
    }
    return English.list(company);
  }

  /** For example "needs four chasubles with stole and two dalmatics with stole". */
  static String needs(List<Need> needs) {
    List<String> counted = new ArrayList<>();
    for (PieceKind kind : COUNTED) {
      int number = count(needs, kind);
      if (number > 0) {
        String stole =
            kind == PieceKind.CHASUBLE || kind == PieceKind.DALMATIC ? " with stole" : "";
        counted.add(English.count(number, PieceNouns.of(kind)) + stole);
      }
    }
    if (counted.isEmpty() && count(needs, PieceKind.STOLE) > 0) {
      counted.add(English.count(count(needs, PieceKind.STOLE), "stole"));
    }
    return counted.isEmpty() ? "" : "needs " + English.list(counted);
  }

  /** For example "Nineteen Masses and three Benedictions." */
  public static String counted(List<DatedMass> masses) {
    long said = masses.stream().filter(m -> m.kind().isMass()).count();
    long benedictions = masses.stream().filter(m -> m.kind() == MassKind.BENEDICTION).count();
    long others = masses.size() - said - benedictions;
    List<String> parts = new ArrayList<>();
    if (said > 0 || masses.isEmpty()) {
      parts.add(English.count((int) said, "Mass"));
    }
    if (benedictions > 0) {
      parts.add(English.count((int) benedictions, "Benediction"));
    }
    if (others > 0) {
      parts.add(English.count((int) others) + " other " + (others == 1 ? "liturgy" : "liturgies"));
    }
    return English.sentence(English.list(parts)) + ".";
  }

  private static String named(Person person) {
    return person.tightName();
  }

  private static void figure(List<String> company, int number, String noun) {
    if (number > 0) {
      company.add(number + " " + noun + (number == 1 ? "" : "s"));
    }
  }

  private static int count(List<Need> needs, PieceKind kind) {
    return (int) needs.stream().filter(n -> n.kind() == kind).count();
  }
}
