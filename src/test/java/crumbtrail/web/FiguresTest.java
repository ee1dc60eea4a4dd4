package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.report.Courses;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class FiguresTest {
  private static final Pattern SVG =
      Pattern.compile("<svg class=\"picture.*?</svg>", Pattern.DOTALL);

  @Test
  void bothPicturesComeInTwoWidths() throws Exception {
    List<Document> pictures = pictures(Samples.courses(""));
    assertThat(pictures).hasSize(4);
    for (Document picture : pictures) {
      assertThat(picture.getDocumentElement().getAttribute("role")).isEqualTo("img");
      String[] named = picture.getDocumentElement().getAttribute("aria-labelledby").split(" ");
      assertThat(named).hasSize(2);
      assertThat(only(picture, "title").getAttribute("id")).isEqualTo(named[0]);
      assertThat(only(picture, "desc").getAttribute("id")).isEqualTo(named[1]);
    }
  }

  @Test
  void theDescriptionSaysWhatThePictureShows() throws Exception {
    List<Document> pictures = pictures(Samples.courses(""));
    assertThat(only(pictures.get(0), "desc").getTextContent())
        .contains("leaves the mixer at 26 °C")
        .contains("Bulk at 24 °C until 2 h 30 min: 1.9 times its size after mixing")
        .contains("Ready to shape at 2 h 10 min.")
        .contains("Not ready to bake until 16 h 45 min.");
    assertThat(only(pictures.get(2), "desc").getTextContent())
        .contains("In 32 min of baking the core goes from 25 °C to 93 °C")
        .contains("measured at 91 °C, 4 °C short of the wanted 95 °C")
        .contains("water boils at 98 °C")
        .contains("Crumb set to the core at 22 min.");
  }

  @Test
  void whoBakesByFahrenheitReadsFahrenheitEverywhere() {
    Courses courses = Samples.courses("");
    List<ReportView.Figure> figures = Figures.of(courses, Map.of(), Units.US, Texts.english());
    String rise = figures.get(0).toString();
    assertThat(rise)
        .contains("Temperature, °F", "leaves the mixer at 79 °F", "Bulk at 75 °F until")
        .doesNotContain("°C");
    String bake = figures.get(1).toString();
    assertThat(bake)
        .contains("Core, °F", "Oven and crust, °F", "goes from 77 °F to 199 °F")
        .contains("measured at 196 °F, 7 °F short of the wanted 203 °F")
        .contains("water boils at 208 °F")
        .doesNotContain("°C");
    // Round numbers of the scale that is shown, and the line at its place on it.
    assertThat(figures.get(0).pictures().get(0).labels())
        .extracting(Picture.Label::text)
        .contains("80")
        .doesNotContain("26");
    assertThat(figures.get(1).rows().get(0)).contains("77 °F");
    assertThat(new Degrees(Units.METRIC).said("at 24 °C")).isEqualTo("at 24 °C");
  }

  @Test
  void everyTextStaysInThePicture() throws Exception {
    for (Document picture : pictures(Samples.courses(""))) {
      String[] box = picture.getDocumentElement().getAttribute("viewBox").split(" ");
      double font = Double.parseDouble(picture.getDocumentElement().getAttribute("font-size"));
      NodeList texts = picture.getElementsByTagName("text");
      for (int i = 0; i < texts.getLength(); i++) {
        org.w3c.dom.Element text = (org.w3c.dom.Element) texts.item(i);
        double width = 0.6 * font * text.getTextContent().length();
        double x = Double.parseDouble(text.getAttribute("x"));
        double share =
            switch (text.getAttribute("text-anchor")) {
              case "end" -> 1;
              case "middle" -> 0.5;
              default -> 0;
            };
        assertThat(x - share * width).as(text.getTextContent()).isGreaterThanOrEqualTo(-2);
        assertThat(x + (1 - share) * width)
            .as(text.getTextContent())
            .isLessThanOrEqualTo(Double.parseDouble(box[2]) + 2);
      }
    }
  }

  @Test
  void namesAreEscaped() throws Exception {
    List<Document> pictures = pictures(Samples.courses("</svg><script>\"'&"));
    assertThat(pictures).hasSize(4);
    assertThat(pictures.get(0).getElementsByTagName("script").getLength()).isZero();
    assertThat(pictures.get(0).getDocumentElement().getTextContent())
        .contains("</svg><script>\"'&bulk");
  }

  @Test
  void onePointIsAPicture() throws Exception {
    Courses.Rise rise =
        new Courses.Rise(List.of(new Courses.RisePoint(0, 1, 24)), List.of(), List.of(), false);
    Courses.Bake bake =
        new Courses.Bake(List.of(new Courses.BakePoint(0, 24, 24, 24)), 24, 24, null, null, true);
    List<Document> pictures = pictures(new Courses(rise, bake));
    assertThat(pictures).hasSize(4);
    for (Document picture : pictures) {
      assertThat(picture.getDocumentElement().getTextContent()).doesNotContain("NaN");
      NodeList paths = picture.getElementsByTagName("path");
      for (int i = 0; i < paths.getLength(); i++) {
        assertThat(((org.w3c.dom.Element) paths.item(i)).getAttribute("d"))
            .matches("[MLHVZa0-9. -]+");
      }
    }
  }

  @Test
  void aMarkFarOffPointsOnInsteadOfSqueezingTheDay() throws Exception {
    Courses.Rise rise = Samples.rise("");
    List<Courses.Mark> marks = new ArrayList<>(rise.marks());
    marks.add(new Courses.Mark("ready to bake", 9_000, true));
    Courses.Rise far = new Courses.Rise(rise.points(), rise.spans(), marks, false);
    assertThat(pictures(new Courses(far, null)).get(0).getDocumentElement().getTextContent())
        .contains("not ready to bake until 150 h →");
  }

  @Test
  void withoutCoursesOrPointsThereIsNoFigure() {
    assertThat(Figures.of(null, Map.of(), Units.METRIC, Texts.english())).isEmpty();
    assertThat(Figures.of(new Courses(null, null), Map.of(), Units.METRIC, Texts.english()))
        .isEmpty();
    assertThat(
            Figures.of(
                new Courses(
                    new Courses.Rise(List.of(), List.of(), List.of(), false),
                    new Courses.Bake(List.of(), 95, 100, null, null, false)),
                Map.of(),
                Units.METRIC,
                Texts.english()))
        .isEmpty();
  }

  @Test
  void theNumbersStandInATable() {
    ReportView.Figure rise =
        Figures.of(Samples.courses(""), Map.of(), Units.METRIC, Texts.english()).get(0);
    assertThat(rise.rows().get(0)).containsExactly("0 min", "bulk", "1", "26 °C");
    assertThat(rise.rows()).hasSizeBetween(8, 13);
    ReportView.Figure bake =
        Figures.of(Samples.courses(""), Map.of(), Units.METRIC, Texts.english()).get(1);
    assertThat(bake.rows().get(bake.rows().size() - 1))
        .containsExactly("32 min", "93 °C", "172 °C", "210 °C");
  }

  private static org.w3c.dom.Element only(Document picture, String tag) {
    NodeList found = picture.getElementsByTagName(tag);
    assertThat(found.getLength()).as(tag).isEqualTo(1);
    return (org.w3c.dom.Element) found.item(0);
  }

  private static List<Document> pictures(Courses courses) throws Exception {
    List<Document> pictures = new ArrayList<>();
    Matcher svg = SVG.matcher(HtmlReport.page(Samples.with(courses)));
    while (svg.find()) {
      pictures.add(
          DocumentBuilderFactory.newInstance()
              .newDocumentBuilder()
              .parse(new InputSource(new StringReader(svg.group()))));
    }
    return pictures;
  }
}
