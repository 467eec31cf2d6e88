package twostrides.cli;

import com.code_intelligence.jazzer.junit.FuzzTest;

/**
 * The targets of {@link FuzzTarget} with coverage as a guide: Jazzer looks for inputs that reach
 * code which no input before has reached. DEVELOPERS.md says how to run one.
 */
class GuidedFuzzTest {

  @FuzzTest(maxDuration = "1h")
  void sheetAndMap(byte[] data) throws Exception {
    FuzzTarget.SHEET_AND_MAP.give(data);
  }

  @FuzzTest(maxDuration = "1h")
  void stream(byte[] data) throws Exception {
    FuzzTarget.STREAM.give(data);
  }

  @FuzzTest(maxDuration = "1h")
  void rulebook(byte[] data) throws Exception {
    FuzzTarget.RULEBOOK.give(data);
  }

  @FuzzTest(maxDuration = "1h")
  void level(byte[] data) throws Exception {
    FuzzTarget.LEVEL.give(data);
  }

  @FuzzTest(maxDuration = "1h")
  void tracking(byte[] data) throws Exception {
    FuzzTarget.TRACKING.give(data);
  }

  @FuzzTest(maxDuration = "1h")
  void sync(byte[] data) throws Exception {
    FuzzTarget.SYNC.give(data);
  }

  @FuzzTest(maxDuration = "1h")
  void places(byte[] data) throws Exception {
    FuzzTarget.PLACES.give(data);
  }

  @FuzzTest(maxDuration = "1h")
  void trackingMap(byte[] data) throws Exception {
    FuzzTarget.TRACKING_MAP.give(data);
  }

  @FuzzTest(maxDuration = "1h")
  void journal(byte[] data) throws Exception {
    FuzzTarget.JOURNAL.give(data);
  }

  @FuzzTest(maxDuration = "1h")
  void requests(byte[] data) throws Exception {
    FuzzTarget.REQUESTS.give(data);
  }
}
