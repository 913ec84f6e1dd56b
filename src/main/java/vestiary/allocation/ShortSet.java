package vestiary.allocation;

import java.util.List;

/**
 * Needs that cannot all be served, by their places in ascending order.
 *
 * @param certificate what shows it
 */
record ShortSet(List<Integer> needs, Certificate certificate) {

  ShortSet {
    needs = List.copyOf(needs);
  }

  boolean allClash() {
    return certificate.kind() == CertificateKind.ALL_CLASH;
  }
}
