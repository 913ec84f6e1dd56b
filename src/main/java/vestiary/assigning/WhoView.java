package vestiary.assigning;

import java.util.List;

/**
 * Advice beside the form of a Mass.
 *
 * @param lead whether the one who is typed can, and who else could; empty if nothing can be said
 * @param reasons of those who cannot, besides the one who is typed
 * @param effects where it depends on how days are counted
 */
record WhoView(String lead, List<ProposalView.Reason> reasons, List<String> effects) {

  static final WhoView NOTHING = new WhoView("", List.of(), List.of());

  WhoView {
    reasons = List.copyOf(reasons);
    effects = List.copyOf(effects);
  }
}
