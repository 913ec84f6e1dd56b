package vestiary.access;

import io.github.bucket4j.TimeMeter;
import io.netty.util.NetUtil;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** How much a user may ask for in a minute, and how much all strangers at one address. */
@ApplicationScoped
class Allowances {

  /** Whoever gets a network of IPv6 gets at least so much of it (RFC 6177). */
  private static final int BYTES_OF_NETWORK = 8;

  private final Allowance ofUsers;
  private final Allowance ofAddresses;

  Allowances(
      @ConfigProperty(name = "vestiary.most-a-minute.user", defaultValue = "600") int user,
      @ConfigProperty(name = "vestiary.most-a-minute.address", defaultValue = "1200") int address) {
    this.ofUsers = new Allowance(user, TimeMeter.SYSTEM_MILLISECONDS);
    this.ofAddresses = new Allowance(address, TimeMeter.SYSTEM_MILLISECONDS);
  }

  /** Takes one request of a user's; how long to wait if none is left. */
  Optional<Duration> findPauseOfUser(String user) {
    return ofUsers.findPause(user);
  }

  /** Takes one request of a stranger's; how long to wait if none is left. */
  Optional<Duration> findPauseOfAddress(String address) {
    return ofAddresses.findPause(network(address));
  }

  /** The address, or for IPv6 the network that it belongs to. */
  static String network(String address) {
    byte[] bytes = NetUtil.createByteArrayFromIpAddressString(String.valueOf(address));
    return bytes == null || bytes.length <= BYTES_OF_NETWORK
        ? String.valueOf(address)
        : HexFormat.of().formatHex(Arrays.copyOf(bytes, BYTES_OF_NETWORK));
  }
}
