package crumbtrail.picture;

import crumbtrail.knowledge.Fault;
import crumbtrail.knowledge.Knowledge;
import crumbtrail.knowledge.PictureKind;
import crumbtrail.knowledge.Places;
import crumbtrail.knowledge.SignKind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Looks whether every sign has a picture or a reason why it has none, and whether every word of the
 * pictures is known. A folder without pictures has no faults.
 */
final class PictureGuard {
  private static final String FILE = "pictures.yaml";

  private final Places places;
  private final List<Fault> faults = new ArrayList<>();

  private PictureGuard(Places places) {
    this.places = places;
  }

  static List<Fault> faults(Knowledge knowledge, Places places) {
    PictureGuard guard = new PictureGuard(places);
    if (knowledge.pictures().isEmpty()) {
      return List.of();
    }
    Set<String> signs = knowledge.signs().stream().map(SignKind::key).collect(Collectors.toSet());
    Set<String> met = new HashSet<>();
    for (PictureKind kind : knowledge.pictures()) {
      if (!signs.contains(kind.about())) {
        guard.fault(kind, "about", "there is no such sign", "Use the key of a sign");
      } else if (!met.add(kind.about())) {
        guard.fault(kind, "about", "has a picture twice", "Keep one of the two");
      }
      guard.entry(kind);
    }
    for (SignKind sign : knowledge.signs()) {
      if (!met.contains(sign.key())) {
        guard.faults.add(
            places.fault(
                "signs",
                sign.key(),
                "",
                "\"" + sign.key() + "\" has no picture",
                "Tell in " + FILE + " what it shows, or under not-drawn why it cannot be seen"));
      }
    }
    return guard.faults;
  }

  private void entry(PictureKind kind) {
    boolean why = kind.notDrawn() != null && !kind.notDrawn().isBlank();
    if (why && (kind.on() != null || !kind.shows().isEmpty())) {
      fault(kind, "not-drawn", "is drawn and not drawn", "Keep shows or not-drawn");
    }
    if (why) {
      return;
    }
    Optional<Scene> scene = Scene.of(String.valueOf(kind.on()));
    if (scene.isEmpty()) {
      fault(kind, "on", "nothing is known as \"" + kind.on() + "\"", "Use one of " + scenes());
      return;
    }
    if (kind.shape() != null && Shape.of(kind.shape()).isEmpty()) {
      fault(
          kind, "shape", "no loaf is known as \"" + kind.shape() + "\"", "Use one of " + shapes());
    }
    if (kind.shows().isEmpty()) {
      fault(kind, "", "shows nothing", "Name a trait under shows");
    }
    kind.shows().forEach((name, amount) -> trait(kind, scene.get(), name, amount));
  }

  private void trait(PictureKind kind, Scene scene, String name, Double amount) {
    Optional<Trait> trait = Trait.of(name);
    String part = "shows/" + name;
    if (trait.isEmpty() || trait.get().scene() != scene) {
      fault(
          kind,
          part,
          "no trait of a " + scene.key() + " is \"" + name + "\"",
          "Use one of " + traits(scene));
    } else if (amount == null || amount == 0 || !trait.get().knows(amount)) {
      fault(
          kind,
          part,
          "\"" + name + "\" cannot be " + amount,
          "Use a number from "
              + (trait.get().knows(-1) ? "-1" : "0")
              + " to "
              + (trait.get().knows(1) ? "1" : "0")
              + ", not 0");
    }
  }

  private static List<String> scenes() {
    return Arrays.stream(Scene.values()).map(Scene::key).toList();
  }

  private static List<String> shapes() {
    return Arrays.stream(Shape.values()).map(Shape::key).toList();
  }

  private static List<String> traits(Scene scene) {
    return Arrays.stream(Trait.values())
        .filter(trait -> trait.scene() == scene)
        .map(Trait::key)
        .toList();
  }

  private void fault(PictureKind kind, String part, String what, String remedy) {
    faults.add(
        places.fault(
            FILE, String.valueOf(kind.about()), part, "\"" + kind.about() + "\": " + what, remedy));
  }
}
