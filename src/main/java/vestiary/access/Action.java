package vestiary.access;

import static vestiary.access.Reach.EVERYWHERE;
import static vestiary.access.Reach.NOWHERE;
import static vestiary.access.Reach.OWN_CHURCHES;
import static vestiary.web.Speech.word;

import io.quarkus.qute.TemplateEnum;
import java.util.List;

/**
 * Who may do what: one line an action, one column a role, in the order of {@link Role}. Every page
 * and address of the API names its action by {@link Needs}; docs/roles.md shows the table.
 */
@TemplateEnum
public enum Action {
  LOOK(
      word("Read pages, lists and answers of the API"),
      EVERYWHERE,
      EVERYWHERE,
      EVERYWHERE,
      EVERYWHERE,
      EVERYWHERE,
      EVERYWHERE),
  KEEP_OWN_ACCOUNT(
      word(
          "Change one’s own password, mail address and devices, end one’s sessions, make tokens for oneself"),
      EVERYWHERE,
      EVERYWHERE,
      EVERYWHERE,
      EVERYWHERE,
      EVERYWHERE,
      EVERYWHERE),
  KEEP_PEOPLE(
      word("Enter people, what they serve and when they are away; read why"),
      EVERYWHERE,
      NOWHERE,
      EVERYWHERE,
      NOWHERE,
      NOWHERE,
      NOWHERE),
  SAY_OWN_ABSENCE(
      word("Say when one is away oneself"),
      EVERYWHERE,
      EVERYWHERE,
      EVERYWHERE,
      EVERYWHERE,
      NOWHERE,
      NOWHERE),
  SEE_CHILDREN(
      word("Read the whole name of a child who serves, and who is responsible"),
      EVERYWHERE,
      OWN_CHURCHES,
      EVERYWHERE,
      NOWHERE,
      NOWHERE,
      NOWHERE),
  ENTER_MASSES(
      word("Enter, change and cancel Masses"),
      EVERYWHERE,
      OWN_CHURCHES,
      EVERYWHERE,
      NOWHERE,
      NOWHERE,
      NOWHERE),
  SEE_INTENTIONS(
      word("See and enter the intention of a Mass"),
      EVERYWHERE,
      NOWHERE,
      EVERYWHERE,
      NOWHERE,
      NOWHERE,
      NOWHERE),
  ENTER_PATTERNS(
      word("Enter and end recurring Mass times"),
      EVERYWHERE,
      NOWHERE,
      EVERYWHERE,
      NOWHERE,
      NOWHERE,
      NOWHERE),
  KEEP_VESTMENTS(
      word(
          "Enter, change and withdraw vestments, with photographs; put them in care and take them back; take stock"),
      EVERYWHERE,
      OWN_CHURCHES,
      NOWHERE,
      NOWHERE,
      NOWHERE,
      NOWHERE),
  SET_OUT(
      word(
          "Vest one more who has come, say what was worn, see and enter how tall a priest or deacon is"),
      EVERYWHERE,
      OWN_CHURCHES,
      EVERYWHERE,
      NOWHERE,
      NOWHERE,
      NOWHERE),
  SEE_VALUES(
      word("See and enter what vestments are worth"),
      EVERYWHERE,
      NOWHERE,
      EVERYWHERE,
      NOWHERE,
      NOWHERE,
      NOWHERE),
  KEEP_SETS(
      word("Name and remove sets and suits"),
      EVERYWHERE,
      EVERYWHERE,
      NOWHERE,
      NOWHERE,
      NOWHERE,
      NOWHERE),
  SET_ASIDE(
      word(
          "Set vestments aside for a Mass and give them up, ask for what another has, say yes or no to whoever asks"),
      EVERYWHERE,
      OWN_CHURCHES,
      NOWHERE,
      NOWHERE,
      NOWHERE,
      NOWHERE),
  PLAN(
      word(
          "Ask for a plan, apply it, undo it; mend a clash; ask a carrier, note an owner’s answer; say that pieces are home"),
      EVERYWHERE,
      EVERYWHERE,
      EVERYWHERE,
      NOWHERE,
      NOWHERE,
      NOWHERE),
  ANSWER_CARRYING(
      word("Say yes or no to a journey, and that the pieces are there"),
      EVERYWHERE,
      EVERYWHERE,
      EVERYWHERE,
      EVERYWHERE,
      NOWHERE,
      NOWHERE),
  SIGN_WEEKS(
      word("Sign the review of a week"),
      EVERYWHERE,
      NOWHERE,
      EVERYWHERE,
      NOWHERE,
      NOWHERE,
      NOWHERE),
  PUBLISH_TIMES(
      word("Publish Mass times for the people, keep the sheet for the bishop’s office"),
      EVERYWHERE,
      NOWHERE,
      EVERYWHERE,
      NOWHERE,
      NOWHERE,
      NOWHERE),
  SEND(
      word("Say that vestments go out and come back, and undo it; note that labels are printed"),
      EVERYWHERE,
      EVERYWHERE,
      EVERYWHERE,
      EVERYWHERE,
      NOWHERE,
      NOWHERE),
  ENTER_PROPERS(
      word("Enter days of the diocese, the town or a church"),
      EVERYWHERE,
      NOWHERE,
      EVERYWHERE,
      NOWHERE,
      NOWHERE,
      NOWHERE),
  LOOK_BACK(
      word("See who changed what, and when"),
      EVERYWHERE,
      EVERYWHERE,
      EVERYWHERE,
      NOWHERE,
      NOWHERE,
      EVERYWHERE),
  SETTLE_CLUSTER(
      word("Change settings, churches and journeys; bring in lists; move the demo"),
      EVERYWHERE,
      NOWHERE,
      NOWHERE,
      NOWHERE,
      NOWHERE,
      NOWHERE),
  TAKE_OUT(
      word("Take lists out as files, with all that stands in them"),
      EVERYWHERE,
      NOWHERE,
      EVERYWHERE,
      NOWHERE,
      NOWHERE,
      NOWHERE),
  KEEP_BACKUPS(
      word("Take the whole cluster out as a backup; bring one back"),
      EVERYWHERE,
      NOWHERE,
      NOWHERE,
      NOWHERE,
      NOWHERE,
      NOWHERE),
  LET_DEVICES(
      word("Let a shared phone or computer of a sacristy stay signed in; shut it out"),
      EVERYWHERE,
      OWN_CHURCHES,
      NOWHERE,
      NOWHERE,
      NOWHERE,
      NOWHERE),
  KEEP_RECORD(
      word(
          "Take the history out as a file, remove a person for good, set how long things are kept"),
      EVERYWHERE,
      NOWHERE,
      NOWHERE,
      NOWHERE,
      NOWHERE,
      NOWHERE),
  KEEP_USERS(
      word("Let people in, give them a role, take it away"),
      EVERYWHERE,
      NOWHERE,
      NOWHERE,
      NOWHERE,
      NOWHERE,
      NOWHERE),
  LEND(
      word("Lend vestments to another cluster, answer what another offers, say that they are back"),
      EVERYWHERE,
      NOWHERE,
      NOWHERE,
      NOWHERE,
      NOWHERE,
      EVERYWHERE),
  LOOK_ELSEWHERE(
      word("Look into a cluster that lets one in as overseer, and come back"),
      EVERYWHERE,
      EVERYWHERE,
      EVERYWHERE,
      EVERYWHERE,
      EVERYWHERE,
      EVERYWHERE),
  KEEP_OVERSEERS(
      word("Let an overseer of the diocese look in, and take that back"),
      EVERYWHERE,
      NOWHERE,
      NOWHERE,
      NOWHERE,
      NOWHERE,
      NOWHERE),
  OPEN_CLUSTERS(
      word("Open another cluster on the server, from its first one"),
      EVERYWHERE,
      NOWHERE,
      NOWHERE,
      NOWHERE,
      NOWHERE,
      NOWHERE);

  private final String words;
  private final List<Reach> byRole;

  Action(String words, Reach... byRole) {
    this.words = words;
    this.byRole = List.of(byRole);
  }

  /** What it is in English, as the table of roles says it; pages say it in their language. */
  public String words() {
    return words;
  }

  /** How far that role may go. */
  public Reach reach(Role role) {
    return byRole.get(role.ordinal());
  }
}
