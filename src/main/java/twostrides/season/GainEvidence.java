package twostrides.season;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import twostrides.exits.LetGo;
import twostrides.exits.PositionsSeen;
import twostrides.exits.Release;
import twostrides.game.Pressure;
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
 * @param words on what it rests, a sentence
 * @param seen who was seen, where anybody was
 */
public record GainEvidence(
    Evidence evidence,
    Optional<Chance> chance,
    double seconds,
    String words,
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
    String few = seen.map(s -> "; " + s.words()).orElse("");
    if (r.at().state().pressure().isPresent()) {
      LossRate losses = carry.losses(r.at().state().pressure());
      return new GainEvidence(
          Evidence.TAGGED,
          Optional.of(losses.keepsWhoLetGo(seconds, missedPass(r))),
          seconds,
          tagged(r.at().state().pressure().get(), losses) + few,
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
        unknown(guess.isPresent()) + few,
        seen);
  }

  private static Evidence evidence(PositionsSeen seen) {
    return seen.gain().map(g -> Evidence.of(g.grade())).orElse(Evidence.UNKNOWN);
  }

  private static GainEvidence measured(PositionsSeen seen, GainChance gain) {
    Evidence evidence = Evidence.of(gain.grade());
    String words =
        switch (evidence) {
          case CLICKED -> "Clicked on the video";
          case PLACES_ONLY -> "Places without speeds, a lower grade";
          default -> "Measured";
        };
    return new GainEvidence(
        evidence,
        Optional.of(gain.chance()),
        gain.seconds(),
        words + ": " + seen.words(),
        Optional.of(seen));
  }

  private static String tagged(Pressure pressure, LossRate losses) {
    return String.format(
        Locale.ROOT,
        "By the tag alone, a lower grade: %s pressure, %.2f losses a second (%d in %.0f s of"
            + " carrying), and who lets go is pressed more than who carries",
        pressure == Pressure.NONE ? "no" : pressure.word(),
        losses.perSecond(),
        losses.losses(),
        losses.seconds());
  }

  private static String unknown(boolean guessed) {
    return guessed
        ? "Like it means as short of center, carried as far, as far off the middle, a pass or not:"
            + " good for the order of a list, not for a verdict"
        : String.format(
            Locale.ROOT,
            "Farther than %.0f m from center nothing in the sheet tells",
            SheetChance.FARTHEST);
  }

  private static boolean missedPass(Release r) {
    return r.how().kind() == LetGo.Kind.MISSED_PASS;
  }
}
