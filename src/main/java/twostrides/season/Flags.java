package twostrides.season;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import twostrides.exits.Around;
import twostrides.exits.PositionsSeen;
import twostrides.exits.RaceSettings;
import twostrides.exits.Release;
import twostrides.exits.Restart;
import twostrides.exits.RestartCause;

/**
 * Could he have gained center? For every release short of center: the chance, on what it rests, and
 * whether it is flagged. Definitions: docs/race.md. It needs what only a season knows: what icings
 * cost, how carriers fare.
 */
final class Flags {

  private final RaceSettings settings;
  private final CarryRates carry;
  private final Costs costs;

  Flags(RaceSettings settings, CarryRates carry, Costs costs) {
    this.settings = settings;
    this.carry = carry;
    this.costs = costs;
  }

  /**
   * Weighs releases.
   *
   * @param releases all of the sheets
   * @param skaters who was where at a release, besides what the play sheet says
   */
  List<Assessed> assess(List<Release> releases, SkatersAtRelease skaters) {
    List<List<Around>> around = releases.stream().map(skaters::at).toList();
    return IntStream.range(0, releases.size())
        .parallel()
        .mapToObj(i -> new Assessed(releases.get(i), assess(releases.get(i), around.get(i))))
        .toList();
  }

  private Assessment assess(Release r, List<Around> around) {
    Stream<PositionsSeen> seen =
        Stream.concat(
            r.seen().stream(),
            around.stream()
                .map(a -> PositionsSeen.of(r.at(), r.number(), r.outcome(), a, settings)));
    return Assessment.of(
        GainEvidence.of(r, carry, seen.toList()), costs, settings.threshold(), toWeigh(r));
  }

  private static boolean restarted(Release r) {
    return r.outcome().restarted().orElse(false);
  }

  /** Why there is nothing to weigh; {@link FlagVerdict#FLAGGED} where icing followed. */
  private static FlagVerdict toWeigh(Release r) {
    if (!restarted(r)) {
      return FlagVerdict.NO_RESTART;
    }
    if (!r.iced()) {
      return r.outcome().cause() == RestartCause.UNKNOWN
          ? FlagVerdict.UNKNOWN_CAUSE
          : FlagVerdict.OTHER_CAUSE;
    }
    return r.rulings().mayBeIcing() ? FlagVerdict.FLAGGED : FlagVerdict.NOT_ICING;
  }

  /**
   * The releases that an own-zone restart followed.
   *
   * @param assessed all releases
   * @param restarts all restarts
   */
  List<Flag> flags(List<Assessed> assessed, List<Restart> restarts) {
    KindIcings kinds = new KindIcings(assessed.stream().map(Assessed::release).toList());
    FlagWords words = new FlagWords(settings.threshold(), costs.icing());
    IdentityHashMap<Release, Restart> followed = new IdentityHashMap<>();
    for (Restart r : restarts) {
      r.behind().flatMap(Restart.Behind::release).ifPresent(x -> followed.putIfAbsent(x, r));
    }
    return assessed.parallelStream()
        .filter(a -> restarted(a.release()))
        .map(
            a ->
                new Flag(
                    a.release(),
                    a.assessment(),
                    kinds.of(KindIcings.Kind.of(a.release())),
                    costs.icing(),
                    words.sentence(a.release(), a.assessment()),
                    Optional.ofNullable(followed.get(a.release()))))
        .toList();
  }

  /**
   * A release weighed anew with other skaters; what else is said of it stays.
   *
   * @param flag what was said of it
   * @param skaters who was where
   */
  Flag again(Flag flag, SkatersAtRelease skaters) {
    Release r = flag.release();
    Assessment said = assess(List.of(r), skaters).get(0).assessment();
    return new Flag(
        r,
        said,
        flag.kindIced(),
        flag.costIcing(),
        new FlagWords(settings.threshold(), costs.icing()).sentence(r, said),
        flag.restart());
  }
}
