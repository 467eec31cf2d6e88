package twostrides.tag;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import twostrides.picture.MarkClick;
import twostrides.picture.NoPlaceException;
import twostrides.picture.PictureFit;
import twostrides.picture.Pixel;
import twostrides.picture.SeenPlace;
import twostrides.rink.Place;
import twostrides.rink.Rink;
import twostrides.rink.RinkMark;
import twostrides.serve.Reply;

/**
 * Answers to clicks on the picture of the video: the rink's lines over it, and where a man stands.
 * Nothing is kept from one question to the next; the page sends the marks each time.
 */
final class PictureClicks {

  /** Largest side of a picture that is looked at, picture elements. Assumed. */
  private static final double WIDEST = 100_000;

  private final Rink rink;
  private final List<RinkMark> marks;

  PictureClicks(Rink rink) {
    this.rink = rink;
    this.marks = RinkMark.of(rink);
  }

  /** The marks that can be clicked. */
  List<RinkMark> marks() {
    return marks;
  }

  /**
   * What a page asks, read from its fields.
   *
   * @param clicks the marks, "id,u,v", semicolons between, picture elements of the video
   * @param error standard error of a click, picture elements of the video
   * @param width of the picture, picture elements
   * @param height of the picture
   * @param man where a man touches the ice, "u,v"; empty where only the marks are looked at
   */
  private record Question(
      List<MarkClick> clicks, double error, double width, double height, Optional<Pixel> man) {}

  /**
   * The answer to a page.
   *
   * @param fields its fields
   * @param puck where the puck is let go
   * @throws IllegalArgumentException for fields that no page sends
   */
  Reply answer(Map<String, String> fields, Place puck) {
    Question q = read(fields);
    try {
      PictureFit fit = PictureFit.of(rink, q.clicks(), q.error());
      return q.man().isPresent() ? place(fit.place(q.man().get())) : lines(fit, q, puck);
    } catch (NoPlaceException e) {
      return FieldProblem.reply(
          Reply.REFUSED, List.of(new FieldProblem("", e.found(), e.expected(), e.toDo())));
    }
  }

  private Question read(Map<String, String> fields) {
    List<MarkClick> clicks = new ArrayList<>();
    for (String words : fields.getOrDefault("marks", "").split(";", -1)) {
      String[] w = words.split(",", 2);
      RinkMark mark = marks.stream().filter(m -> m.id().equals(w[0])).findFirst().orElseThrow();
      clicks.add(new MarkClick(mark, pixel(w[1])));
    }
    String man = fields.getOrDefault("man", "");
    return new Question(
        clicks,
        number(fields.get("error"), 0, WIDEST),
        number(fields.get("width"), 1, WIDEST),
        number(fields.get("height"), 1, WIDEST),
        man.isEmpty() ? Optional.empty() : Optional.of(pixel(man)));
  }

  private static Pixel pixel(String words) {
    String[] w = words.split(",", -1);
    return new Pixel(number(w[0], -WIDEST, WIDEST), number(w[1], -WIDEST, WIDEST));
  }

  private static double number(String words, double least, double most) {
    double n = Double.parseDouble(words);
    if (!(n >= least && n <= most)) {
      throw new IllegalArgumentException("found " + words);
    }
    return n;
  }

  private static Reply place(SeenPlace seen) {
    boolean rough = seen.error() > PictureFit.ROUGH;
    return Json.reply(
        json -> {
          json.writeNumberField("x", seen.place().x());
          json.writeNumberField("y", seen.place().y());
          json.writeNumberField("error", seen.error());
          json.writeBooleanField("rough", rough);
          json.writeStringField(
              "words",
              "His place is off by "
                  + metres(seen.error())
                  + (rough ? tooRough("Take him back (U), and ") : ". "));
        });
  }

  private static String tooRough(String first) {
    String most = String.format(Locale.ROOT, "%.1f m", PictureFit.ROUGH);
    return ", more than "
        + most
        + ". "
        + first
        + "click him on the rink, or click more marks near him.";
  }

  private static String metres(double error) {
    return String.format(Locale.ROOT, "%.1f m or so", error);
  }

  private static Reply lines(PictureFit fit, Question q, Place puck) {
    Optional<Double> error = fit.errorAt(puck);
    boolean rough = fit.disagrees() || error.filter(e -> e <= PictureFit.ROUGH).isEmpty();
    return Json.reply(
        json -> {
          json.writeArrayFieldStart("lines");
          for (List<Pixel> line : fit.lines(q.width(), q.height())) {
            json.writeString(points(line));
          }
          json.writeEndArray();
          Optional<Pixel> at = fit.point(puck);
          if (at.isPresent()) {
            json.writeStringField("puck", points(List.of(at.get())));
          }
          json.writeBooleanField("rough", rough);
          json.writeStringField("words", agree(fit) + " " + atPuck(error));
        });
  }

  /** "u,v u,v", as a picture of lines has it. */
  private static String points(List<Pixel> line) {
    StringBuilder out = new StringBuilder();
    for (Pixel p : line) {
      out.append(out.isEmpty() ? "" : " ")
          .append(String.format(Locale.ROOT, "%.1f,%.1f", p.u(), p.v()));
    }
    return out.toString();
  }

  private static String agree(PictureFit fit) {
    int n = fit.spare() + PictureFit.FEWEST;
    if (fit.spare() == 0) {
      return "Four marks fit wherever they were clicked: look whether the lines lie on the ice, or"
          + " click a fifth for a check.";
    }
    if (!fit.disagrees()) {
      return n + " marks agree.";
    }
    return fit.odd()
        .map(m -> "The others do not fit this mark: " + m.name() + ". Click it again.")
        .orElse(
            n
                + " marks do not fit one another: one of them is another mark, or was clicked beside"
                + " it."
                + (fit.spare() < 2 ? " A sixth shows which." : " Click them again."));
  }

  private static String atPuck(Optional<Double> error) {
    return error
        .map(
            e ->
                "At the puck a man is off by "
                    + metres(e)
                    + (e > PictureFit.ROUGH ? tooRough("There, ") : "."))
        .orElse("Where the puck is let go lies outside this picture.");
  }
}
