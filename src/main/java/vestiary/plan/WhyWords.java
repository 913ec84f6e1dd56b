package vestiary.plan;

import static vestiary.web.Speech.say;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import vestiary.allocation.plan.Obstacle;
import vestiary.allocation.plan.Plan;
import vestiary.allocation.plan.Provision;
import vestiary.allocation.plan.Reason;
import vestiary.allocation.plan.Situation;
import vestiary.allocation.plan.Traits;
import vestiary.allocation.plan.WhyThisOne;
import vestiary.cluster.Church;
import vestiary.planning.SpanToCheck;
import vestiary.pool.PieceWords;
import vestiary.vesting.ChurchId;
import vestiary.vesting.Need;
import vestiary.vesting.Step;
import vestiary.web.NormWords;
import vestiary.web.Speech;

/** Says of each piece of a plan why it and no other, from what decided. */
final class WhyWords {

  private final Situation situation;
  private final Plan plan;
  private final Map<ChurchId, Church> churches;
  private final WhyThisOne why;
  private final Map<Need, Provision> last;

  WhyWords(SpanToCheck span, Situation situation, Plan plan) {
    this.situation = situation;
    this.plan = plan;
    this.churches =
        span.churches().stream().collect(Collectors.toMap(Church::id, Function.identity()));
    this.why = WhyThisOne.in(plan, situation);
    this.last =
        situation.last().stream().collect(Collectors.toMap(Provision::need, Function.identity()));
  }

  /** One or more whole sentences, what weighs most first. */
  List<String> sentences(Provision.Worn one) {
    List<String> said = new ArrayList<>();
    if (one.held()) {
      said.add(say("It is held for this Mass; a plan changes nothing of that."));
      return said;
    }
    one.findStep().ifPresent(step -> said.add(substitute(one.need(), step)));
    Reason reason = why.reason(one);
    said.add(place(reason));
    said.add(others(reason));
    grade(one).ifPresent(said::add);
    suit(one).ifPresent(said::add);
    if (isAsBefore(one)) {
      said.add(say("The plan before had it so as well."));
    }
    if (isAsked(one)) {
      said.add(say("Its owner must be asked first."));
    }
    return said;
  }

  private static String substitute(Need need, Step step) {
    return say(
        "No %s %s is left for this Mass; lawful in its stead is %s (%s).",
        Speech.colour(need.colour()),
        noun(need),
        say(step.sentence()),
        NormWords.source(step.source()));
  }

  private static String noun(Need need) {
    return PieceWords.kind(need.kind());
  }

  private String place(Reason reason) {
    return switch (reason.ground()) {
      case AT_HOME, HELD -> say("It belongs to this church.");
      case STILL_THERE -> say("It is at this church already, since an earlier Mass.");
      case CARRIED ->
          say(
              "It is brought from %s for this: too few are at this church.",
              name(reason.way().orElseThrow().from()));
      case RIDES_ALONG ->
          say(
              "It comes along with %s, who drives from %s that way anyway, so no journey is made for it.",
              reason.way().orElseThrow().carrier(), name(reason.way().orElseThrow().from()));
    };
  }

  /** What has become of the other pieces that would do. */
  private static String others(Reason reason) {
    Map<Obstacle, Long> others =
        reason.others().stream()
            .collect(
                Collectors.groupingBy(
                    Reason.Other::obstacle,
                    () -> new EnumMap<>(Obstacle.class),
                    Collectors.counting()));
    others.keySet().removeAll(Set.of(Obstacle.COLOUR, Obstacle.SIZE));
    if (others.isEmpty()) {
      return say("It is the only one of the cluster that serves.");
    }
    long free = free(others);
    others.keySet().removeAll(Set.of(Obstacle.JOURNEY, Obstacle.NONE));
    List<String> parts =
        others.entrySet().stream()
            .map(one -> Speech.count(one.getValue().intValue()) + " " + words(one.getKey()))
            .toList();
    String rest = parts.isEmpty() ? "" : " (%s)".formatted(Speech.list(parts));
    return free == 0
        ? say("No other that serves is free then%s.", rest)
        : say(
            "%s would serve as well%s; none of them would make a better plan.",
            Speech.sentence(Speech.count((int) free, "other")), rest);
  }

  private static long free(Map<Obstacle, Long> others) {
    return others.getOrDefault(Obstacle.JOURNEY, 0L) + others.getOrDefault(Obstacle.NONE, 0L);
  }

  private static String words(Obstacle obstacle) {
    return switch (obstacle) {
      case COLOUR -> say("of another colour");
      case SIZE -> say("of another size");
      case STAYS_HOME -> say("not to leave its church");
      case NO_JOURNEY -> say("without a known journey");
      case AWAY -> say("away");
      case KEPT_BACK -> say("kept back by its owner");
      case HELD -> say("set aside for others");
      case WORN -> say("worn about that hour");
      case JOURNEY, NONE -> say("free");
    };
  }

  private Optional<String> grade(Provision.Worn one) {
    Traits traits = situation.traits(one.piece());
    String wanted = situation.occasion(one.need()).grade();
    String shade = situation.occasion(one.need()).shade();
    if (!shade.isEmpty() && shade.equals(traits.shade())) {
      return Optional.of(say("It has the violet of the season."));
    }
    return wanted.isEmpty() || !wanted.equals(traits.grade()) || wanted.equals("ferial")
        ? Optional.empty()
        : Optional.of(say("It is a %s one, as the day is.", wanted));
  }

  private Optional<String> suit(Provision.Worn one) {
    String suit = situation.traits(one.piece()).suit();
    boolean matches =
        !suit.isEmpty()
            && plan.assignments().stream()
                .filter(other -> other.need().mass().equals(one.need().mass()))
                .filter(other -> !other.need().wearer().equals(one.need().wearer()))
                .anyMatch(other -> situation.traits(other.piece()).suit().equals(suit));
    return matches ? Optional.of(say("It matches the others of %s.", suit)) : Optional.empty();
  }

  private boolean isAsBefore(Provision.Worn one) {
    return Optional.ofNullable(last.get(one.need()))
        .flatMap(Provision::findPiece)
        .filter(one.piece()::equals)
        .isPresent();
  }

  private boolean isAsked(Provision.Worn one) {
    return situation.traits(one.piece()).onAsking()
        && !one.piece().home().equals(one.need().church());
  }

  private String name(ChurchId church) {
    return churches.get(church).name();
  }
}
