package vestiary.exchange;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.access.Visitor;
import vestiary.cluster.Cluster;
import vestiary.cluster.ReadCluster;
import vestiary.web.Frame;
import vestiary.web.FrameFacts;
import vestiary.web.Speech;

/** Answers what the frame of every page says of the cluster; the demo is known only here. */
@ApplicationScoped
class ClusterFacts implements FrameFacts {

  private final ReadCluster cluster;
  private final Demo demo;
  private final CurrentVisitor current;

  ClusterFacts(ReadCluster cluster, Demo demo, CurrentVisitor current) {
    this.cluster = cluster;
    this.demo = demo;
    this.current = current;
  }

  @Override
  @Transactional
  public Facts read() {
    Cluster here = cluster.cluster();
    Frame.Demo demo = demo();
    return new Facts(
        here.isSetUp() && maySee(demo) ? here.name() : "",
        cluster.countChurches(),
        demo,
        here.zone(),
        nameOfVisitor(),
        current.visitor() instanceof Visitor.Overseer);
  }

  private String nameOfVisitor() {
    return current.visitor() instanceof Visitor.KeeperOfServer
        ? Speech.say("The token of the server")
        : current.visitor().name();
  }

  /** Nothing of a real cluster is told to somebody who has not signed in, not even its name. */
  private boolean maySee(Frame.Demo demo) {
    return current.visitor().may(Action.LOOK) || demo != Frame.Demo.NONE;
  }

  private Frame.Demo demo() {
    if (cluster.findDemoMonday().isEmpty()) {
      return Frame.Demo.NONE;
    }
    return demo.isPast()
        ? new Frame.Demo(
            Speech.say("This is the demo. Every name is invented, and its fortnight is past."),
            true)
        : new Frame.Demo(Speech.say("This is the demo. Every name is invented."), false);
  }
}
