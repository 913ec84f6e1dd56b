package vestiary.sending;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import vestiary.problem.Asked;

/** What programs ask for, answered by where everything is afterwards. */
@ApplicationScoped
@Transactional
class SendAndTell {

  private final SendOut send;
  private final TakeIn take;
  private final TellWhere where;

  SendAndTell(SendOut send, TakeIn take, TellWhere where) {
    this.send = send;
    this.take = take;
    this.where = where;
  }

  List<WhereaboutsBody> out(Item item, OutBody body) {
    send.send(item, Asked.body(body).toRequest());
    return where.of(item);
  }

  /** Without a body it came home as it went. */
  List<WhereaboutsBody> back(Item item, OutBody.BackBody body) {
    take.take(item, body == null ? TakeIn.Request.at(null) : body.toRequest());
    return where.of(item);
  }
}
