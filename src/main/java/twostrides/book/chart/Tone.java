package twostrides.book.chart;

/** What a mark means, besides its shape. */
public enum Tone {
  /** Neither: ink. */
  PLAIN("plain"),
  /** Time bought: what the team wants. */
  GOOD("bought"),
  /** Trouble: what it does not. */
  TROUBLE("trouble");

  private final String css;

  Tone(String css) {
    this.css = css;
  }

  /** Its class in {@code chart.css}. */
  String css() {
    return css;
  }
}
