package crumbtrail.knowledge;

import crumbtrail.words.PhraseBook;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Looks whether the catalogues hold together: unique keys, known references, complete entries. */
final class KnowledgeCheck {
  private static final String PAIRS = "published/pairs.csv";

  private final Knowledge knowledge;
  private final List<Fault> faults = new ArrayList<>();
  private final Set<String> sources;
  private final Set<String> unread;

  private KnowledgeCheck(Knowledge knowledge, Set<String> unread) {
    this.knowledge = knowledge;
    this.unread = unread;
    this.sources = knowledge.sources().stream().map(Source::id).collect(Collectors.toSet());
  }

  /**
   * @param unread the catalogues that could not be read in full ("causes", "readings.yaml" …);
   *     whether something is missing there cannot be said
   */
  static List<Fault> faults(Knowledge knowledge, Set<String> unread) {
    KnowledgeCheck check = new KnowledgeCheck(knowledge, unread);
    check.unique("causes", knowledge.causes().stream().map(Cause::key).toList());
    check.unique("signs", knowledge.signs().stream().map(SignKind::key).toList());
    check.unique(
        "circumstances", knowledge.circumstances().stream().map(CircumstanceKind::key).toList());
    check.unique("styles", knowledge.styles().stream().map(Style::key).toList());
    check.unique("readings.yaml", knowledge.readings().stream().map(ReadingKind::name).toList());
    check.unique("sources", knowledge.sources().stream().map(Source::id).toList());
    check.causes();
    check.styles();
    check.cautions();
    check.fields();
    check.phrases();
    check.published();
    return check.faults;
  }

  private void unique(String catalogue, List<String> keys) {
    Set<String> met = new HashSet<>();
    for (String key : keys) {
      if (key == null || key.isBlank()) {
        fault(catalogue, "an entry has no key", "Give every entry a key of its own");
      } else if (!met.add(key)) {
        fault(catalogue, "\"" + key + "\" stands twice", "Keep one of the two");
      }
    }
  }

  private void cautions() {
    for (Caution caution : knowledge.cautions()) {
      cited("cautions.yaml", caution.key(), caution.source());
    }
  }

  private void fields() {
    Set<String> circumstances =
        knowledge.circumstances().stream().map(CircumstanceKind::key).collect(Collectors.toSet());
    for (FieldHint hint : knowledge.fields()) {
      if (readable("circumstances") && !circumstances.contains(hint.circumstance())) {
        fault(
            "fields.yaml",
            "\"" + hint.circumstance() + "\" is no circumstance",
            "Use a key from rules/circumstances");
      }
    }
  }

  private void published() {
    Set<String> signs = knowledge.signs().stream().map(SignKind::key).collect(Collectors.toSet());
    Set<String> causes = knowledge.causes().stream().map(Cause::key).collect(Collectors.toSet());
    for (Published pair : knowledge.published()) {
      if (readable("signs") && !signs.contains(pair.sign())) {
        fault(PAIRS, "\"" + pair.sign() + "\" is no sign", "Use a key from rules/signs");
      }
      if (readable("causes") && !causes.contains(pair.cause())) {
        fault(PAIRS, "\"" + pair.cause() + "\" is no cause", "Use a key from rules/causes");
      }
      cited(PAIRS, pair.sign() + ", " + pair.cause(), pair.source());
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
      phrases.forEach(
          (key, all) -> all.forEach(phrase -> compile(catalogue, String.valueOf(key), phrase)));
    }
  }

  private void compile(String catalogue, String key, String phrase) {
    try {
      PhraseBook.of(Map.of(key, List.of(phrase)), knowledge.words());
    } catch (IllegalArgumentException fault) {
      fault(catalogue, fault.getMessage(), "The phrase language is explained in docs");
    }
  }

  private void causes() {
    Set<String> keys = knowledge.causes().stream().map(Cause::key).collect(Collectors.toSet());
    Set<String> tags =
        knowledge.styles().stream()
            .flatMap(style -> style.tags().stream())
            .collect(Collectors.toSet());
    for (Cause cause : knowledge.causes()) {
      if (cause.name() == null || cause.prior() == null || cause.change() == null) {
        fault(
            "causes", "\"" + cause.key() + "\" is incomplete", "Give it a name, a prior, a change");
      }
      for (String tag : cause.priorIn().keySet()) {
        if (readable("styles") && !tags.contains(tag)) {
          fault(
              "causes",
              "\"" + cause.key() + "\" has a prior in \"" + tag + "\", a tag of no style",
              "Use a tag from rules/styles");
        }
      }
      for (String coarser : cause.refines()) {
        if (readable("causes") && !keys.contains(coarser)) {
          fault(
              "causes",
              "\"" + cause.key() + "\" refines \"" + coarser + "\", which is no cause",
              "Name an existing cause or leave it out");
        }
      }
      if (cause.sources().isEmpty()) {
        cited("causes", cause.key(), "");
      }
      cause.sources().forEach(source -> cited("causes", cause.key(), source));
    }
  }

  private void styles() {
    Set<String> readings =
        knowledge.readings().stream().map(ReadingKind::name).collect(Collectors.toSet());
    for (Style style : knowledge.styles()) {
      style
          .ranges()
          .forEach(
              (reading, range) -> {
                if (readable("readings.yaml") && !readings.contains(reading)) {
                  fault(
                      "styles",
                      "\"" + style.key() + "\" has a range for \"" + reading + "\"",
                      "Use a name from readings.yaml");
                }
                if (range.low() > range.high()) {
                  fault(
                      "styles",
                      "\"" + style.key() + "\": " + reading + " runs from high to low",
                      "Put the smaller number under low");
                }
                cited("styles", style.key() + ", " + reading, range.source());
              });
    }
  }

  private void cited(String catalogue, String entry, String citation) {
    if (citation == null || citation.isBlank()) {
      fault(catalogue, "\"" + entry + "\" has no source", "Cite one or write common practice");
      return;
    }
    for (String id : citation.split(";")) {
      if (!id.isBlank()
          && readable("sources")
          && !id.trim().equals(Source.COMMON_PRACTICE)
          && !sources.contains(id.trim())) {
        fault(
            catalogue,
            "\"" + entry + "\" cites \"" + id.trim() + "\", which is not in the bibliography",
            "Add it to rules/sources or write common practice");
      }
    }
  }

  private boolean readable(String catalogue) {
    return !unread.contains(catalogue);
  }

  private void fault(String catalogue, String what, String remedy) {
    faults.add(new Fault(catalogue, 0, what, remedy));
  }
}
