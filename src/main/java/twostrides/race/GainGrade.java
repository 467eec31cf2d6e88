package twostrides.race;

/** How well the places behind a chance of gaining center are known, best first. */
public enum GainGrade {
  /** Places and speeds, from tracking or a play sheet. */
  MEASURED,
  /** Places clicked on the video, and speeds from two clicks. */
  CLICKED,
  /** Places, but not the speeds of the carrier and of those near him. */
  PLACES_ONLY
}
