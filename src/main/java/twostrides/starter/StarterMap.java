package twostrides.starter;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import twostrides.sheet.SheetException;

/**
 * A map to start from, for a sheet that nobody has described.
 *
 * @param text the map, TOML; every guess has a comment, every open question a line that begins with
 *     {@code # ?}
 * @param questions how many questions are open
 */
public record StarterMap(String text, int questions) {

  private static final Pattern COMMA = Pattern.compile("[+-]?\\d+,\\d+");

  /**
   * Looks at a sheet.
   *
   * @param file the sheet
   * @throws SheetException when it cannot be read as a table at all
   */
  public static StarterMap of(Path file) throws SheetException {
    UnknownSheet sheet = UnknownSheet.read(file);
    return new Writer(sheet).write();
  }

  /** Puts one map together. */
  private static final class Writer {
    private final UnknownSheet sheet;
    private final Found found;
    private final Words words;
    private final StarterText out = new StarterText();

    Writer(UnknownSheet sheet) {
      this.sheet = sheet;
      this.found = Found.in(sheet);
      this.words = new Words(sheet, found);
    }

    StarterMap write() {
      out.note("A map to start from, written by two-strides map for " + sheet.name() + ".");
      out.note(
          "Every line is a guess; what it rests on stands above it. Lines that begin with # ? are");
      out.note(
          "questions: answer each, take its line out, then run two-strides check with this map.");
      out.line("sheet = " + (found.tags() ? "\"tag\"" : "\"play\""));
      if (sheet.columns().stream()
          .flatMap(c -> c.words().keySet().stream())
          .anyMatch(w -> COMMA.matcher(w).matches())) {
        out.heading("[file]");
        out.note("Numbers such as 12,5 stand in it.");
        out.line("decimal = \",\"");
      }
      Targets targets = Targets.of(sheet, found, words);
      new ColumnText(sheet, found, targets, out).write();
      if (found.tags()) {
        new Tags(found).write(out);
      } else {
        new RuleText(sheet, found, words, targets, out).write();
      }
      team();
      clock();
      place();
      date();
      List<String> unused =
          sheet.columns().stream()
              .filter(
                  c -> !found.uses(c) && !out.toString().contains(StarterText.quoted(c.header())))
              .filter(c -> !out.toString().contains(c.header() + " = "))
              .map(Column::header)
              .toList();
      if (!unused.isEmpty()) {
        out.line("");
        out.note("Columns that nothing uses: " + String.join(", ", unused));
      }
      return new StarterMap(out.toString(), out.questions());
    }

    private void team() {
      Set<String> names = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
      found.get("team").ifPresent(c -> names.addAll(c.words().keySet()));
      if (!names.equals(Set.of("Away", "Home"))
          && !(names.size() == 2 && names.contains("home") && names.contains("away"))) {
        return;
      }
      out.heading("[team]");
      out.note("The team is written as a side.");
      if (found.get("home").isEmpty() || found.get("away").isEmpty()) {
        out.question(
            "What are the two teams called? Say it under [columns], for example home = { constant = \"Herons\" }.");
      }
      for (String name : names) {
        out.line(name.toLowerCase(Locale.ROOT) + " = " + StarterText.quoted(name));
      }
    }

    private void clock() {
      if (found.get("clock").isEmpty() || found.get("period").isEmpty()) {
        return;
      }
      Clock clock = Clock.of(sheet, found);
      out.heading("[clock]");
      out.note("It falls in " + clock.falls() + " rows and rises in " + clock.rises() + ".");
      if (!clock.sure()) {
        out.question("Does the clock show the time left (down) or the time played (up)?");
      }
      out.line("direction = " + (clock.down() ? "\"down\"" : "\"up\""));
      int period = clock.period();
      out.note("Its largest reading is " + Column.trimmed(clock.longest()) + " s.");
      if (period == 0) {
        out.question("How many seconds has a period?");
      }
      out.line("period_length_s = " + (period == 0 ? 1200 : period));
    }

    private void place() {
      if (found.get(Zones.ZONE).isPresent()) {
        new Zones(sheet, found, words).write(out);
        return;
      }
      if (found.get("x_m").isEmpty() || found.get("y_m").isEmpty()) {
        out.line("");
        out.question(
            "No columns look like places. With places the book says much more; name x_m and y_m, if there are any.");
        return;
      }
      Column x = found.get("x_m").get();
      Column y = found.get("y_m").get();
      Ground ground = Ground.of(x, y);
      Direction direction = Direction.of(sheet, found, words, Double.parseDouble(ground.centerX()));
      out.heading("[place]");
      out.note(x.header() + ": " + x.shown() + "; " + y.header() + ": " + y.shown());
      out.line("unit = " + StarterText.quoted(ground.unit()));
      out.line("center_x = " + ground.centerX());
      out.line("center_y = " + ground.centerY());
      out.line("step = " + x.step());
      out.note(direction.says());
      if (direction.view() == Direction.View.UNKNOWN) {
        out.question("Who attacks toward larger x: acting_team, home_team, or rink_fixed?");
      }
      out.line("view = " + StarterText.quoted(direction.view().word()));
      if (direction.view() == Direction.View.AWAY_TEAM) {
        out.note("The home team attacks toward smaller x in every period.");
        out.line("home_attacks_plus_x_in = []");
      }
      out.question(
          "Does y grow to the left of the attack (up) or to its right (down)? No sheet can tell.");
      out.line("y_left = \"up\"");
      out.heading("[rink]");
      if (!ground.sure()) {
        out.question("Which rink: nhl (200 by 85 feet) or iihf (60 by 30 metres)?");
      }
      out.line("name = " + StarterText.quoted(ground.rink()));
    }

    private void date() {
      Optional<Column> date = found.get("date");
      if (date.isEmpty()) {
        return;
      }
      Dates dates = Dates.of(date.get());
      if (dates.form().isEmpty() && dates.iso()) {
        return;
      }
      out.heading("[date]");
      out.note(date.get().header() + ": " + date.get().shown());
      if (!dates.sure()) {
        out.question("In which order are day and month?");
      }
      out.line("form = " + StarterText.quoted(dates.form().orElse("d MMM yyyy")));
    }
  }
}
