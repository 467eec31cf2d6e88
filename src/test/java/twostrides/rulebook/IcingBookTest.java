package twostrides.rulebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import org.junit.jupiter.api.Test;
import twostrides.rulebook.IcingBook.ManpowerAtRelease;
import twostrides.rulebook.IcingBook.Release;

/**
 * The hybrid book against IIHF rule 81 (2023/24 and 2022/23, read on the page; restated in the
 * reference notes).
 */
class IcingBookTest {

  private static Ruling rule(double shortBy, ManpowerAtRelease manpower) {
    return IcingBook.HYBRID.judge(new Release(shortBy, manpower));
  }

  @Test
  void equalOrSuperiorTeamsCanIce() {
    assertInstanceOf(Ruling.MayBeIcing.class, rule(0.1, ManpowerAtRelease.NOT_SHORTHANDED));
  }

  @Test
  void aTeamBelowStrengthMayIceFreely() {
    Ruling r = rule(10, ManpowerAtRelease.SHORTHANDED);
    assertInstanceOf(Ruling.NotIcing.class, r);
    assertEquals("the team was shorthanded, and this book exempts it", r.reason());
  }

  @Test
  void aBookWithoutTheExemptionCallsIt() {
    IcingBook noExemption = new IcingBook("school", false, "made up for this test");
    assertInstanceOf(
        Ruling.MayBeIcing.class, noExemption.judge(new Release(10, ManpowerAtRelease.SHORTHANDED)));
  }

  @Test
  void aPuckOnTheRedLineIsSafe() {
    assertInstanceOf(Ruling.NotIcing.class, rule(0, ManpowerAtRelease.NOT_SHORTHANDED));
    assertInstanceOf(Ruling.NotIcing.class, rule(-3, ManpowerAtRelease.UNKNOWN));
  }

  @Test
  void unknownManpowerIsNotDecided() {
    assertInstanceOf(Ruling.NotDecided.class, rule(5, ManpowerAtRelease.UNKNOWN));
  }
}
