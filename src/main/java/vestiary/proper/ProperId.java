package vestiary.proper;

import java.time.LocalDate;
import java.util.function.Predicate;
import java.util.stream.Stream;
import vestiary.problem.Asked;
import vestiary.problem.ShortName;

/** The short name that a proper gets where nobody chose one. */
final class ProperId {

  /** As many characters as the id of a celebration may have. */
  static final int LONGEST = 60;

  private static final int LONGEST_NUMBER = 4;

  private ProperId() {}

  /**
   * The id that is asked for; otherwise that of the name, which is brought once, or one of the
   * celebration that is free, since several may be about it.
   */
  static String of(SaveProper.Request request, Predicate<String> isTaken) {
    if (isGiven(request.id())) {
      return request.id().strip();
    }
    if (isGiven(request.name())) {
      return ShortName.of(request.name(), "day", LONGEST);
    }
    String about = isGiven(request.celebration()) ? request.celebration() : "day";
    String wanted = ShortName.of(about + year(request), "day", LONGEST - LONGEST_NUMBER);
    return Stream.iterate(1, number -> number + 1)
        .map(number -> number == 1 ? wanted : wanted + "-" + number)
        .filter(isTaken.or("new"::equals).negate())
        .findFirst()
        .orElseThrow();
  }

  private static String year(SaveProper.Request request) {
    return new Asked()
        .findDate("keptOn", request.keptOn())
        .map(LocalDate::getYear)
        .map(year -> "-" + year)
        .orElse("");
  }

  private static boolean isGiven(String text) {
    return text != null && !text.isBlank();
  }
}
