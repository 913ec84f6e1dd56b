package vestiary.load;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import vestiary.browser.PackagedServer;

/**
 * Many clients that want the same sets at overlapping times, on the packaged program; with a third
 * word the server is killed in the middle, as by a power cut, and started again. Run by hand
 * (docs/benchmarks.md):
 *
 * <pre>ManyReservations [clients] [seconds] [kill]</pre>
 */
final class ManyReservations {

  private static final Map<String, String> DEMO = Map.of("VESTIARY_DEMO", "true");

  private ManyReservations() {}

  public static void main(String... arguments) throws Exception {
    int clients = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 64;
    int seconds = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 120;
    boolean kills = arguments.length > 2 && arguments[2].equals("kill");
    Path folder = Files.createTempDirectory("vestiary-load");
    try (PackagedServer server = PackagedServer.start(folder, DEMO)) {
      ReservingClients work = new ReservingClients(server);
      if (kills) {
        Thread killer = new Thread(() -> killAfter(server, work, seconds / 2));
        killer.start();
        work.run(clients, seconds);
        killer.join();
      } else {
        work.run(clients, seconds);
        tell(server);
      }
      System.out.println(work.table());
      System.out.println("answers: " + work.answers());
    }
    if (kills) {
      try (PackagedServer again = PackagedServer.start(folder, DEMO)) {
        System.out.println("after the kill and a new start on the same folder:");
        tell(again);
      }
    }
  }

  private static void killAfter(PackagedServer server, ReservingClients work, int seconds) {
    try {
      Thread.sleep(seconds * 1000L);
      server.kill();
      work.stop();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private static void tell(PackagedServer server) throws Exception {
    System.out.printf(
        "%d reservations stand; %d overlaps; %d half reservations%n",
        ReservingClients.standing(server),
        ReservingClients.overlaps(server),
        ReservingClients.halves(server));
  }
}
