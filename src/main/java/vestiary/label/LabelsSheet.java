package vestiary.label;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import vestiary.cluster.ReadCluster;
import vestiary.problem.FormAnswer;
import vestiary.problem.Refusal;
import vestiary.web.Choice;
import vestiary.web.Entries;
import vestiary.web.Frames;
import vestiary.web.Speech;

/** Sets out the page of labels. */
@ApplicationScoped
@Transactional
class LabelsSheet {

  private static final List<String> FIELDS = List.of("church", "which", "codes", "sheet", "start");

  private final ChooseLabels choose;
  private final ReadCluster cluster;
  private final Frames frames;

  LabelsSheet(ChooseLabels choose, ReadCluster cluster, Frames frames) {
    this.choose = choose;
    this.cluster = cluster;
    this.frames = frames;
  }

  static ChooseLabels.Request request(Entries typed) {
    return new ChooseLabels.Request(
        typed.text("church"),
        typed.text("which"),
        typed.text("codes"),
        typed.text("sheet"),
        typed.text("start"));
  }

  LabelsView view(Entries typed, String done) {
    ChooseLabels.Chosen chosen = choose.choose(request(typed));
    List<LabelsView.Sheet> sheets = sheets(chosen);
    return view(
        typed,
        done.equals("printed") ? say("Noted: these have their labels.") : "",
        "",
        chosen.sheet(),
        lead(chosen.labels().size(), sheets.size()),
        sheets);
  }

  LabelsView again(Entries typed, Refusal refusal) {
    Entries marked = FormAnswer.mark(typed, refusal, Map.of());
    return view(
        marked, "", FormAnswer.problem(refusal, marked, FIELDS), LabelSheet.A4_21, "", List.of());
  }

  private LabelsView view(
      Entries typed,
      String done,
      String problem,
      LabelSheet sheet,
      String lead,
      List<LabelsView.Sheet> sheets) {
    return new LabelsView(
        frames.of("vestments", "/labels"),
        done,
        problem,
        ReachedAt.isOwnMachine(choose.start()) ? warning() : "",
        typed.choice("church", churches()),
        typed.choice(
            "which",
            Stream.of(
                Choice.Option.of("new", say("those without a label yet")),
                Choice.Option.of("all", say("all of them")))),
        typed.field("codes"),
        typed.choice(
            "sheet",
            Stream.of(LabelSheet.values()).map(one -> Choice.Option.of(one.id(), one.words()))),
        typed.field("start"),
        sheet.paper(),
        lead,
        sheets,
        sheets.isEmpty()
            ? List.of()
            : FIELDS.stream().map(name -> new LabelsView.Sent(name, typed.text(name))).toList());
  }

  private String warning() {
    return say(
        "The labels would hold the address %s, which is this machine’s own: labels printed now will not open on a phone elsewhere. Whoever keeps the server names its public address first (VESTIARY_PUBLIC_URL).",
        choose.start());
  }

  private Stream<Choice.Option> churches() {
    return Stream.concat(
        Stream.of(Choice.Option.of("", say("all churches"))),
        cluster.churches().stream().map(c -> Choice.Option.of(c.slug(), c.name())));
  }

  private static String lead(int labels, int sheets) {
    return labels == 0
        ? say("Everything chosen has its label.")
        : say(
            "%s on %s. Print at full size, without fitting to the page and without margins.",
            Speech.sentence(Speech.count(labels, "label")), Speech.count(sheets, "sheet"));
  }

  private static List<LabelsView.Sheet> sheets(ChooseLabels.Chosen chosen) {
    LabelSheet form = chosen.sheet();
    List<List<LabelPicture>> pages = new ArrayList<>();
    for (int at = 0; at < chosen.labels().size(); at++) {
      int place = chosen.start() + at;
      if (place / form.labels() == pages.size()) {
        pages.add(new ArrayList<>());
      }
      pages
          .get(place / form.labels())
          .add(LabelPicture.of(chosen.labels().get(at), form, place % form.labels()));
    }
    List<LabelsView.Sheet> sheets = new ArrayList<>();
    for (List<LabelPicture> page : pages) {
      sheets.add(
          new LabelsView.Sheet(
              say("Sheet %d of %d", sheets.size() + 1, pages.size()),
              form.width(),
              form.height(),
              form.labelWidth(),
              form.labelHeight(),
              page));
    }
    return sheets;
  }
}
