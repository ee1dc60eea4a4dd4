package crumbtrail.advice;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.knowledge.KnobKind;
import crumbtrail.knowledge.Remedy;
import crumbtrail.pantry.Pantry;
import crumbtrail.rules.RuleBase;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.SheetFields;
import crumbtrail.sheet.SheetReader;
import java.util.List;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;

/**
 * What a remedy says of sheets and of the pantry, which the check of the rules folder does not
 * know: a slip there would leave a correction out without a word.
 */
class RemediesTest {
  private static final RuleBase RULES = RuleBase.bundled();
  private static final Pantry PANTRY = RULES.pantry();

  @Test
  void every_field_that_a_remedy_writes_can_be_written() {
    BakeSheet sheet = SheetReader.read("{\"formula\": [\"500 g flour\"]}").sheet().orElseThrow();
    SoftAssertions softly = new SoftAssertions();
    for (Remedy remedy : RULES.catalogue().knowledge().remedies()) {
      remedy.set().entrySet().stream()
          .filter(
              field -> !field.getKey().equals("formula") && !field.getKey().endsWith(".covered"))
          .forEach(
              field ->
                  softly
                      .assertThat(
                          SheetFields.with(sheet, field.getKey(), field.getValue()).problems())
                      .as(remedy.cause() + ": " + field)
                      .isEmpty());
    }
    softly.assertAll();
  }

  @Test
  void every_ingredient_that_is_put_in_is_in_the_pantry() {
    SoftAssertions softly = new SoftAssertions();
    for (Remedy remedy : RULES.catalogue().knowledge().remedies()) {
      if (remedy.swap() != null) {
        picked(softly, remedy.cause(), remedy.swap().pick());
        known(softly, remedy.cause(), remedy.swap().with());
      }
    }
    for (KnobKind knob : RULES.catalogue().knowledge().knobs()) {
      knob.pick().forEach(pick -> picked(softly, knob.key(), pick));
      if (knob.adds() != null) {
        known(softly, knob.key(), knob.adds());
        assertThat(knob.pick().stream().map(Knob::picks))
            .as(knob.key() + " puts in what it picks")
            .anyMatch(picks -> picks.test(PANTRY.lookup(knob.adds()).orElseThrow()));
      }
    }
    softly.assertAll();
  }

  // Whatever it says is done about a cause must be seen by some rule, else no re-check can tell.
  @Test
  void what_a_remedy_holds_true_is_held_against_its_cause_or_turned_out_by_a_number() {
    List<String> blind =
        RULES.catalogue().knowledge().remedies().stream()
            .filter(remedy -> remedy.turn() == null && remedy.swap() == null)
            .filter(remedy -> remedy.set().isEmpty() && remedy.hold().isEmpty())
            .filter(remedy -> remedy.drop().isEmpty())
            .map(Remedy::does)
            .toList();
    assertThat(blind).isEmpty();
  }

  private static void picked(SoftAssertions softly, String who, String pick) {
    softly.assertThat(PANTRY.all()).as(who + " picks " + pick).anyMatch(Knob.picks(pick));
  }

  private static void known(SoftAssertions softly, String who, String name) {
    softly.assertThat(PANTRY.find(name)).as(who + ": " + name).isPresent();
  }
}
