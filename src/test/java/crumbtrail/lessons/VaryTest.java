package crumbtrail.lessons;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.lessons.Variation.Named;
import crumbtrail.lessons.Variation.Point;
import crumbtrail.lessons.Variation.Tipping;
import crumbtrail.rules.RuleBase;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.SheetReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Turning a knob of a sound loaf makes the fault of the trade, and nothing where it stands. */
class VaryTest {
  private static final Vary VARY = new Vary(RuleBase.bundled());

  @Test
  void salt_from_nought_to_four_percent() {
    Variation salt = along("healthy-tin-loaf", "salt", "0..4%");

    assertThat(salt.dial().own()).isBetween(1.5, 2.2);
    assertThat(salt.turns()).isTrue();
    assertThat(salt.causes())
        .extracting(Named::key)
        .contains("salt-omitted", "salt-too-low", "salt-too-high");
    assertThat(salt.readings().get(0).name()).isEqualTo("salt");
    assertThat(salt.points()).filteredOn(Point::own).hasSize(1);
    assertThat(salt.points()).filteredOn(Point::own).first().extracting(Point::lead).isNull();
    assertThat(salt.points().get(0).lead()).isEqualTo("salt-omitted");
    assertThat(salt.signs()).isNotEmpty();
    for (int width : List.of(60, 80, 120)) {
      assertThat(VariationText.of(salt, width).lines())
          .allMatch(line -> line.length() <= width)
          .anyMatch(line -> line.length() > width - 20);
    }
  }

  /** Just below a tipping point things are as below it, just above as above. */
  @Test
  void a_tipping_point_lies_where_the_lead_changes() {
    Variation proof = along("healthy-tin-loaf", "proof-time", "60..240min");
    Tipping first =
        proof.tipping().stream().filter(one -> one.kind().equals("lead")).findFirst().orElseThrow();
    assertThat(first.from()).isNull();
    assertThat(first.to()).isEqualTo("over-proofed");

    Turn around = new Turn(VARY.knob("proof-time").orElseThrow(), first.at() - 3, first.at() + 3);
    Variation close = VARY.along(sheet("healthy-tin-loaf"), around, 2);
    assertThat(close.points().get(0).lead()).isNull();
    assertThat(close.points().get(1).lead()).isEqualTo("over-proofed");
  }

  @Test
  void the_signs_of_the_sheet_are_put_aside() {
    BakeSheet failed = sheet("over-proofed-tin-loaf");
    Turn turn = turn("salt", "1..3%");
    assertThat(VARY.along(failed, turn, 3)).isEqualTo(VARY.along(failed.unseen(), turn, 3));
  }

  @Test
  void a_knob_that_the_sheet_has_not_says_so() {
    Variation fridge = along("healthy-tin-loaf", "fridge-time", "1..48h");
    assertThat(fridge.turns()).isFalse();
    assertThat(VariationText.of(fridge)).contains("changes nothing");
  }

  @Test
  void two_knobs_make_a_board_with_the_sheet_on_sound_ground() {
    Board board =
        VARY.over(
            sheet("healthy-tin-loaf"),
            turn("oven", "150..280C"),
            turn("bake-time", "15..60min"),
            Vary.AS_USUAL);
    assertThat(board.cells()).hasSize(board.downAt().size());
    assertThat(board.cells()).allSatisfy(row -> assertThat(row).hasSameSizeAs(board.acrossAt()));
    assertThat(board.cells().stream().flatMap(row -> row.stream()))
        .filteredOn(Board.Cell::own)
        .hasSize(1)
        .first()
        .extracting(Board.Cell::lead)
        .isNull();
    assertThat(board.causes()).extracting(Named::key).contains("oven-too-cool", "over-baked");
    assertThat(VariationText.of(board, 80)).contains("<");
  }

  private static Variation along(String name, String knob, String range) {
    return VARY.along(sheet(name), turn(knob, range), Vary.AS_USUAL);
  }

  private static Turn turn(String knob, String range) {
    return Turn.read(VARY.knob(knob).orElseThrow(), range).turn().orElseThrow();
  }

  private static BakeSheet sheet(String name) {
    try {
      return SheetReader.read(Files.readString(Path.of("cases", name + ".json")))
          .sheet()
          .orElseThrow();
    } catch (IOException fault) {
      throw new IllegalStateException(fault);
    }
  }
}
