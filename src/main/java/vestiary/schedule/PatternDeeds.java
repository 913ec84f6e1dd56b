package vestiary.schedule;

import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Map;
import java.util.Set;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.web.Entries;
import vestiary.web.Frames;
import vestiary.web.Link;

/** What the form of a pattern asks for, each in one transaction. */
@ApplicationScoped
@Transactional
class PatternDeeds {

  private static final String CHANGED_MEANWHILE =
      word("Something has changed since you looked. Nothing was saved; look again.");

  /** Belongs to the sending of a form, not to what was typed. */
  private static final Set<String> NOT_TYPED = Set.of("form-token", "seen", "again");

  private static final Set<Effect.Kind> IN_STEP = Set.of(Effect.Kind.SAME, Effect.Kind.STAYS);

  private final PatternRows patterns;
  private final SavePattern save;
  private final ChangePattern change;
  private final PatternFormView form;
  private final EffectsSheet sheet;
  private final Frames frames;

  PatternDeeds(
      PatternRows patterns,
      SavePattern save,
      ChangePattern change,
      PatternFormView form,
      EffectsSheet sheet,
      Frames frames) {
    this.patterns = patterns;
    this.save = save;
    this.change = change;
    this.form = form;
    this.sheet = sheet;
    this.frames = frames;
  }

  PatternForm fresh(Entries typed, String problem) {
    return form.fresh(typed, problem);
  }

  PatternForm stored(String id) {
    PatternRow row = get(id);
    return form.of(row, form.stored(row), "", outOfStep(id));
  }

  PatternForm typed(String id, Entries typed, String problem) {
    return form.of(get(id), typed, problem, "");
  }

  void enter(Entries typed) {
    Asked asked = new Asked();
    SavePattern.Request request = PatternEntries.request(typed, List.of(), asked);
    refuse(asked, request);
    save.enter(request);
  }

  /** Changes it if that is what was looked at; otherwise nothing is changed. */
  boolean change(String id, Entries typed, String seen) {
    ChangePattern.Change wanted = asked(id, typed);
    boolean same = EffectsSheet.seen(change.look(id, wanted)).equals(seen);
    if (same) {
      change.change(id, wanted);
    }
    return same;
  }

  boolean remove(String id, String seen) {
    boolean same = EffectsSheet.seen(change.lookAtRemoval(id)).equals(seen);
    if (same) {
      change.remove(id);
    }
    return same;
  }

  /** What the change would do. */
  EffectsView effects(String id, Entries typed, String seenBefore) {
    ChangePattern.Change wanted = asked(id, typed);
    PatternRow then = change.preview(id, wanted);
    List<Effect> effects = change.look(id, wanted);
    return view(
        say("Before it is saved"),
        change.words(then),
        effects,
        then,
        seenBefore,
        "/patterns/" + id,
        hidden(typed),
        say("Save it so"));
  }

  /** What taking it off would do. */
  EffectsView removal(String id, String seenBefore) {
    PatternRow row = get(id);
    return view(
        say("Before it is taken off"),
        change.words(row),
        change.lookAtRemoval(id),
        row,
        seenBefore,
        "/patterns/" + id + "/removal",
        List.of(),
        say("Take it off"));
  }

  private EffectsView view(
      String title,
      String pattern,
      List<Effect> effects,
      PatternRow then,
      String seenBefore,
      String action,
      List<EffectsView.Typed> typed,
      String button) {
    String seen = EffectsSheet.seen(effects);
    return new EffectsView(
        frames.of("settings", action),
        title,
        pattern,
        EffectsSheet.lead(effects),
        seenBefore.isEmpty() ? "" : say(CHANGED_MEANWHILE),
        sheet.groups(effects, then),
        sheet.touched(effects),
        action,
        typed,
        seen,
        button,
        new Link(say("Leave it as it was"), action.replace("/removal", "")));
  }

  private static List<EffectsView.Typed> hidden(Entries typed) {
    return typed.values().entrySet().stream()
        .filter(entry -> !NOT_TYPED.contains(entry.getKey()))
        .sorted(Map.Entry.comparingByKey())
        .flatMap(e -> e.getValue().stream().map(text -> new EffectsView.Typed(e.getKey(), text)))
        .toList();
  }

  /** Calendar and school terms may have changed since its Masses were made. */
  private String outOfStep(String id) {
    long apart = change.lookUnchanged(id).stream().filter(e -> !IN_STEP.contains(e.kind())).count();
    return apart == 0
        ? ""
        : say(
            "%d of its dates to come no longer agree with the calendar or the school terms. Save it to see which.",
            apart);
  }

  private ChangePattern.Change asked(String id, Entries typed) {
    Asked asked = new Asked();
    SavePattern.Request request = PatternEntries.request(typed, get(id).ministers, asked);
    refuse(asked, request);
    return new ChangePattern.Change(
        request,
        typed.text("from"),
        typed.isTicked("takeAlong"),
        asked.number("version", typed.text("version")));
  }

  /** Whoever typed two things wrong is told of both at once. */
  private void refuse(Asked asked, SavePattern.Request request) {
    if (asked.isFaulty()) {
      asked.add(save.findFaults(request));
    }
    asked.refuseIfFaulty();
  }

  private PatternRow get(String id) {
    PatternRow row = patterns.findById(Asked.id("pattern", id));
    if (row == null) {
      throw new Refused(new Refusal.NotThere("pattern", id));
    }
    return row;
  }
}
