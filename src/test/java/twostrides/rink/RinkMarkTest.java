package twostrides.rink;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Marks and lines lie on the rink, and marks on its lines. */
class RinkMarkTest {

  private static Place mark(Rink rink, String id) {
    return RinkMark.of(rink).stream()
        .filter(m -> m.id().equals(id))
        .findFirst()
        .orElseThrow()
        .place();
  }

  @Test
  void everyMarkHasItsOtherSide() {
    for (Rink rink : Rink.ALL) {
      List<RinkMark> marks = RinkMark.of(rink);
      assertEquals(25, marks.stream().map(RinkMark::id).distinct().count());
      assertEquals(25, marks.stream().map(RinkMark::name).distinct().count());
      for (RinkMark m : marks) {
        assertTrue(m.id().matches("[a-z-]+"), m.id());
        Place other = m.place().seenByOpponent();
        assertTrue(marks.stream().anyMatch(o -> o.place().distanceTo(other) < 1e-9), m.name());
      }
    }
  }

  /** Worked by hand from the rink's own lengths. */
  @Test
  void marksLieWhereTheirNamesSay() {
    Rink nhl = Rink.NORTH_AMERICAN;
    assertEquals(0, mark(nhl, "own-end-dot-left").distanceTo(new Place(-21.0312, 6.7056)), 1e-9);
    assertEquals(
        0,
        mark(nhl, "their-blue-line-at-the-boards-right").distanceTo(new Place(7.62, -12.954)),
        1e-9);
    // 11 ft before the end boards, 28 ft corners: 14.5 ft and the root of 28^2 - 17^2 = 495.
    double feet = 14.5 + Math.sqrt(495);
    assertEquals(feet * 0.3048, nhl.goalLineHalf(), 1e-9);
    assertEquals(feet * 0.3048, mark(nhl, "own-goal-line-at-the-boards-left").y(), 1e-9);
  }

  @Test
  void linesStayWithinTheBoardsAndHoldTheMarks() {
    for (Rink rink : Rink.ALL) {
      List<Place> all = RinkLines.of(rink).stream().flatMap(List::stream).toList();
      for (Place p : all) {
        assertTrue(Math.abs(p.x()) <= rink.length() / 2 + 1e-9, p.toString());
        assertTrue(Math.abs(p.y()) <= rink.width() / 2 + 1e-9, p.toString());
      }
      for (RinkMark m : RinkMark.of(rink)) {
        boolean dot = m.name().contains("end dot") || m.name().contains("neutral dot");
        double nearest = all.stream().mapToDouble(p -> p.distanceTo(m.place())).min().orElseThrow();
        assertTrue(dot || nearest < 0.6, m.name() + " " + nearest);
      }
    }
  }
}
