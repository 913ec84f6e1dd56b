package vestiary.planning;

import static java.util.Map.entry;
import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

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
import vestiary.web.Speech;

/** A Mass in the words of the week's and the day's page. */
public final class MassWords {

  private static final Map<MassKind, String> KINDS =
      Map.ofEntries(
          entry(MassKind.WEDDING, word("wedding")),
          entry(MassKind.FUNERAL, word("funeral")),
          entry(MassKind.CONFIRMATION, word("confirmation")),
          entry(MassKind.BAPTISM, word("baptism")),
          entry(MassKind.ANOINTING, word("anointing of the sick")),
          entry(MassKind.SCRUTINY, word("scrutiny")),
          entry(MassKind.ORDINATION, word("ordination")),
          entry(MassKind.PROFESSION, word("religious profession")),
          entry(MassKind.DEDICATION, word("dedication")),
          entry(MassKind.DEAD_ANNIVERSARY, word("anniversary of a death")),
          entry(MassKind.DEAD, word("Mass for the dead")),
          entry(MassKind.VOTIVE, word("votive Mass")),
          entry(MassKind.VARIOUS_NEEDS, word("for various needs")),
          entry(MassKind.CHRISM, word("Chrism Mass")),
          entry(MassKind.LORDS_SUPPER, word("Mass of the Lord's Supper")),
          entry(MassKind.EASTER_VIGIL, word("Easter Vigil")),
          entry(MassKind.GOOD_FRIDAY, word("celebration of the Passion")),
          entry(MassKind.BENEDICTION, word("Benediction")),
          entry(MassKind.PROCESSION, word("procession")),
          entry(MassKind.BAPTISM_OUTSIDE_MASS, word("baptism")),
          entry(MassKind.FUNERAL_OUTSIDE_MASS, word("funeral without Mass")),
          entry(MassKind.OTHER, word("other liturgy")));

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
          ? say("of Sunday")
          : say("of the next day");
    }
    if (mass.kind() == MassKind.OF_THE_DAY) {
      boolean kept = mass.option().celebration().id().equals(mass.ruling().day().kept().id());
      return kept ? "" : mass.option().celebration().name().in(locale);
    }
    return say(KINDS.get(mass.kind()));
  }

  /** What is celebrated, as a noun: "Mass", "confirmation", "Benediction". */
  public static String noun(DatedMass mass) {
    return mass.kind() == MassKind.VARIOUS_NEEDS
        ? say("Mass")
        : say(KINDS.getOrDefault(mass.kind(), word("Mass")));
  }

  /** The Mass with its celebration, for example "of Sunday, Second Sunday of Advent". */
  public static String whole(DatedMass mass, Locale locale) {
    String celebration = mass.option().celebration().name().in(locale);
    String what =
        switch (mass.kind()) {
          case OF_THE_DAY -> celebration;
          case ANTICIPATED -> tightKind(mass, locale) + ", " + celebration;
          default -> say(KINDS.get(mass.kind()));
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
        .orElse(mass.ministers().bishop() ? say("a bishop") : say("no celebrant"));
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
      company.add(Speech.count(mass.concelebrants(), "concelebrant"));
    }
    if (mass.deacons() > 0) {
      company.add(Speech.count(mass.deacons(), "deacon"));
    }
    for (FurtherMinisters further : mass.ministers().further()) {
      company.add(Speech.count(further.count(), RoleWords.noun(further.role())));
    }
    return Speech.list(company);
  }

  /** For example "needs four chasubles with stole and two dalmatics with stole". */
  static String needs(List<Need> needs) {
    List<String> counted = new ArrayList<>();
    for (PieceKind kind : COUNTED) {
      int number = count(needs, kind);
      if (number > 0) {
        String stole =
            kind == PieceKind.CHASUBLE || kind == PieceKind.DALMATIC ? say(" with stole") : "";
        counted.add(Speech.count(number, PieceNouns.of(kind)) + stole);
      }
    }
    if (counted.isEmpty() && count(needs, PieceKind.STOLE) > 0) {
      counted.add(Speech.count(count(needs, PieceKind.STOLE), "stole"));
    }
    return counted.isEmpty() ? "" : say("needs ") + Speech.list(counted);
  }

  /** For example "Nineteen Masses and three Benedictions." */
  public static String counted(List<DatedMass> masses) {
    long said = masses.stream().filter(m -> m.kind().isMass()).count();
    long benedictions = masses.stream().filter(m -> m.kind() == MassKind.BENEDICTION).count();
    long others = masses.size() - said - benedictions;
    List<String> parts = new ArrayList<>();
    if (said > 0 || masses.isEmpty()) {
      parts.add(Speech.count((int) said, "Mass"));
    }
    if (benedictions > 0) {
      parts.add(Speech.count((int) benedictions, "Benediction"));
    }
    if (others > 0) {
      parts.add(
          Speech.count(
              (int) others,
              "other liturgy",
              say(others == 1 ? word("other liturgy") : word("other liturgies"))));
    }
    return Speech.sentence(Speech.list(parts)) + ".";
  }

  private static String named(Person person) {
    return person.tightName();
  }

  private static void figure(List<String> company, int number, String noun) {
    if (number > 0) {
      company.add(number + " " + Speech.noun(number, noun));
    }
  }

  private static int count(List<Need> needs, PieceKind kind) {
    return (int) needs.stream().filter(n -> n.kind() == kind).count();
  }
}
