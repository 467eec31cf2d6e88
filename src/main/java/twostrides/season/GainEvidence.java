package twostrides.season;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import twostrides.exits.LetGo;
import twostrides.exits.PositionsSeen;
import twostrides.exits.Release;
import twostrides.race.Chance;
import twostrides.race.GainChance;
import twostrides.race.LossRate;
import twostrides.race.SheetChance;

/**
 * The chance of gaining center at one release, and on what it rests.
 *
 * @param evidence how good the ground is
 * @param chance the chance; empty where nothing in the sheet says anything of it
 * @param seconds from the release to the red line: the race's, or at the pace of these sheets
 * @param losses how often carriers under the pressure of the tag lose the puck, where the chance
 *     rests on that
 * @param seen who was seen, where anybody was
 */
public record GainEvidence(
    Evidence evidence,
    Optional<Chance> chance,
    double seconds,
    Optional<LossRate> losses,
    Optional<PositionsSeen> seen) {

  /**
   * The best ground that there is.
   *
   * @param r the release
   * @param carry how carriers of these sheets fare
   * @param known what each source says of the skaters
   */
  static GainEvidence of(Release r, CarryRates carry, List<PositionsSeen> known) {
    Optional<PositionsSeen> seen = known.stream().min(Comparator.comparing(GainEvidence::evidence));
    Optional<GainChance> gain = seen.flatMap(PositionsSeen::gain);
    if (gain.isPresent()) {
      return measured(seen.get(), gain.get());
    }
    double seconds = r.shortOfCenter() / carry.pace();
    if (r.at().state().pressure().isPresent()) {
      LossRate losses = carry.losses(r.at().state().pressure());
      return new GainEvidence(
          Evidence.TAGGED,
          Optional.of(losses.keepsWhoLetGo(seconds, missedPass(r))),
          seconds,
          Optional.of(losses),
          seen);
    }
    Optional<SheetChance> guess =
        SheetChance.of(
            r.shortOfCenter(),
            r.how().carried().orElse(0),
            Math.abs(r.at().where().place().orElseThrow().y()),
            missedPass(r));
    return new GainEvidence(
        Evidence.UNKNOWN,
        guess.map(g -> new Chance(g.p(), g.band().low(), g.band().high())),
        seconds,
        Optional.empty(),
        seen);
  }

  private static Evidence evidence(PositionsSeen seen) {
    return seen.gain().map(g -> Evidence.of(g.grade())).orElse(Evidence.UNKNOWN);
  }

  private static GainEvidence measured(PositionsSeen seen, GainChance gain) {
    return new GainEvidence(
        Evidence.of(gain.grade()),
        Optional.of(gain.chance()),
        gain.seconds(),
        Optional.empty(),
        Optional.of(seen));
  }

  private static boolean missedPass(Release r) {
    return r.how().kind() == LetGo.Kind.MISSED_PASS;
  }
}
