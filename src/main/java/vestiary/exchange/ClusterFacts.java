package vestiary.exchange;

import jakarta.enterprise.context.ApplicationScoped;
import vestiary.cluster.Cluster;
import vestiary.cluster.ReadCluster;
import vestiary.web.Frame;
import vestiary.web.FrameFacts;

/** Answers what the frame of every page says of the cluster; the demo is known only here. */
@ApplicationScoped
class ClusterFacts implements FrameFacts {

  private final ReadCluster cluster;
  private final Demo demo;

  ClusterFacts(ReadCluster cluster, Demo demo) {
    this.cluster = cluster;
    this.demo = demo;
  }

  @Override
  public Facts read() {
    Cluster here = cluster.cluster();
    return new Facts(
        here.isSetUp() ? here.name() : "", cluster.countChurches(), demo(), here.zone());
  }

  private Frame.Demo demo() {
    if (cluster.findDemoMonday().isEmpty()) {
      return Frame.Demo.NONE;
    }
    return demo.isPast()
        ? new Frame.Demo(
            "This is the demo. Every name is invented, and its fortnight is past.", true)
        : new Frame.Demo("This is the demo. Every name is invented.", false);
  }
}
