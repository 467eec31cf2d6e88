package twostrides.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import twostrides.exits.Settings;
import twostrides.game.RowAccount;
import twostrides.rulebook.BookSeason;
import twostrides.rulebook.Setting;
import twostrides.sheet.FilesRead;
import twostrides.sheet.SheetMaps;

/**
 * Writes {@code run.json}: what a book was made from, so that it can be made again. No clock, no
 * machine, no path. An input's hash is that of the bytes that were read; a file that could not be
 * opened has none.
 */
final class RunFile {
  private RunFile() {}

  static void write(
      Path out,
      RowAccount rows,
      List<Path> inputs,
      SheetMaps maps,
      Settings settings,
      Collection<BookSeason> seasons,
      Ice.Played played,
      boolean noNames,
      double goalPriorWeight,
      double syncReach,
      double placesError)
      throws IOException {
    DefaultPrettyPrinter printer =
        new DefaultPrettyPrinter().withObjectIndenter(new DefaultIndenter("  ", "\n"));
    try (Writer w = Files.newBufferedWriter(out.resolve("run.json"), StandardCharsets.UTF_8);
        JsonGenerator json = new JsonFactory().createGenerator(w).setPrettyPrinter(printer)) {
      json.writeStartObject();
      json.writeStringField("program", "two-strides");
      json.writeStringField("version", Main.version());
      json.writeNumberField("seed", settings.race().seed());
      json.writeObjectFieldStart("settings");
      json.writeStringField("rulebook", settings.book().id());
      json.writeStringField("rulebook_season", settings.book().season().toString());
      json.writeArrayFieldStart("rulebook_seasons_of_games");
      for (BookSeason s : seasons) {
        json.writeString(s.toString());
      }
      json.writeEndArray();
      json.writeObjectFieldStart("rulebook_settings");
      for (Setting s : settings.book().settings().values()) {
        json.writeStringField(s.key().word(), s.value());
      }
      json.writeEndObject();
      json.writeStringField("rink", played.usual().rink().name());
      json.writeNumberField("rink_length_m", played.usual().rink().length());
      json.writeNumberField("rink_width_m", played.usual().rink().width());
      json.writeStringField("rink_from", played.rinkFrom());
      json.writeNumberField("period_length_s", played.usual().periodLength());
      json.writeStringField("period_length_from", played.periodFrom());
      json.writeStringField("manpower", settings.manpower().word());
      json.writeNumberField("window_s", settings.window());
      json.writeStringField("level", settings.race().level().word());
      json.writeStringField("skaters", settings.race().skaters().name());
      json.writeNumberField("top_speed_m_s", settings.race().skaters().settings().topSpeed());
      json.writeNumberField("sprint_tau_s", settings.race().skaters().settings().tau());
      json.writeNumberField("goal_prior_weight", goalPriorWeight);
      json.writeNumberField("simulations", settings.race().simulations());
      json.writeNumberField("flag_threshold", settings.race().threshold());
      json.writeNumberField("iced_puck_m_s", settings.travel().usual());
      json.writeNumberField("iced_puck_spread", settings.travel().spread());
      json.writeNumberField("fastest_release_m_s", settings.travel().fastest());
      json.writeNumberField("sync_reach_s", syncReach);
      json.writeNumberField("places_error_m", placesError);
      json.writeBooleanField("names", !noNames);
      json.writeStringField("map", maps.names());
      json.writeEndObject();
      json.writeArrayFieldStart("inputs");
      for (Path f : inputs) {
        json.writeStartObject();
        json.writeStringField("file", String.valueOf(f.getFileName()));
        Optional<String> read = FilesRead.sha256(f);
        if (read.isPresent()) {
          json.writeStringField("sha256", read.get());
        }
        json.writeEndObject();
      }
      json.writeEndArray();
      json.writeObjectFieldStart("rows");
      json.writeNumberField("read", rows.rowsRead());
      json.writeNumberField("used", rows.rowsUsed());
      json.writeNumberField("set_aside", rows.setAside().size());
      json.writeEndObject();
      json.writeNumberField("files_set_aside", rows.unreadable().size());
      json.writeEndObject();
      json.writeRaw('\n');
    }
  }
}
