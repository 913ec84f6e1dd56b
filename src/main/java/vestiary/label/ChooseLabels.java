package vestiary.label;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.cluster.Church;
import vestiary.cluster.ReadCluster;
import vestiary.pool.PieceWords;
import vestiary.problem.Asked;
import vestiary.sending.FindItem;
import vestiary.sending.Item;
import vestiary.users.PublicAddress;
import vestiary.vesting.ChurchId;
import vestiary.web.Speech;

/** Chooses what gets a label, and keeps what has one. */
@ApplicationScoped
@Transactional
class ChooseLabels {

  private static final int MOST = 1000;

  private final FindItem items;
  private final PrintedLabelRows printed;
  private final ReadCluster cluster;
  private final PublicAddress address;
  private final Clock clock;

  ChooseLabels(
      FindItem items,
      PrintedLabelRows printed,
      ReadCluster cluster,
      PublicAddress address,
      Clock clock) {
    this.items = items;
    this.printed = printed;
    this.cluster = cluster;
    this.address = address;
    this.clock = clock;
  }

  /**
   * What was asked for; what is blank was not.
   *
   * @param church short name of the church whose things are meant; blank: all churches
   * @param which "all" or "new", those without a label yet
   * @param codes of single sets and pieces, with blanks or commas between; then nothing else counts
   * @param sheet its id
   * @param start place of the first free label, from 1
   */
  record Request(String church, String which, String codes, String sheet, String start) {}

  /**
   * What is to be printed.
   *
   * @param start place of the first label, from 0
   */
  record Chosen(LabelSheet sheet, int start, List<Labelled> labels) {}

  /**
   * Chooses.
   *
   * @throws vestiary.problem.Refused if a field is unfit
   */
  Chosen choose(Request request) {
    Asked asked = new Asked();
    LabelSheet sheet = sheet(request.sheet(), asked);
    Integer first = asked.number("start", request.start());
    int start = asked.whole("start", first, 1, sheet.labels(), 1);
    List<Item> chosen = items(request, asked);
    if (chosen.size() > MOST) {
      asked.fault("church", say("That makes more than 1,000 labels; choose one church at a time."));
    }
    asked.refuseIfFaulty();
    Map<ChurchId, String> churches =
        cluster.churches().stream().collect(Collectors.toMap(Church::id, Church::name));
    return new Chosen(
        sheet, start - 1, chosen.stream().map(item -> label(item, churches)).toList());
  }

  /** Notes that these came out of the printer. */
  void notePrinted(Request request) {
    Set<String> known = printed.codes();
    choose(request).labels().stream()
        .map(Labelled::code)
        .filter(code -> !known.contains(code))
        .forEach(
            code -> {
              PrintedLabelRow row = new PrintedLabelRow();
              row.code = code;
              row.printedAt = clock.instant();
              printed.persist(row);
            });
  }

  /** Where the addresses of labels begin. */
  String start() {
    return address.of("");
  }

  private static LabelSheet sheet(String id, Asked asked) {
    String text = asked.text("sheet", id);
    if (text.isEmpty()) {
      return LabelSheet.A4_21;
    }
    if (LabelSheet.find(text).isEmpty()) {
      asked.fault("sheet", say("There is no such sheet; choose one of the list."));
    }
    return LabelSheet.find(text).orElse(LabelSheet.A4_21);
  }

  private List<Item> items(Request request, Asked asked) {
    String codes = asked.text("codes", request.codes());
    if (!codes.isEmpty()) {
      return named(codes, asked);
    }
    String slug = asked.text("church", request.church());
    Set<ChurchId> homes =
        cluster.churches().stream()
            .filter(church -> slug.isEmpty() || church.slug().equals(slug))
            .map(Church::id)
            .collect(Collectors.toSet());
    if (homes.isEmpty() && !slug.isEmpty()) {
      asked.fault("church", say("There is no church \"%s\" in this cluster.", slug));
    }
    Set<String> have = request.which().equals("all") ? Set.of() : printed.codes();
    return items.all().stream()
        .filter(item -> homes.contains(item.home()) && !have.contains(item.code()))
        .toList();
  }

  private List<Item> named(String codes, Asked asked) {
    Set<String> each = new TreeSet<>(List.of(codes.toUpperCase(Locale.ROOT).split("[\\s,;]+")));
    each.removeIf(String::isEmpty);
    return each.stream()
        .flatMap(
            code -> {
              if (items.find(code).isEmpty()) {
                asked.fault("codes", say("There is no set and no piece \"%s\".", code));
              }
              return items.find(code).stream();
            })
        .toList();
  }

  private Labelled label(Item item, Map<ChurchId, String> churches) {
    String what =
        Speech.tinted(Speech.colour(item.first().colour()), PieceWords.kind(item.first().kind()));
    String with =
        item.pieces().stream()
            .skip(1)
            .map(piece -> PieceWords.kind(piece.kind()))
            .distinct()
            .collect(Collectors.joining(", "));
    return new Labelled(
        item.code(),
        address.of("/s/" + item.code()),
        Stream.of(
                Speech.sentence(with.isEmpty() ? what : what + ", " + with),
                churches.get(item.home()),
                item.name())
            .filter(text -> !text.isEmpty())
            .toList());
  }
}
