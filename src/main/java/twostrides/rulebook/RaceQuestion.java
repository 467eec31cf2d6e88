package twostrides.rulebook;

/**
 * What a book asks of a race: who touches the puck first, decided when. Who stands where and how
 * fast is for the race model; that the answer is asked for, and what a tie means, is the book's.
 *
 * @param deadline when it is decided
 * @param levelIsIcing whether a race too close to call is icing
 */
public record RaceQuestion(Deadline deadline, boolean levelIsIcing) {

  /** When the race is decided. */
  public enum Deadline {
    /** When the puck is touched. */
    TOUCH,
    /**
     * By who would touch the puck first, no later than the first skate at the end-zone spots. The
     * spots are the clock: who reaches the puck decides.
     */
    END_ZONE_SPOTS
  }
}
