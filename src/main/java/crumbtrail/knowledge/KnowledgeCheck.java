package crumbtrail.knowledge;

import crumbtrail.words.PhraseBook;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Looks whether the catalogues hold together: unique keys, known references, complete entries. */
final class KnowledgeCheck {
  private static final String PAIRED = "acting-together.yaml";
  private static final String PAIRS = "published/pairs.csv";

  /** What calls for a caution and names no entry. */
  private static final Set<String> PLAIN = Set.of("always", "allergens", "warm perishable");

  private final Knowledge knowledge;
  private final List<Fault> faults = new ArrayList<>();
  private final Set<String> sources;
  private final Set<String> unread;
  private final Places places;

  private KnowledgeCheck(Knowledge knowledge, Set<String> unread, Places places) {
    this.knowledge = knowledge;
    this.unread = unread;
    this.places = places;
    this.sources = knowledge.sources().stream().map(Source::id).collect(Collectors.toSet());
  }

  /**
   * @param unread the catalogues that could not be read in full ("causes", "readings.yaml" …);
   *     whether something is missing there cannot be said
   * @param places where the entries stand
   */
  static List<Fault> faults(Knowledge knowledge, Set<String> unread, Places places) {
    KnowledgeCheck check = new KnowledgeCheck(knowledge, unread, places);
    check.unique("causes", knowledge.causes().stream().map(Cause::key).toList());
    check.unique("signs", knowledge.signs().stream().map(SignKind::key).toList());
    check.unique(
        "circumstances", knowledge.circumstances().stream().map(CircumstanceKind::key).toList());
    check.unique("styles", knowledge.styles().stream().map(Style::key).toList());
    check.unique("readings.yaml", knowledge.readings().stream().map(ReadingKind::name).toList());
    check.unique("allergens.yaml", knowledge.allergens().stream().map(Allergen::key).toList());
    check.unique("sources", knowledge.sources().stream().map(Source::id).toList());
    check.causes();
    check.styles();
    check.cautions();
    check.allergens();
    check.fields();
    check.phrases();
    check.published();
    check.faults.addAll(QuestionCheck.faults(knowledge, unread, places));
    check.actingTogether();
    check.faults.addAll(RemedyCheck.faults(knowledge, unread, places));
    check.faults.addAll(LessonCheck.faults(knowledge, unread, places));
    return check.faults;
  }

  private void unique(String catalogue, List<String> keys) {
    Map<String, Integer> met = new HashMap<>();
    for (String key : keys) {
      if (key == null || key.isBlank()) {
        fault(catalogue, "", "", "an entry has no key", "Give every entry a key of its own");
      } else if (met.merge(key, 1, Integer::sum) > 1) {
        twice(catalogue, key, met.get(key) - 1);
      }
    }
  }

  private void twice(String catalogue, String key, int which) {
    List<Places.Entry> all = places.all(catalogue, key);
    String what = "\"" + key + "\" stands twice";
    if (which < all.size()) {
      Places.Entry first = all.get(0);
      Places.Entry again = all.get(which);
      faults.add(
          new Fault(
              again.file(),
              again.line(),
              what + ", first in " + first.file() + ":" + first.line(),
              "Keep one of the two"));
    } else {
      faults.add(new Fault(catalogue, 0, what, "Keep one of the two"));
    }
  }

  private void cautions() {
    for (Caution caution : knowledge.cautions()) {
      cited("cautions.yaml", caution.key(), "source", caution.source());
      if (caution.when().isEmpty()) {
        fault(
            "cautions.yaml",
            caution.key(),
            "",
            "\"" + caution.key() + "\" is never shown",
            "Say under when: which facts call for it");
      }
      for (int place = 0; place < caution.when().size(); place++) {
        called(caution.key(), "when/" + place, caution.when().get(place));
      }
    }
  }

  private void allergens() {
    for (Allergen allergen : knowledge.allergens()) {
      cited("allergens.yaml", allergen.key(), "source", allergen.source());
      if (allergen.name() == null || (allergen.us() == null && allergen.eu() == null)) {
        fault(
            "allergens.yaml",
            allergen.key(),
            "",
            "\"" + allergen.key() + "\" has no name or is on no list",
            "Give it a name, and under us or eu its name on the list");
      }
      if (allergen.pantry().isEmpty() && allergen.words().isEmpty()) {
        fault(
            "allergens.yaml",
            allergen.key(),
            "",
            "\"" + allergen.key() + "\" is never found",
            "Give it keys of the pantry, or words");
      }
    }
  }

