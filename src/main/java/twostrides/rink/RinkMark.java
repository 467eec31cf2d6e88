package twostrides.rink;

import java.util.ArrayList;
import java.util.List;

/**
 * A point of the ice that can be seen in a picture and whose place is known: a dot, the end of a
 * line at the boards, the foot of a goal post.
 *
 * @param id short name for files and pages, a-z and hyphens
 * @param name what a coach calls it; left and right are those of the attack
 * @param place metres, frame of the team that attacks toward +x
 */
public record RinkMark(String id, String name, Place place) {

  /**
   * The marks of a rink, from the own end to the other.
   *
   * @param rink its lengths
   */
  public static List<RinkMark> of(Rink rink) {
    List<RinkMark> marks = new ArrayList<>();
    double boards = rink.width() / 2;
    double post = rink.goalWidth() / 2;
    pair(marks, "own goal line at the boards", -rink.goalLine(), rink.goalLineHalf());
    pair(marks, "own goal post", -rink.goalLine(), post);
    pair(marks, "own end dot", -rink.endSpotX(), rink.endSpotY());
    pair(marks, "own blue line at the boards", -rink.blueLineNeutralEdge(), boards);
    pair(marks, "neutral dot on the own side", -rink.neutralSpotX(), rink.endSpotY());
    pair(marks, "red line at the boards", 0, boards);
    pair(marks, "center circle at the red line", 0, rink.circleRadius());
    marks.add(new RinkMark("center-dot", "center dot", new Place(0, 0)));
    pair(marks, "neutral dot on their side", rink.neutralSpotX(), rink.endSpotY());
    pair(marks, "their blue line at the boards", rink.blueLineNeutralEdge(), boards);
    pair(marks, "their end dot", rink.endSpotX(), rink.endSpotY());
    pair(marks, "their goal post", rink.goalLine(), post);
    pair(marks, "their goal line at the boards", rink.goalLine(), rink.goalLineHalf());
    return List.copyOf(marks);
  }

  private static void pair(List<RinkMark> marks, String name, double x, double y) {
    String id = name.replace(' ', '-');
    marks.add(new RinkMark(id + "-left", name + ", left", new Place(x, y)));
    marks.add(new RinkMark(id + "-right", name + ", right", new Place(x, -y)));
  }
}
