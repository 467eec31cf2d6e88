package twostrides.season;

import java.util.Optional;
import twostrides.exits.BookRuling;
import twostrides.exits.Release;
import twostrides.exits.Restart;
import twostrides.race.PuckSpread;
import twostrides.stats.Count;

/**
 * A release that an own-zone restart followed, flagged or not, with what there is to say of it.
 *
 * @param release the release
 * @param assessment its chances and the verdict
 * @param kindIced how many of the releases of its kind were iced
 * @param puck where the puck would go, left alone
 * @param costIcing attempts against that an icing costs on average
 * @param sentence what happened, and why it is flagged or not
 * @param restart the face-off that followed, where the sheet has a row of it
 */
public record Flag(
    Release release,
    Assessment assessment,
    Count kindIced,
    PuckSpread puck,
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
}
