package crumbtrail.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Steps as recipes word them, and what a baker reads out of them. */
class MethodStepsTest {

  static Stream<Arguments> recipes() {
    return Stream.of(
        Arguments.of(
            "Knead 8 minutes by hand. Cover and let rise 1 hour in a warm place. Punch down, shape into"
                + " a loaf and place in a greased loaf pan. Let rise until doubled, about 45 minutes."
                + " Bake at 375 F for 35 to 40 minutes. Cool in the pan 10 minutes, then on a rack for 2"
                + " hours.",
            "kneading 8 minutes; first rise 1 hour; proof about 45 minutes; baking 35 to 40 minutes at"
                + " 375 F; cooling 2 hours"),
        Arguments.of(
            "Preheat the oven to 230 C.\nBake for 15 minutes, then reduce the heat to 200 C and bake"
                + " for another 20 minutes.",
            "baking 15 minutes at 230 C, then 20 minutes at 200 C"),
        Arguments.of(
            "Dissolve the yeast in warm water (110 F) and let stand 5 minutes until foamy. Mix in the"
                + " flour and salt. Rest 30 minutes. Knead for 10 min.",
            "kneading 10 min; rest before kneading 30 minutes"),
        Arguments.of(
            "Bulk fermentation: 4 h at 24 C, with a stretch and fold every 30 minutes for the first 2"
                + " hours.\nDivide and preshape. Rest 20 min.\nShape tightly.\nRetard overnight in the"
                + " fridge.\nBake in a preheated pot at 240 C for 20 min; remove the lid and bake 25 min"
                + " more.",
            "first rise 4 h at 24 C; rest before shaping 20 min; proof overnight at about 4 C; baking 20"
                + " min at 240 C, then 25 min at 240 C"),
        Arguments.of(
            "Preheat oven to 425F.\nPlace on a baking sheet. Bake 25 minutes or until an instant-read"
                + " thermometer reads 190 F. Check after 20 minutes.",
            "baking 25 minutes at 425F"),
        Arguments.of(
            "Mix on low speed for 4 minutes, then on medium for 8 minutes. Add the butter bit by bit and mix"
                + " 10 minutes more. First rise: 1 hour, then chill for at least 8 hours.",
            "kneading 22 min; first rise 1 hour, then at least 8 hours at about 4 C"),
        Arguments.of(
            "Bulk ferment 5 hours at 25 C. Do 4 sets of stretch and folds, 30 minutes apart, during the"
                + " first two hours. Cut in two and rest for 30-45 min. Bake at 240 C for 22 minutes.",
            "first rise 5 hours at 25 C; pieces 2; proof 30-45 min; baking 22 minutes at 240 C"),
        Arguments.of("Final proof: 1 hour at 28 C", "proof 1 hour at 28 C"),
        Arguments.of(
            "Divide the dough in half. Shape and place in two greased 9x5-inch loaf pans. Proof 40"
                + " min.",
            "pieces 2; loaf pan 9x5 inch; proof 40 min"),
        Arguments.of(
            "Divide into 12 pieces and roll into balls. Place in a 9 x 13 x 2 in baking pan.",
            "pieces 12; baking pan 9 x 13 x 2 in"),
        Arguments.of(
            "Divide into 80 g pieces. Press into a 23 cm x 13 cm tin.", "tin 23 cm x 13 cm"),
        Arguments.of(
            "Scald the milk and cool for 10 minutes. Stir in everything else and mix well.", ""),
        Arguments.of(
            "First rise\n90 minutes\nSecond rise\n45 minutes\nBaking\n30 minutes at 220 C",
            "first rise 90 minutes; proof 45 minutes; baking 30 minutes at 220 C"),
        Arguments.of(
            "Form into a ball, put in an oiled bowl and let rise 1 1/2 hours. Let rise again 30 minutes."
                + " Shape into rolls. Proof 40 minutes. Bake 15 minutes at 400 F.",
            "first rise 1 1/2 hours, then 30 minutes; proof 40 minutes; baking 15 minutes at 400 F"));
  }

  @ParameterizedTest
  @MethodSource("recipes")
  void readsTimesAndHeatFromSteps(String steps, String wanted) {
    String recipe = "Bread\n\n500 g bread flour\n310 g water\n\nMethod:\n" + steps;
    BakeProcess process = sheet(recipe, "").process();

    assertThat(String.join("; ", process.fromSteps())).isEqualTo(wanted);
  }

  @Test
  void whatTheSheetTellsComesFirst() {
    BakeProcess process =
        sheet(
                "500 g bread flour\n310 g water\nMethod:\nLet rise 1 hour. Shape. Proof 40 minutes.",
                ", \"process\": {\"bulk\": \"3 h at 20 C\"}")
            .process();

    assertThat(process.bulk())
        .singleElement()
        .extracting(s -> s.time().get().value())
        .isEqualTo(180.0);
    assertThat(process.proof())
        .singleElement()
        .extracting(s -> s.time().get().value())
        .isEqualTo(40.0);
    assertThat(process.fromSteps()).containsExactly("proof 40 minutes");
  }

  @Test
  void remarksTellWhatWasDoneAndComeBeforeTheRecipe() {
    BakeProcess process =
        sheet(
                "500 g bread flour\n310 g water\nMethod:\nLet rise 1 hour. Shape. Proof 40 minutes.",
                ", \"process\": {\"remarks\": [\"I let it rise 3 hours\", \"the recipe said bake 20"
                    + " min\", \"proved 45 min longer than usual\"]}")
            .process();

    assertThat(process.fromSteps()).containsExactly("first rise 3 hours", "proof 40 minutes");
  }

  @Test
  void stepsOfAPrefermentAndNotesOnTheBreadAreNotTheDough() {
    BakeProcess process =
        sheet(
                "Poolish:\n100 g flour\n100 g water\nLeave 12 h at 20 C\n\nDough:\n400 g flour\n210 g"
                    + " water\n\nMethod:\nKnead 6 min.\n\nNotes:\nIt was baked 50 min and rose 3 hours.",
                "")
            .process();

    assertThat(process.fromSteps()).containsExactly("kneading 6 min");
    assertThat(process.remarks()).contains("It was baked 50 min and rose 3 hours.");
    assertThat(process.steps()).contains("Knead 6 min.");
  }

  @Test
  void whatIsToBeDoneIsNoRemarkAndComesBackInTheSheetAsItWas() {
    BakeSheet read =
        sheet(
            "500 g flour\n310 g water\n\nMethod:\n1. Knead until no longer sticky.\nBake 30 min at 200"
                + " C.\nIt came out dense and I forgot the salt.\nDough too sticky",
            "");

    assertThat(read.process().remarks())
        .containsExactly("It came out dense and I forgot the salt.", "Dough too sticky");
    assertThat(read.process().steps()).contains("1. Knead until no longer sticky.");
    BakeSheet again = SheetReader.read(SheetWriter.write(read)).sheet().orElseThrow();
    assertThat(again.process().remarks()).isEqualTo(read.process().remarks());
    assertThat(again.process().steps()).containsAll(read.process().steps());
    assertThat(again.process().baking().stages()).hasSize(1);
  }

  @Test
  void aSheetWithoutRecipeIsLeftAsItIs() {
    assertThat(sheet("", ", \"seen\": [\"dense\"]").process().fromSteps()).isEqualTo(List.of());
  }

  private static BakeSheet sheet(String recipe, String more) {
    String json =
        "{\"recipe\": \"" + recipe.replace("\n", "\\n").replace("\"", "\\\"") + "\"" + more + "}";
    return SheetReader.read(json).sheet().orElseThrow();
  }
}
