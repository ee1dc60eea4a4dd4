package crumbtrail.knowledge;

import java.util.List;
import java.util.Map;

/**
 * Everything the catalogues hold: causes, signs, circumstances, styles, readings, the bibliography,
 * the word classes that their phrases use, what published tables name, and how words become
 * weights. Plain data; {@link Catalogue} finds things in it.
 */
public record Knowledge(
    List<Cause> causes,
    List<SignKind> signs,
    List<CircumstanceKind> circumstances,
    List<Style> styles,
    List<ReadingKind> readings,
    List<Source> sources,
    List<Caution> cautions,
    List<FieldHint> fields,
    Map<String, List<String>> words,
    List<Published> published,
    Calibration calibration) {

  public Knowledge {
    causes = List.copyOf(causes);
    signs = List.copyOf(signs);
    circumstances = List.copyOf(circumstances);
    styles = List.copyOf(styles);
    readings = List.copyOf(readings);
    sources = List.copyOf(sources);
    cautions = List.copyOf(cautions);
    fields = List.copyOf(fields);
    words = Map.copyOf(words);
    published = published == null ? List.of() : List.copyOf(published);
    calibration = calibration == null ? Calibration.NONE : calibration;
  }

  /** Knowledge that rests on no published tables, its words taken as they stand. */
  public Knowledge(
      List<Cause> causes,
      List<SignKind> signs,
      List<CircumstanceKind> circumstances,
      List<Style> styles,
      List<ReadingKind> readings,
      List<Source> sources,
      List<Caution> cautions,
      List<FieldHint> fields,
      Map<String, List<String>> words) {
    this(
        causes,
        signs,
        circumstances,
        styles,
        readings,
        sources,
        cautions,
        fields,
        words,
        List.of(),
        Calibration.NONE);
  }
}
