package twostrides.season;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import twostrides.exits.LetGo;
import twostrides.exits.Release;
import twostrides.stats.Count;

/**
 * How many releases of a kind were iced in these sheets: sent or missed pass, from the own zone or
 * from the neutral zone. Counted are releases that the book may call icing and whose ending the
 * sheet knows.
 */
final class KindIcings {

  /** What makes releases alike. */
  enum Kind {
    SENT_OWN,
    SENT_NEUTRAL,
    MISSED_OWN,
    MISSED_NEUTRAL;

    static Kind of(Release r) {
      return r.how().kind() == LetGo.Kind.MISSED_PASS
          ? r.fromOwnZone() ? MISSED_OWN : MISSED_NEUTRAL
          : r.fromOwnZone() ? SENT_OWN : SENT_NEUTRAL;
    }

    /** The zone's word in tables. */
    String zone() {
      return this == SENT_OWN || this == MISSED_OWN ? "own" : "neutral";
    }
  }

  private final Map<Kind, Count> counts = new EnumMap<>(Kind.class);

  /**
   * Counts releases.
   *
   * @param releases all of the sheets
   */
  KindIcings(List<Release> releases) {
    for (Release r : releases) {
      if (r.rulings().mayBeIcing() && r.outcome().restarted().isPresent()) {
        counts.merge(Kind.of(r), new Count(r.iced() ? 1 : 0, 1), Count::plus);
      }
    }
  }

  /**
   * Iced ones, of all of a kind.
   *
   * @param kind the kind
   */
  Count of(Kind kind) {
    return counts.getOrDefault(kind, new Count(0, 0));
  }
}
