package crumbtrail.knowledge;

import java.util.List;
import java.util.Map;

/**
 * Everything the catalogues hold: causes, signs, circumstances, styles, readings, the bibliography,
 * the word classes that their phrases use, what published tables name, how words become weights,
 * what can be asked, what acts together, allergens, what can be turned, what can be done about a
 * cause, how signs look, lessons, mystery loaves, the steps of a day, what recipes leave out, and
 * what all of it is called in other languages. Plain data; {@link Catalogue} finds things in it.
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
    Calibration calibration,
    List<QuestionKind> questions,
    List<ActingTogether> actingTogether,
    List<Allergen> allergens,
    List<KnobKind> knobs,
    List<Remedy> remedies,
    List<PictureKind> pictures,
    List<LessonKind> lessons,
    List<MysteryKind> mysteries,
    List<StepKind> timetable,
    List<GapKind> gaps,
    List<NameBook> languages) {

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
    questions = questions == null ? List.of() : List.copyOf(questions);
    actingTogether = actingTogether == null ? List.of() : List.copyOf(actingTogether);
    allergens = allergens == null ? List.of() : List.copyOf(allergens);
    knobs = knobs == null ? List.of() : List.copyOf(knobs);
    remedies = remedies == null ? List.of() : List.copyOf(remedies);
    pictures = pictures == null ? List.of() : List.copyOf(pictures);
    lessons = lessons == null ? List.of() : List.copyOf(lessons);
    mysteries = mysteries == null ? List.of() : List.copyOf(mysteries);
    timetable = timetable == null ? List.of() : List.copyOf(timetable);
    gaps = gaps == null ? List.of() : List.copyOf(gaps);
    languages = languages == null ? List.of() : List.copyOf(languages);
  }

  /** Knowledge of causes alone: nothing can be turned, done or drawn. */
  public Knowledge(
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
      Calibration calibration,
      List<QuestionKind> questions,
      List<ActingTogether> actingTogether) {
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
        published,
        calibration,
        questions,
        actingTogether,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of());
  }

  /**
   * Knowledge that rests on no published tables, its words taken as they stand, without questions
   * and without causes that act together.
   */
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

  /** Catalogues without questions and without causes that act together. */
  public Knowledge(
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
        published,
        calibration,
        List.of(),
        List.of());
  }
}
