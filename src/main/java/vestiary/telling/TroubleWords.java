package vestiary.telling;

import java.util.List;
import vestiary.calendar.Colour;
import vestiary.calendar.Term;
import vestiary.vesting.PieceKind;

/** What cannot stand at a Mass, as sacristans are written to of it. */
final class TroubleWords {

  private final WeekSeen week;
  private final Tongue tongue;

  TroubleWords(WeekSeen week, Tongue tongue) {
    this.week = week;
    this.tongue = tongue;
  }

  /** With the moment of the Mass at its head. */
  LetterView.Item standing(ChurchWeek.Trouble one) {
    return item(one, words(one, one.needed(), one.there()));
  }

  /** The same once it is mended, when numbers say no more. */
  LetterView.Item gone(ChurchWeek.Trouble one) {
    return item(one, tongue.say("sacristy.trouble.gone", words(one, 0, 0)));
  }

  private LetterView.Item item(ChurchWeek.Trouble one, String line) {
    return new LetterView.Item(tongue.moment(week.local(one.starts())), List.of(line));
  }

  private String words(ChurchWeek.Trouble one, int needed, int there) {
    return tongue.say(
        "sacristy.trouble." + one.kind(),
        Term.find(PieceKind.class, one.piece()).map(tongue::piece).orElse(""),
        Term.find(Colour.class, one.colour()).map(tongue::colour).orElse(""),
        needed,
        there);
  }
}
