package twostrides.season;

import java.util.Optional;
import twostrides.exits.BookRuling;
import twostrides.exits.Release;
import twostrides.exits.Restart;
import twostrides.stats.Count;

/**
 * A release that an own-zone restart followed, flagged or not, with what there is to say of it.
 *
 * @param release the release
 * @param assessment its chances and the verdict
 * @param kindIced how many of the releases of its kind were iced
 * @param costIcing attempts against that an icing costs on average
 * @param sentence what happened, and why it is flagged or not
 * @param restart the face-off that followed, where the sheet has a row of it
 */
public record Flag(
    Release release,
    Assessment assessment,
    Count kindIced,
    double costIcing,
    String sentence,
    Optional<Restart> restart) {

  /** What the book of the run says. */
  public BookRuling played() {
    return release.rulings().played();
  }

  KindIcings.Kind kind() {
    return KindIcings.Kind.of(release);
  }

  /** Its kind in words: sent or missed pass, and from which zone. */
  public String kindWords() {
    return release.how().kind().word().replace('_', ' ') + " from the " + kind().zone() + " zone";
  }

  /** Least chance of avoiding the icing for a release that is called a near miss. Assumed. */
  private static final double NEAR_MISS = 0.5;

  /** Whether it is flagged. */
  public boolean flagged() {
    return assessment.verdict() == FlagVerdict.FLAGGED;
  }

  /** Whether only the video can tell. */
  public boolean toLookAt() {
    return assessment.verdict() == FlagVerdict.LOOK;
  }

  /** Whether it is an icing that was let go short of center. */
  public boolean icing() {
    return flagged() || toLookAt() || assessment.verdict().fellShort();
  }

  /** Whether it is not flagged, though gaining center would as likely as not have avoided it. */
  public boolean nearMiss() {
    return assessment.verdict().fellShort()
        && assessment.avoid().filter(a -> a.p() >= NEAR_MISS).isPresent();
  }
}
