package twostrides.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * A case of the torture corpus: {@code README.txt} beside it says how one is written.
 *
 * @param name its name
 * @param command the command line, with the files' names in capitals
 * @param sheet bytes of the sheet, as the corpus writes them
 * @param extra bytes of a second file; a file only where the command names it
 * @param exit exit code that the program must end with
 * @param says what it must say, each of them
 */
record TortureCase(
    String name, String command, String sheet, String extra, int exit, List<String> says) {

  private static final Pattern REPEATED = Pattern.compile("\\{\\{(.+?)\\*(\\d+)\\}\\}");
  private static final Pattern ESCAPE =
      Pattern.compile("\\\\(?:x([0-9A-F]{2})|u([0-9A-Fa-f]{4})|([nrt\\\\]))");
  private static final String HEADER =
      "game,date,home,away,period,clock,team,player,action,outcome,x_m,y_m,skaters_for,"
          + "skaters_against,penalty\\n";
  private static final String ROWS =
      "G1,2031-10-04,Herons,Wolves,1,19:00,Herons,4 Berg,recovery,,-25,5,5,5,\\n"
          + "G1,2031-10-04,Herons,Wolves,1,18:56,Herons,4 Berg,release,lost,-5,6,5,5,\\n"
          + "G1,2031-10-04,Herons,Wolves,1,18:53,Wolves,9 Vik,faceoff,,21,-6.7,5,5,\\n"
          + "G1,2031-10-04,Herons,Wolves,1,18:50,Wolves,9 Vik,penalty,,3,3,5,5,minor\\n";

  /** All cases, in the corpus's order. */
  static List<TortureCase> all() throws IOException {
    List<TortureCase> cases = new ArrayList<>();
    CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
    try (Reader in =
        new InputStreamReader(
            TortureCase.class.getResourceAsStream("/twostrides/torture/cases.csv"),
            StandardCharsets.UTF_8)) {
      for (CSVRecord r : format.parse(in)) {
        List<String> says =
            Stream.of(r.get("says").split("\\|", -1)).filter(s -> !s.isEmpty()).toList();
        cases.add(
            new TortureCase(
                r.get("name"),
                r.get("command"),
                r.get("sheet"),
                r.get("extra"),
                Integer.parseInt(r.get("exit")),
                says));
      }
    }
    return cases;
  }

  /**
   * Lays the files out and runs the command.
   *
   * @param dir an empty folder
   */
  Run run(Path dir) throws IOException {
    Path file = dir.resolve("sheet.csv");
    Files.write(file, bytes(sheet));
    List<Object> words = new ArrayList<>();
    for (String word : command.isEmpty() ? new String[0] : command.split(" ", -1)) {
      if (word.startsWith("EXTRA")) {
        Path second = dir.resolve(word.replace("EXTRA", "extra"));
        Files.write(second, bytes(extra));
        words.add(second);
      } else {
        words.add(word.equals("SHEET") ? file : word.equals("OUT") ? dir.resolve("out") : word);
      }
    }
    return Run.of(words.toArray());
  }

  /** What a text of the corpus stands for. */
  static byte[] bytes(String text) {
    String whole =
        REPEATED
            .matcher(text.replace("{H}", HEADER).replace("{R}", ROWS))
            .replaceAll(
                m -> Matcher.quoteReplacement(m.group(1).repeat(Integer.parseInt(m.group(2)))));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Matcher m = ESCAPE.matcher(whole);
    int end = 0;
    while (m.find()) {
      out.writeBytes(whole.substring(end, m.start()).getBytes(StandardCharsets.UTF_8));
      if (m.group(1) != null) {
        out.write(Integer.parseInt(m.group(1), 16));
      } else if (m.group(2) != null) {
        String letter = String.valueOf((char) Integer.parseInt(m.group(2), 16));
        out.writeBytes(letter.getBytes(StandardCharsets.UTF_8));
      } else {
        out.write("\n\r\t\\".charAt("nrt\\".indexOf(m.group(3))));
      }
      end = m.end();
    }
    out.writeBytes(whole.substring(end).getBytes(StandardCharsets.UTF_8));
    return out.toByteArray();
  }

  @Override
  public String toString() {
    return name;
  }
}
