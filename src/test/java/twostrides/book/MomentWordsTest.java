package twostrides.book;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import twostrides.findings.Moment;
import twostrides.game.Strength;

/** What a sheet says of a moment, and that it says no more than the row does. */
class MomentWordsTest {

  private static Moment moment(
      Moment.Kind kind,
      String way,
      Strength strength,
      String pressure,
      OptionalDouble shift,
      String cause,
      OptionalInt attempts,
      int goals) {
    return new Moment(
        kind,
        "one",
        2,
        787,
        Optional.ofNullable(way),
        strength,
        Optional.ofNullable(pressure),
        shift,
        kind == Moment.Kind.WORKED ? OptionalDouble.empty() : OptionalDouble.of(3.8),
        Optional.empty(),
        Optional.ofNullable(cause),
        attempts,
        attempts.isPresent() ? OptionalInt.of(goals) : OptionalInt.empty(),
        Optional.empty(),
        OptionalDouble.empty(),
        "one.csv",
        7);
  }

  private static String worked(String cause, OptionalInt attempts) {
    return new MomentWords(20)
        .sentence(
            moment(
                Moment.Kind.WORKED,
                "carry",
                Strength.SHORTHANDED,
                "heavy",
                OptionalDouble.of(43.6),
                cause,
                attempts,
                0));
  }

  @Test
  void whatWorkedSaysWhatMadeItHardAndWhatIsKnownToHaveFollowed() {
    assertEquals(
        "Carry, shorthanded, under heavy pressure, after 44 s on the ice: gained center, nothing"
            + " against within 20 s.",
        worked("none", OptionalInt.of(0)));
    assertEquals(
        "Carry, shorthanded, under heavy pressure, after 44 s on the ice: gained center, no"
            + " restart.",
        worked("none", OptionalInt.empty()));
    assertEquals(
        "Carry, shorthanded, under heavy pressure, after 44 s on the ice: gained center, no attempt"
            + " against within 20 s.",
        worked(null, OptionalInt.of(0)));
    assertEquals(
        "Carry, shorthanded, under heavy pressure, after 44 s on the ice: gained center, what"
            + " followed is not in the sheet.",
        worked(null, OptionalInt.empty()));
  }

  private static String talk(Moment.Kind kind, String cause, OptionalInt attempts, int goals) {
    return new MomentWords(12)
        .sentence(
            moment(
                kind, null, Strength.EVEN, "none", OptionalDouble.of(39), cause, attempts, goals));
  }

  @Test
  void whatToTalkAboutSaysHowShortItWasAndWhatCameOfIt() {
    assertEquals(
        "Play from outside the zone, under no pressure: let go 3.8 m (12 ft) short of center, iced"
            + " (written), 2 attempts against within 12 s, 1 goal.",
        talk(Moment.Kind.ICED, "icing_written", OptionalInt.of(2), 1));
    assertEquals(
        "Play from outside the zone, under no pressure: let go 3.8 m (12 ft) short of center, iced"
            + " (inferred).",
        talk(Moment.Kind.ICED, "icing_inferred", OptionalInt.of(0), 0));
    assertEquals(
        "Play from outside the zone, under no pressure: let go 3.8 m (12 ft) short of center,"
            + " own-zone restart, cause other, 1 attempt against within 12 s.",
        talk(Moment.Kind.RESTARTED, "other", OptionalInt.of(1), 0));
    assertEquals(
        "Play from outside the zone, under no pressure: let go 3.8 m (12 ft) short of center, the"
            + " opponent had it next.",
        talk(Moment.Kind.GIVEN_AWAY, null, OptionalInt.empty(), 0));
  }

  @Test
  void aStrengthThatIsNotInTheSheetIsSaid() {
    assertEquals(
        "Chip, strength unknown: let go 3.8 m (12 ft) short of center, iced (written).",
        new MomentWords(20)
            .sentence(
                moment(
                    Moment.Kind.ICED,
                    "chip",
                    Strength.UNKNOWN,
                    null,
                    OptionalDouble.empty(),
                    "icing_written",
                    OptionalInt.empty(),
                    0)));
  }
}
