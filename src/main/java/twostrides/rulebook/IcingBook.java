package twostrides.rulebook;

/**
 * What a book says about icing, as far as a sheet can be judged by it.
 *
 * @param name name used on the command line and on pages
 * @param shorthandedExempt whether a team below strength may send the puck down the ice freely
 * @param source where the setting comes from
 */
public record IcingBook(String name, boolean shorthandedExempt, String source) {

  /**
   * Hybrid icing with the shorthanded exemption, as most senior and junior leagues play it. Common
   * practice; the written form is IIHF rule 81 (2023/24: race and exemption, read on the page).
   */
  public static final IcingBook HYBRID =
      new IcingBook("hybrid", true, "common practice; IIHF Official Rule Book 2023/24, rule 81");

  /**
   * Whether the place and the manpower of a release allow an icing at all. Says nothing about who
   * won a race: that icing was called is read from the restart that followed.
   *
   * @param release what is known of the release
   */
  public Ruling judge(Release release) {
    if (release.shortOfCenter() <= 0) {
      return new Ruling.NotIcing("the puck touched the red line before it was let go");
    }
    return switch (release.manpower()) {
      case SHORTHANDED ->
          shorthandedExempt
              ? new Ruling.NotIcing("the team was shorthanded, and this book exempts it")
              : new Ruling.MayBeIcing(
                  "released short of center; this book does not exempt a shorthanded team");
      case NOT_SHORTHANDED -> new Ruling.MayBeIcing("released short of center, not shorthanded");
      case UNKNOWN ->
          new Ruling.NotDecided(
              "released short of center; whether the team was shorthanded is not in the sheet");
    };
  }

  /** What is known of the releasing team's manpower. */
  public enum ManpowerAtRelease {
    /** Fewer skaters because of penalties being served. */
    SHORTHANDED,
    /** Equal or superior. */
    NOT_SHORTHANDED,
    /** Not in the sheet. */
    UNKNOWN
  }

  /**
   * The facts of a release that a book asks for.
   *
   * @param shortOfCenter metres from the puck to the near edge of the red line; zero or less when
   *     it touched
   * @param manpower of the releasing team at the instant of release
   */
  public record Release(double shortOfCenter, ManpowerAtRelease manpower) {}
}
