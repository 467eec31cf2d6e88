package twostrides.cli;

import java.io.IOException;
import java.util.List;
import java.util.Locale;

/** Asks the system for its browser; the address stands on the console all the same. */
final class Desktop {

  private Desktop() {}

  static void open(String address) {
    String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
    List<String> command =
        system.contains("win")
            ? List.of("rundll32", "url.dll,FileProtocolHandler", address)
            : List.of(system.contains("mac") ? "open" : "xdg-open", address);
    try {
      new ProcessBuilder(command)
          .redirectOutput(ProcessBuilder.Redirect.DISCARD)
          .redirectError(ProcessBuilder.Redirect.DISCARD)
          .start();
    } catch (IOException e) {
      return;
    }
  }
}
