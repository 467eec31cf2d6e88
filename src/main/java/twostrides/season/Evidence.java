package twostrides.season;

import java.util.Locale;
import twostrides.race.GainGrade;

/** On what a chance of gaining center rests, the best first. */
public enum Evidence {
  /** Skaters' places and speeds at the release are known, from tracking or the play sheet. */
  MEASURED("measured: skaters' places and speeds"),
  /** Skaters' places and speeds were clicked on the video. */
  CLICKED("clicked on the video: places and speeds"),
  /** Skaters' places are known, not how fast they went. */
  PLACES_ONLY("places without speeds, a lower grade"),
  /** The sheet says how much pressure there was, nothing more. */
  TAGGED("pressure tag alone, a lower grade"),
  /** Nothing says who was where: the chance only puts releases into an order to look in. */
  UNKNOWN("unknown: no places in this sheet");

  private final String meaning;

  Evidence(String meaning) {
    this.meaning = meaning;
  }

  /** The word in tables. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** The words on pages. */
  public String meaning() {
    return meaning;
  }

  /** Whether it is a race between skaters who were seen. */
  boolean fromPlaces() {
    return this != TAGGED && this != UNKNOWN;
  }

  /** Whether a release may be flagged on it. */
  public boolean carriesVerdict() {
    return this == MEASURED || this == CLICKED;
  }

  static Evidence of(GainGrade grade) {
    return switch (grade) {
      case MEASURED -> MEASURED;
      case CLICKED -> CLICKED;
      case PLACES_ONLY -> PLACES_ONLY;
    };
  }
}
