package twostrides.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** A sheet as an unfriendly or unlucky hand might write it, and the book made of it. */
final class HostileNames {

  /** A name that is markup. */
  static final String MARKUP = "<script>alert(1)</script>";

  /** Markup, quotes, paths, formulas, right to left, emoji, and what templates would run. */
  static final List<String> ALL =
      List.of(
          MARKUP,
          "\"><img src=x onerror=alert(1)>",
          "../../../etc/passwd",
          "=HYPERLINK(1)",
          "\u05d3\u05e0\u05d9 \u202eabc",
          "\ud83c\udfd2 \ud83d\udc68\u200d\ud83d\udc69\u200d\ud83d\udc67",
          "O'Brien & Sons ]]> --> ${7*7}",
          "x".repeat(300));

  private HostileNames() {}

  /** Each name lets go of an icing in turn; the team's name is markup too. */
  private static String sheet() {
    StringBuilder sheet =
        new StringBuilder(
            "period,clock,team,player,action,outcome,x_m,y_m,skaters_for,skaters_against,video_s\n");
    int clock = 1190;
    for (String name : ALL) {
      String who = "\"Herons " + MARKUP + "\",\"" + name.replace("\"", "\"\"") + '"';
      row(sheet, clock, who, "recovery,,-25,5,4,5");
      row(sheet, clock - 4, who, "release,lost,-5,6,4,5");
      row(sheet, clock - 7, "Wolves,9 Vik", "faceoff,,21,-6.7,5,5");
      clock -= 20;
    }
    return sheet.toString();
  }

  private static void row(StringBuilder sheet, int clock, String who, String what) {
    sheet.append("1,").append(clock).append(',').append(who).append(',').append(what);
    sheet.append(',').append(1200 - clock).append('\n');
  }

  /**
   * Reviews the sheet.
   *
   * @param folder where sheet and book go
   * @return the book's folder
   */
  static Path review(Path folder) throws IOException {
    Path sheet = Files.writeString(folder.resolve("s.csv"), sheet());
    return SampleBook.of(
        folder.resolve("book"), List.of(sheet), "--compare-rulebook", "usah-girls-14u");
  }
}