  private void called(String caution, String part, String when) {
    if (PLAIN.contains(when)) {
      return;
    }
    String kind = when.contains(" ") ? when.substring(0, when.indexOf(' ')) : when;
    String key = when.substring(Math.min(when.length(), kind.length() + 1));
    Set<String> known =
        switch (kind) {
          case "sign" -> keys("signs", knowledge.signs(), SignKind::key);
          case "circumstance" ->
              keys("circumstances", knowledge.circumstances(), CircumstanceKind::key);
          case "cause" -> keys("causes", knowledge.causes(), Cause::key);
          case "reading" -> keys("readings.yaml", knowledge.readings(), ReadingKind::name);
          case "ingredient", "vessel", "keeping", "remark" -> Set.of(key);
          default -> {
            fault(
                "cautions.yaml",
                caution,
                part,
                "\"" + when + "\" says nothing that a sheet can hold",
                "Write always, or sign, circumstance, cause, reading or ingredient and its key");
            yield Set.of(key);
          }
        };
    if (!known.isEmpty() && !known.contains(key)) {
      fault(
          "cautions.yaml",
          caution,
          part,
          "\"" + key + "\" is no " + kind,
          "Nearest: \"" + Nearest.of(key, known) + "\"");
    }
  }

  // Empty where the catalogue could not be read in full: then nothing can be called unknown.
  private <T> Set<String> keys(String catalogue, List<T> entries, Function<T, String> key) {
    return readable(catalogue)
        ? entries.stream().map(key).filter(Objects::nonNull).collect(Collectors.toSet())
        : Set.of();
  }

  private void fields() {
    Set<String> circumstances =
        keys("circumstances", knowledge.circumstances(), CircumstanceKind::key);
    for (FieldHint hint : knowledge.fields()) {
      if (!circumstances.isEmpty() && !circumstances.contains(hint.circumstance())) {
        fault(
            "fields.yaml",
            hint.circumstance(),
            "circumstance",
            "\"" + hint.circumstance() + "\" is no circumstance",
            "Nearest: \"" + Nearest.of(hint.circumstance(), circumstances) + "\"");
      }
    }
  }

  private void published() {
    Set<String> signs = keys("signs", knowledge.signs(), SignKind::key);
    Set<String> causes = keys("causes", knowledge.causes(), Cause::key);
    for (Published pair : knowledge.published()) {
      String row = pair.sign() + "," + pair.cause();
      if (!signs.isEmpty() && !signs.contains(pair.sign())) {
        fault(
            PAIRS,
            row,
            "",
            "\"" + pair.sign() + "\" is no sign",
            "Nearest: \"" + Nearest.of(pair.sign(), signs) + "\"");
      }
      if (!causes.isEmpty() && !causes.contains(pair.cause())) {
        fault(
            PAIRS,
            row,
            "",
            "\"" + pair.cause() + "\" is no cause",
            "Nearest: \"" + Nearest.of(pair.cause(), causes) + "\"");
      }
      cited(PAIRS, row, "", pair.source());
    }
  }

  private void actingTogether() {
    Set<String> causes = keys("causes", knowledge.causes(), Cause::key);
    for (ActingTogether pair : knowledge.actingTogether()) {
      String name = String.valueOf(pair.name());
      if (pair.causes().size() != 2 || pair.causes().get(0).equals(pair.causes().get(1))) {
        fault(PAIRED, name, "causes", "\"" + name + "\" is no pair", "Name two causes");
      }
      for (String key : pair.causes()) {
        if (!causes.isEmpty() && !causes.contains(key)) {
          fault(
              PAIRED,
              name,
              "causes",
              "\"" + key + "\" is no cause",
              "Nearest: \"" + Nearest.of(key, causes) + "\"");
        }
      }
      if (pair.why() == null || pair.why().isBlank()) {
        fault(PAIRED, name, "", "\"" + name + "\" does not say why", "Say it under why");
      }
      cited(PAIRED, name, "source", pair.source());
    }
  }

  private void phrases() {
    Map<String, List<String>> signs = new LinkedHashMap<>();
    knowledge.signs().forEach(sign -> signs.put(sign.key(), sign.phrases()));
    compile("signs", signs);
    Map<String, List<String>> circumstances = new LinkedHashMap<>();
    knowledge.circumstances().forEach(one -> circumstances.put(one.key(), one.phrases()));
    compile("circumstances", circumstances);
    Map<String, List<String>> styles = new LinkedHashMap<>();
    knowledge.styles().forEach(style -> styles.put(style.key(), style.phrases()));
    compile("styles", styles);
  }

