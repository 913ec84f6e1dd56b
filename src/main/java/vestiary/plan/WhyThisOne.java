package vestiary.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import vestiary.allocation.plan.Movement;
import vestiary.allocation.plan.Plan;
import vestiary.allocation.plan.Provision;
import vestiary.allocation.plan.Situation;
import vestiary.allocation.plan.Traits;
import vestiary.cluster.Church;
import vestiary.planning.SpanToCheck;
import vestiary.vesting.Away;
import vestiary.vesting.ChurchId;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;
import vestiary.vesting.Step;
import vestiary.web.English;

/** Says of each piece of a plan why it and no other, from what decided. */
final class WhyThisOne {

  private final Situation situation;
  private final Plan plan;
  private final Map<ChurchId, Church> churches;
  private final Map<String, List<Provision.Worn>> worn;
  private final Map<Need, Provision> last;

  WhyThisOne(SpanToCheck span, Situation situation, Plan plan) {
    this.situation = situation;
    this.plan = plan;
    this.churches =
        span.churches().stream().collect(Collectors.toMap(Church::id, Function.identity()));
    this.worn =
        plan.assignments().stream().collect(Collectors.groupingBy(one -> one.piece().code()));
    this.last =
        situation.last().stream().collect(Collectors.toMap(Provision::need, Function.identity()));
  }

  /** One or more whole sentences, what weighs most first. */
  List<String> sentences(Provision.Worn one) {
    List<String> said = new ArrayList<>();
    if (one.held()) {
      said.add("It is held for this Mass; a plan changes nothing of that.");
      return said;
    }
    one.findStep().ifPresent(step -> said.add(substitute(one.need(), step)));
    said.add(place(one));
    said.add(others(one));
    grade(one).ifPresent(said::add);
    suit(one).ifPresent(said::add);
    if (isAsBefore(one)) {
      said.add("The plan before had it so as well.");
    }
    if (isAsked(one)) {
      said.add("Its owner must be asked first.");
    }
    return said;
  }

  private static String substitute(Need need, Step step) {
    return "No %s %s is left for this Mass; lawful in its stead is %s (%s)."
        .formatted(need.colour().id(), noun(need), step.sentence(), step.source());
  }

  private static String noun(Need need) {
    return need.kind().id().replace('-', ' ');
  }

  private String place(Provision.Worn one) {
    ChurchId here = one.need().church();
    if (isBrought(one).isEmpty()) {
      return one.piece().home().equals(here)
          ? "It belongs to this church."
          : "It is at this church already, since an earlier Mass.";
    }
    Movement way = isBrought(one).get();
    return way.isCarriage()
        ? "It is brought from %s for this: too few are at this church.".formatted(name(way.from()))
        : "It comes along with %s, who drives from %s that way anyway, so no journey is made for it."
            .formatted(way.carrier(), name(way.from()));
  }

  private Optional<Movement> isBrought(Provision.Worn one) {
    return plan.movements().stream()
        .filter(way -> way.to().equals(one.need().church()))
        .filter(way -> way.pieces().contains(one.piece()))
        .filter(way -> !way.arriveBy().isAfter(one.need().window().setOut()))
        .reduce((earlier, later) -> later)
        .filter(
            way -> worn.get(one.piece().code()).stream().noneMatch(w -> isBetween(w, way, one)));
  }

  /** Whether it is worn after that carriage and before this Mass. */
  private static boolean isBetween(Provision.Worn other, Movement way, Provision.Worn one) {
    return other != one
        && !other.need().window().setOut().isBefore(way.arriveBy())
        && other.need().window().start().isBefore(one.need().window().start());
  }

  /** What has become of the other pieces that would do. */
  private String others(Provision.Worn one) {
    List<Piece> like =
        situation.span().pieces().stream()
            .filter(piece -> piece.kind() == one.need().kind() && !piece.equals(one.piece()))
            .filter(piece -> serves(one, piece))
            .toList();
    long away = like.stream().filter(piece -> isAway(piece, one.need())).count();
    long busy =
        like.stream()
            .filter(piece -> !isAway(piece, one.need()) && isWornMeanwhile(piece, one.need()))
            .count();
    long stays =
        like.stream()
            .filter(piece -> !isAway(piece, one.need()) && !isWornMeanwhile(piece, one.need()))
            .filter(piece -> piece.staysHome() && !piece.home().equals(one.need().church()))
            .count();
    int free = (int) (like.size() - away - busy - stays);
    if (like.isEmpty()) {
      return "It is the only one of the cluster that serves.";
    }
    List<String> parts = new ArrayList<>();
    part(parts, (int) busy, "worn at that hour");
    part(parts, (int) away, "away");
    part(parts, (int) stays, "not to leave its church");
    String rest = parts.isEmpty() ? "" : " (%s)".formatted(English.list(parts));
    return free == 0
        ? "No other that serves is free then%s.".formatted(rest)
        : "%s would serve as well%s; none of them would make a better plan."
            .formatted(English.sentence(English.count(free, "other")), rest);
  }

  private static void part(List<String> parts, int number, String words) {
    if (number > 0) {
      parts.add(English.count(number) + " " + words);
    }
  }

  private static boolean serves(Provision.Worn one, Piece piece) {
    return one.findStep()
        .map(step -> one.need().isServedBy(step, piece.colours()))
        .orElseGet(() -> one.need().isServedBy(piece.colours()));
  }

  private static boolean isAway(Piece piece, Need need) {
    return piece.away().stream().anyMatch(away -> overlaps(away, need));
  }

  private static boolean overlaps(Away away, Need need) {
    return away.from().isBefore(need.window().cleared())
        && need.window().setOut().isBefore(away.until());
  }

  private boolean isWornMeanwhile(Piece piece, Need need) {
    return worn.getOrDefault(piece.code(), List.of()).stream()
        .anyMatch(other -> other.need().window().overlaps(need.window()));
  }

  private Optional<String> grade(Provision.Worn one) {
    Traits traits = situation.traits(one.piece());
    String wanted = situation.occasion(one.need()).grade();
    String shade = situation.occasion(one.need()).shade();
    if (!shade.isEmpty() && shade.equals(traits.shade())) {
      return Optional.of("It has the violet of the season.");
    }
    return wanted.isEmpty() || !wanted.equals(traits.grade()) || wanted.equals("ferial")
        ? Optional.empty()
        : Optional.of("It is a %s one, as the day is.".formatted(wanted));
  }

  private Optional<String> suit(Provision.Worn one) {
    String suit = situation.traits(one.piece()).suit();
    boolean matches =
        !suit.isEmpty()
            && plan.assignments().stream()
                .filter(other -> other.need().mass().equals(one.need().mass()))
                .filter(other -> !other.need().wearer().equals(one.need().wearer()))
                .anyMatch(other -> situation.traits(other.piece()).suit().equals(suit));
    return matches ? Optional.of("It matches the others of %s.".formatted(suit)) : Optional.empty();
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
