package vestiary.assigning;

import java.util.List;

/**
 * Who could celebrate one Mass, as the API writes it.
 *
 * @param priests by surname
 * @param effects where it depends on how days are counted
 * @param waysOut what can be done where nobody can
 */
record AdviceBody(String mass, List<OfPriest> priests, List<String> effects, List<String> waysOut) {

  /**
   * One priest by his short name, and the one reason if he cannot.
   *
   * @param inItsLanguage whether he celebrates in the language of the Mass
   */
  record OfPriest(String priest, boolean can, boolean inItsLanguage, String why) {}

  static AdviceBody of(Advice advice) {
    WhyNotWords words = new WhyNotWords(advice.scene(), advice.pace());
    return new AdviceBody(
        advice.mass().id().value().toString(),
        advice.priests().stream()
            .map(
                one ->
                    new OfPriest(
                        advice.scene().person(one.priest()).slug(),
                        one.can(),
                        one.inItsLanguage(),
                        one.can() ? "" : words.of(one.why().get(0), advice.mass().id())))
            .toList(),
        AdviceSheet.effects(advice),
        new WayWords(advice.scene(), advice.mass())
            .all(advice).stream().map(ProposalView.Way::sentence).toList());
  }
}
