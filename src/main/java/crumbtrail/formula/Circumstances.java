package crumbtrail.formula;

import crumbtrail.formula.WeighedLine.Way;
import crumbtrail.pantry.Kind;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/** Facts about a formula that are no number, as keys that rules may use. */
final class Circumstances {
  private static final Pattern COARSE = Pattern.compile(".*\\b(?:coarse|kosher|flak[ey]d?y?)\\b.*");

  private final List<WeighedLine> lines;
  private final Set<String> keys = new LinkedHashSet<>();

  private Circumstances(List<WeighedLine> lines) {
    this.lines = lines;
  }

  /**
   * @param whole whether the sheet gives a whole formula, so that a missing line means something
   * @param parts the kinds of the parts made ahead
   */
  static Set<String> of(List<WeighedLine> lines, boolean whole, List<PartKind> parts) {
    return new Circumstances(lines).collect(whole, parts);
  }

  private Set<String> collect(boolean whole, List<PartKind> parts) {
    Predicate<WeighedLine> volume = line -> line.way() == Way.VOLUME;
    Predicate<WeighedLine> coarse =
        line ->
            line.has("coarse")
                || line.line().notes().stream()
                    .map(note -> note.toLowerCase(Locale.ROOT))
                    .anyMatch(note -> COARSE.matcher(note).matches());
    when("flour-by-volume", kind(Kind.FLOUR).and(volume));
    when("measured-by-cup", kind(Kind.FLOUR).and(volume));
    when("salt-by-volume", kind(Kind.SALT).and(volume));
    when("salt-weighed", kind(Kind.SALT).and(line -> line.way() == Way.WEIGHT));
    when("coarse-salt-by-volume", kind(Kind.SALT).and(volume).and(coarse));
    when("salt-coarse-by-spoon", kind(Kind.SALT).and(volume).and(coarse));
    when("yeast-by-volume", kind(Kind.YEAST).and(volume));
    when("eggs-by-count", kind(Kind.EGG).and(line -> line.way() == Way.COUNT));
    when("self-raising-flour", line -> line.has("self-raising"));
    when("salt-substitute-used", line -> line.has("potassium"));
    when("gluten-free-flour", kind(Kind.FLOUR).and(line -> line.has("gluten-free")));
    when("gluten-free-flour-used", kind(Kind.FLOUR).and(line -> line.has("gluten-free")));
    when("osmotolerant-yeast", line -> line.has("osmotolerant"));
    when("yeast-osmotolerant", line -> line.has("osmotolerant"));
    when("fresh-yeast", kind(Kind.YEAST).and(line -> line.has("fresh")));
    when("active-dry-yeast", is("active-dry-yeast"));
    when("chemical-leavening", kind(Kind.LEAVENING));
    when("improver-used", is("dough-improver").or(is("ascorbic-acid")).or(is("lecithin")));
    when("old-dough-added", is("old-dough"));
    when("malt-used", kind(Kind.MALT));
    boolean starter = any(kind(Kind.STARTER)) || parts.contains(PartKind.LEVAIN);
    if (starter) {
      keys.add("starter-used");
    }
    if (parts.stream().anyMatch(PartKind::fermented)) {
      keys.add("preferment-used");
    }
    if (parts.contains(PartKind.SOAKER)) {
      keys.add("soaker-used");
    }
    if (parts.contains(PartKind.SCALD)) {
      keys.add("scald-used");
    }
    if (whole && !any(kind(Kind.SALT)) && !any(line -> line.has("salty"))) {
      keys.add("no-salt-line");
    }
    if (whole && !any(kind(Kind.YEAST)) && !starter) {
      keys.add("no-yeast-line");
    }
    return keys;
  }

  private static Predicate<WeighedLine> kind(Kind kind) {
    return line -> line.isKind(kind);
  }

  private static Predicate<WeighedLine> is(String key) {
    return line -> line.find().isPresent() && line.find().get().ingredient().key().equals(key);
  }

  private boolean any(Predicate<WeighedLine> which) {
    for (WeighedLine line : lines) {
      if (which.test(line)) {
        return true;
      }
    }
    return false;
  }

  private void when(String key, Predicate<WeighedLine> which) {
    if (any(which)) {
      keys.add(key);
    }
  }
}
