package twostrides.race;

/** What could be done with the puck short of center. */
public enum Way {
  /** Let it go here. */
  RELEASE_NOW("release now", "past their blue line, play going on"),
  /** Carry it to the red line, then let it go the same way. */
  CENTER_FIRST("gain center first, then release", "center gained"),
  /** Lay it in behind the defenders so that it dies before their goal line. */
  SOFTER(
      "a softer release that dies in their end",
      "left alone it dies between their blue and goal lines"),
  /** Lay it into the own half of the neutral zone for a teammate. */
  CHIP("a chip that dies short of the red line", "a teammate first to it"),
  /** Shoot at the empty net from here. */
  SHOOT_NOW("shoot at the empty net now", "goal"),
  /** Carry it to the red line, then shoot at the empty net. */
  CENTER_THEN_SHOOT("gain center first, then shoot", "goal");

  private final String words;
  private final String meant;

  Way(String words, String meant) {
    this.words = words;
    this.meant = meant;
  }

  /** What is done, a phrase. */
  public String words() {
    return words;
  }

  /** What it is meant to bring, a phrase. */
  public String meant() {
    return meant;
  }

  /** Whether it is a shot at an empty net. */
  public boolean shot() {
    return this == SHOOT_NOW || this == CENTER_THEN_SHOOT;
  }
}