  private void compile(String catalogue, Map<String, List<String>> phrases) {
    if (!readable("words")) {
      return;
    }
    try {
      PhraseBook.of(phrases, knowledge.words());
    } catch (IllegalArgumentException atLeastOne) {
      phrases.forEach((key, all) -> compile(catalogue, String.valueOf(key), all));
    }
  }

  private void compile(String catalogue, String key, List<String> phrases) {
    for (int place = 0; place < phrases.size(); place++) {
      try {
        PhraseBook.of(Map.of(key, List.of(phrases.get(place))), knowledge.words());
      } catch (IllegalArgumentException fault) {
        fault(
            catalogue,
            key,
            "phrases/" + place,
            fault.getMessage(),
            "The phrase language is explained in docs");
      }
    }
  }

  private void causes() {
    Set<String> keys = keys("causes", knowledge.causes(), Cause::key);
    Set<String> tags =
        knowledge.styles().stream()
            .flatMap(style -> style.tags().stream())
            .collect(Collectors.toSet());
    for (Cause cause : knowledge.causes()) {
      if (cause.name() == null || cause.prior() == null || cause.change() == null) {
        fault(
            "causes",
            cause.key(),
            "",
            "\"" + cause.key() + "\" is incomplete",
            "Give it a name, a prior, a change");
      }
      if (cause.noReading() != null && cause.noReading().isBlank()) {
        fault(
            "causes",
            cause.key(),
            "no reading",
            "\"" + cause.key() + "\" does not say why no reading speaks for it",
            "Say it, or leave no reading out");
      }
      if (cause.noBake() != null && cause.noBake().isBlank()) {
        fault(
            "causes",
            cause.key(),
            "no bake",
            "\"" + cause.key() + "\" does not say why it is not to be tried",
            "Say it, or leave no bake out");
      }
      for (String tag : cause.priorIn().keySet()) {
        if (readable("styles") && !tags.contains(tag)) {
          fault(
              "causes",
              cause.key(),
              "prior in/" + tag,
              "\"" + cause.key() + "\" has a prior in \"" + tag + "\", a tag of no style",
              "Use a tag from rules/styles");
        }
      }
      for (String coarser : cause.refines()) {
        if (!keys.isEmpty() && !keys.contains(coarser)) {
          fault(
              "causes",
              cause.key(),
              "refines",
              "\"" + cause.key() + "\" refines \"" + coarser + "\", which is no cause",
              "Nearest: \"" + Nearest.of(coarser, keys) + "\"; or leave it out");
        }
      }
      if (cause.sources().isEmpty()) {
        cited("causes", cause.key(), "", "");
      }
      cause.sources().forEach(source -> cited("causes", cause.key(), "sources", source));
    }
  }

  private void styles() {
    for (Style style : knowledge.styles()) {
      style.ranges().forEach((reading, range) -> range(style.key(), reading, range));
    }
  }

  private void range(String style, String reading, Style.Range range) {
    Set<String> readings = keys("readings.yaml", knowledge.readings(), ReadingKind::name);
    String part = "ranges/" + reading;
    if (!readings.isEmpty() && !readings.contains(reading)) {
      fault(
          "styles",
          style,
          part,
          "\"" + style + "\" has a range for \"" + reading + "\", which is no reading",
          "Use a name from readings.yaml. Nearest: \"" + Nearest.of(reading, readings) + "\"");
    }
    if (range.low() > range.high()) {
      fault(
          "styles",
          style,
          part,
          "\"" + style + "\": " + reading + " runs from high to low",
          "Put the smaller number under low");
    }
    cited("styles", style, part, range.source());
  }

  private void cited(String catalogue, String entry, String part, String citation) {
    String of = "\"" + entry + "\"" + (part.startsWith("ranges/") ? ", " + part.substring(7) : "");
    if (citation == null || citation.isBlank()) {
      fault(catalogue, entry, part, of + " has no source", "Cite one or write common practice");
      return;
    }
    for (String id : citation.split(";")) {
      if (!id.isBlank()
          && readable("sources")
          && !id.trim().equals(Source.COMMON_PRACTICE)
          && !sources.contains(id.trim())) {
        fault(
            catalogue,
            entry,
            part,
            of + " cites \"" + id.trim() + "\", which is not in the bibliography",
            "Add it to rules/sources or write common practice");
      }
    }
  }

  private boolean readable(String catalogue) {
    return !unread.contains(catalogue);
  }

  private void fault(String catalogue, String key, String part, String what, String remedy) {
    faults.add(places.fault(catalogue, String.valueOf(key), part, what, remedy));
  }
}
