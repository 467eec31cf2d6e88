package twostrides.demo;

import java.util.Optional;
import twostrides.demo.ExitTruth.CenterMark;

/** The ways out that a page shows a share for, told from the simulator's truth. */
enum ShownOut {
  OVER_CENTER("carry over center"),
  RELEASED_SHORT("carried, released short"),
  PASS("pass"),
  CHIP("chip"),
  LONG_CLEARANCE("long clearance"),
  MISSED_PASS("missed pass"),
  KEPT_IN("kept in");

  final String word;

  ShownOut(String word) {
    this.word = word;
  }

  /** Empty for a carry that ended otherwise short of center. */
  static Optional<ShownOut> of(ExitTruth exit) {
    return switch (exit.way) {
      case CARRY ->
          switch (exit.center.orElse(CenterMark.STOPPED)) {
            case GAINED -> Optional.of(OVER_CENTER);
            case RELEASED_SHORT -> Optional.of(RELEASED_SHORT);
            case LOST_SHORT, BROUGHT_BACK, STOPPED -> Optional.empty();
          };
      case PASS -> Optional.of(PASS);
      case CHIP -> Optional.of(CHIP);
      case LONG_CLEARANCE -> Optional.of(LONG_CLEARANCE);
      case MISSED_PASS -> Optional.of(MISSED_PASS);
      case KEPT_IN -> Optional.of(KEPT_IN);
    };
  }
}
