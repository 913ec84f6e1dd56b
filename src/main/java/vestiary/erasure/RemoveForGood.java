package vestiary.erasure;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.List;
import java.util.UUID;
import vestiary.access.CurrentVisitor;
import vestiary.asking.WithdrawAskings;
import vestiary.device.Hands;
import vestiary.people.Children;
import vestiary.people.FindPeople;
import vestiary.people.ForgetPerson;
import vestiary.people.KeepMail;
import vestiary.people.Person;
import vestiary.problem.Refused;
import vestiary.schedule.LoseCelebrant;
import vestiary.users.ForgetUser;

/**
 * Removes a person or a user for good. What was celebrated, carried and counted stays; whoever was
 * removed is in it without a name.
 *
 * <p>Source: Regulation (EU) 2016/679, article 17 (from memory); other laws ask for the same.
 */
@ApplicationScoped
class RemoveForGood {

  private final FindPeople people;
  private final KeepMail mails;
  private final ForgetPerson forget;
  private final Children children;
  private final ForgetUser users;
  private final LoseCelebrant celebrants;
  private final WithdrawAskings askings;
  private final Hands hands;
  private final ErasureRows rows;
  private final CurrentVisitor visitor;
  private final Clock clock;

  RemoveForGood(
      FindPeople people,
      KeepMail mails,
      ForgetPerson forget,
      Children children,
      ForgetUser users,
      LoseCelebrant celebrants,
      WithdrawAskings askings,
      Hands hands,
      ErasureRows rows,
      CurrentVisitor visitor,
      Clock clock) {
    this.people = people;
    this.mails = mails;
    this.forget = forget;
    this.children = children;
    this.users = users;
    this.celebrants = celebrants;
    this.askings = askings;
    this.hands = hands;
    this.rows = rows;
    this.visitor = visitor;
    this.clock = clock;
  }

  /**
   * What removing a person comes to.
   *
   * @param accounts that are closed with it
   * @param askings that are taken back
   */
  record Outlook(
      Person person,
      boolean hasMail,
      LoseCelebrant.Named named,
      int askings,
      List<ForgetUser.Account> accounts) {}

  /**
   * Looks without changing anything.
   *
   * @throws Refused if there is nobody of that short name
   */
  @Transactional
  Outlook look(String slug) {
    Person person = people.get(slug);
    return new Outlook(
        person,
        mails.find(person.id()).isPresent(),
        celebrants.count(person.id()),
        askings.count(person.id()),
        users.of(person.id(), Words.called(person)));
  }

  /**
   * Removes a person, and the accounts of that name.
   *
   * @throws Refused if there is nobody of that short name, or nobody would be administrator any
   *     more
   */
  @Transactional
  void person(String slug) {
    Outlook outlook = look(slug);
    Person person = outlook.person();
    List<Person> others =
        people.all().stream().filter(other -> !other.id().equals(person.id())).toList();
    Words words = Words.of(person, mails.find(person.id()).orElse(""), others);
    for (ForgetUser.Account account : outlook.accounts()) {
      words = words.and(Words.of(account));
      users.close(account.id());
    }
    words = words.and(Words.ofChild(children.names(person.id())));
    celebrants.lose(person.id());
    askings.of(person.id());
    hands.forget(person.id());
    forget.forget(slug);
    takeOut(person.id(), words);
  }

  /**
   * Removes a user alone.
   *
   * @throws Refused if there is none of that id, or nobody would be administrator any more
   */
  @Transactional
  void user(String id) {
    ForgetUser.Account account = users.get(id);
    users.close(account.id());
    takeOut(account.id(), Words.of(account));
  }

  private void takeOut(UUID subject, Words words) {
    ErasureRow row = new ErasureRow();
    row.at = clock.instant();
    row.subject = subject;
    row.visitor = visitor.visitor().mark();
    row.names = words.names().toArray(String[]::new);
    row.surnames = words.surnames().toArray(String[]::new);
    rows.persistAndFlush(row);
  }
}
