package crumbtrail.web;

import java.util.ArrayList;
import java.util.List;

/**
 * A picture as a list of shapes in the order in which they are drawn. Coordinates are texts in
 * units of the view box; nothing here is escaped, the template does that.
 *
 * @param id unique in the page
 * @param width of the view box, for which the texts are sized
 * @param height of the view box
 * @param font size of the texts in units of the view box
 * @param title what the picture is
 * @param desc in words what it shows
 */
public record Picture(
    String id,
    int width,
    int height,
    int font,
    String title,
    String desc,
    List<Shape> shapes,
    List<Label> labels) {

  /** Classes of the stylesheet decide on colour and stroke. */
  public record Shape(String css, String path) {}

  /**
   * A text.
   *
   * @param anchor "start", "middle" or "end"
   */
  public record Label(String x, String y, String anchor, String css, String text) {}

  /** Gathers shapes and labels. */
  static final class Pen {
    private final List<Shape> shapes = new ArrayList<>();
    private final List<Label> labels = new ArrayList<>();

    void box(String css, double left, double top, double right, double bottom) {
      shapes.add(
          new Shape(
              css,
              "M"
                  + at(left, top)
                  + "H"
                  + Axis.text1(right)
                  + "V"
                  + Axis.text1(bottom)
                  + "H"
                  + Axis.text1(left)
                  + "Z"));
    }

    void line(String css, double x1, double y1, double x2, double y2) {
      shapes.add(new Shape(css, "M" + at(x1, y1) + "L" + at(x2, y2)));
    }

    /** A line through points given as x and y. */
    void curve(String css, List<double[]> points) {
      StringBuilder path = new StringBuilder();
      for (double[] point : points) {
        path.append(path.length() == 0 ? "M" : "L").append(at(point[0], point[1]));
      }
      shapes.add(new Shape(css, path.toString()));
    }

    /** A line that keeps its height until the next point. */
    void steps(String css, List<double[]> points) {
      StringBuilder path = new StringBuilder();
      for (double[] point : points) {
        path.append(
            path.length() == 0
                ? "M" + at(point[0], point[1])
                : "H" + Axis.text1(point[0]) + "V" + Axis.text1(point[1]));
      }
      shapes.add(new Shape(css, path.toString()));
    }

    void dot(String css, double x, double y) {
      shapes.add(new Shape(css, "M" + at(x - 3.5, y) + "a3.5 3.5 0 1 0 7 0a3.5 3.5 0 1 0 -7 0Z"));
    }

    void label(double x, double y, String anchor, String css, String text) {
      labels.add(new Label(Axis.text1(x), Axis.text1(y), anchor, css, text));
    }

    Picture picture(
        String id, int width, double height, int font, String title, List<String> words) {
      return new Picture(
          id,
          width,
          (int) Math.ceil(height),
          font,
          title,
          String.join(" ", words),
          List.copyOf(shapes),
          List.copyOf(labels));
    }

    private static String at(double x, double y) {
      return Axis.text1(x) + " " + Axis.text1(y);
    }
  }
}
