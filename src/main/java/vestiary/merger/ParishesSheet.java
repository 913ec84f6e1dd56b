package vestiary.merger;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import vestiary.cluster.Parishes;
import vestiary.pool.MoveGoods;
import vestiary.web.Choice;
import vestiary.web.Entries;
import vestiary.web.Frames;
import vestiary.web.Speech;

/** Lists the parishes with their churches and goods. */
@ApplicationScoped
@Transactional
class ParishesSheet {

  private final Parishes parishes;
  private final MoveGoods goods;
  private final NotedWords noted;
  private final Frames frames;

  ParishesSheet(Parishes parishes, MoveGoods goods, NotedWords noted, Frames frames) {
    this.parishes = parishes;
    this.goods = goods;
    this.noted = noted;
    this.frames = frames;
  }

  ParishesView view(Entries typed, String done, String problem) {
    List<Parishes.Parish> all =
        parishes.all().stream().sorted(Comparator.comparing(Parishes.Parish::isMerged)).toList();
    List<Parishes.Parish> standing = all.stream().filter(p -> !p.isMerged()).toList();
    return new ParishesView(
        frames.of("settings", "/parishes"),
        done,
        problem,
        all.stream().map(p -> new ParishesView.Row(p.name(), about(p))).toList(),
        standing.size() < 2 ? Choice.of(List.of()) : typed.choice("from", options(standing)),
        typed.choice("into", options(standing)),
        typed.field("since"),
        typed.field("note"),
        noted.all());
  }

  private static Stream<Choice.Option> options(List<Parishes.Parish> parishes) {
    return Stream.concat(
        Stream.of(Choice.Option.of("", say("Choose a parish"))),
        parishes.stream().map(p -> Choice.Option.of(p.id().toString(), p.name())));
  }

  private String about(Parishes.Parish parish) {
    if (parish.isMerged()) {
      return say(
          "Merged into %s from %s",
          parish.mergedInto(), Speech.dateAndYear(LocalDate.parse(parish.mergedFrom())));
    }
    String churches =
        parish.churches().isEmpty() ? say("no church") : Speech.list(parish.churches());
    return say("%s · owns %s", churches, Speech.count(goods.countOf(parish.name()), "piece"));
  }
}
