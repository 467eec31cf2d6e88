package twostrides.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import twostrides.rink.Place;
import twostrides.rink.Units;

/**
 * Whether two kinds of sheets mean the same places: the player who lets a puck go has to stand
 * where the play sheet has him, by his number in tracking or by the click on the video. A map that
 * turns the rink round, or takes feet for metres, is known by it.
 */
final class SamePlaces {

  /** Releases that it takes, and the share of them that must agree. Assumed. */
  private static final int LEAST = 3;

  private static final double SHARE = 0.5;

  /** What a map may have taken wrongly, and what makes it right. */
  private static final Map<String, UnaryOperator<Place>> OTHERWISE = otherwise();

  private final String whoSeesHim;
  private final String whatElse;
  private final List<Place> written = new ArrayList<>();
  private final List<Place> seen = new ArrayList<>();

  /**
   * Nobody seen yet.
   *
   * @param whoSeesHim what knows the player, with its verb
   * @param whatElse what to check where no one line of the map makes it right
   */
  SamePlaces(String whoSeesHim, String whatElse) {
    this.whoSeesHim = whoSeesHim;
    this.whatElse = whatElse;
  }

  private static Map<String, UnaryOperator<Place>> otherwise() {
    double foot = Units.FOOT.toMetres(1);
    Map<String, UnaryOperator<Place>> all = new LinkedHashMap<>();
    all.put("place.view or home_attacks_plus_x_in: turned half round", Place::seenByOpponent);
    all.put("place.y_left: left and right exchanged", p -> new Place(p.x(), -p.y()));
    all.put("place.unit: metres instead of feet", p -> new Place(p.x() / foot, p.y() / foot));
    all.put("place.unit: feet instead of metres", p -> new Place(p.x() * foot, p.y() * foot));
    return all;
  }

  /**
   * A release at which the player was seen.
   *
   * @param sheet where the play sheet has the puck
   * @param here where he was seen, in the same frame
   */
  void add(Place sheet, Place here) {
    written.add(sheet);
    seen.add(here);
  }

  /** What contradicts the play sheets, a sentence; empty where nothing does. */
  Optional<String> doubt() {
    int near = near(UnaryOperator.identity());
    if (written.size() < LEAST || near >= SHARE * written.size()) {
      return Optional.empty();
    }
    String mend =
        OTHERWISE.entrySet().stream()
            .filter(o -> near(o.getValue()) > Math.max(near, SHARE * written.size()))
            .findFirst()
            .map(o -> o.getKey() + ", " + near(o.getValue()) + " of them would stand there")
            .orElse(whatElse);
    return Optional.of(
        String.format(
            Locale.ROOT,
            "%s at %d releases and has him where the play sheet has the puck, within %.0f m, at %d of"
                + " them. What to do: Check in its map %s.",
            whoSeesHim,
            written.size(),
            ReleaseMatcher.SAME_PLACE,
            near,
            mend));
  }

  private int near(UnaryOperator<Place> read) {
    int n = 0;
    for (int i = 0; i < written.size(); i++) {
      boolean here =
          read.apply(seen.get(i)).distanceTo(written.get(i)) <= ReleaseMatcher.SAME_PLACE;
      n += here ? 1 : 0;
    }
    return n;
  }
}
