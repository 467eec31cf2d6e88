package twostrides.exits;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import twostrides.race.Chance;
import twostrides.race.GainChance;
import twostrides.race.LossRate;
import twostrides.race.SheetChance;

/**
 * The chance of gaining center at one release, and on what it rests.
 *
 * @param evidence how good the ground is
 * @param gain the chance; empty where nothing in the sheet says anything of it
 * @param seconds from the release to the red line: the race's, or at the pace of these sheets
 * @param words on what it rests, a sentence
 * @param seen who was seen, where anybody was
 */
record Ground(
    Evidence evidence,
    Optional<Chance> gain,
    double seconds,
    String words,
    Optional<Measured> seen) {

  /**
   * The best ground that there is.
   *
   * @param r the release
   * @param carry how carriers of these sheets fare
   * @param known what each source says of the skaters
   */
  static Ground of(ReleaseRow r, CarryRates carry, List<Measured> known) {
    Optional<Measured> seen =
        known.stream().min(Comparator.comparing(k -> k.evidence().orElse(Evidence.UNKNOWN)));
    Optional<GainChance> gain = seen.flatMap(Measured::gain);
    if (gain.isPresent()) {
      return measured(seen.get(), gain.get());
    }
    double seconds = r.metres() / carry.pace();
    String few = seen.map(s -> "; " + s.words()).orElse("");
    if (r.pressure().isPresent()) {
      LossRate losses = carry.losses(r.pressure());
      return new Ground(
          Evidence.TAGGED,
          Optional.of(losses.keepsWhoLetGo(seconds, r.missedPass())),
          seconds,
          tagged(r.pressure().get(), losses) + few,
          seen);
    }
    Optional<SheetChance> guess =
        SheetChance.of(r.metres(), r.carried().orElse(0), Math.abs(r.y()), r.missedPass());
    return new Ground(
        Evidence.UNKNOWN,
        guess.map(g -> new Chance(g.p(), g.band().low(), g.band().high())),
        seconds,
        unknown(guess.isPresent()) + few,
        seen);
  }

  private static Ground measured(Measured seen, GainChance gain) {
    Evidence evidence = seen.evidence().orElseThrow();
    String words =
        switch (evidence) {
          case CLICKED -> "Clicked on the video";
          case PLACES_ONLY -> "Places without speeds, a lower grade";
          default -> "Measured";
        };
    return new Ground(
        evidence,
        Optional.of(gain.chance()),
        gain.seconds(),
        words + ": " + seen.words(),
        Optional.of(seen));
  }

  private static String tagged(String pressure, LossRate losses) {
    return String.format(
        Locale.ROOT,
        "By the tag alone, a lower grade: %s pressure, %.2f losses a second (%d in %.0f s of"
            + " carrying), and who lets go is pressed more than who carries",
        pressure.replace("none", "no"),
        losses.perSecond(),
        losses.losses(),
        losses.seconds());
  }

  private static String unknown(boolean guessed) {
    return guessed
        ? "Like it is how short, how far carried, how far off the middle, pass or not: only to order"
            + " by"
        : String.format(
            Locale.ROOT,
            "Farther than %.0f m from center nothing in the sheet tells",
            SheetChance.FARTHEST);
  }
}
