package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.picture.LoafPictures;
import crumbtrail.report.RecipeLayout;
import crumbtrail.rules.RuleBase;
import crumbtrail.sheet.Problem;
import crumbtrail.web.FormPage.Desk;
import crumbtrail.web.FormPage.Pick;
import crumbtrail.web.FormPage.PictureSign;
import crumbtrail.web.SignShelf.Moment;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FormPageTest {
  private static final LoafPictures PICTURES = LoafPictures.of(RuleBase.bundled().catalogue());
  private static final SignShelf SHELF = SignShelf.of(PICTURES);

  @Test
  void every_sign_that_can_be_seen_is_offered_once() {
    assertThat(
            SHELF.stages().stream()
                .flatMap(shelf -> shelf.signs().stream())
                .map(sign -> sign.key()))
        .hasSize(PICTURES.drawn().size())
        .doesNotHaveDuplicates()
        .allMatch(PICTURES::draws)
        .hasSizeGreaterThan(50);
  }

  @ParameterizedTest
  @CsvSource({
    "sticky-dough, DOUGH",
    "slow-rise, FIRST_RISE",
    "weak-second-rise, LAST_RISE",
    "fell-before-baking, LAST_RISE",
    "flat-loaf, SHAPE",
    "weak-oven-spring, SHAPE",
    "pale-crust, CRUST",
    "dense-crumb, CUT",
    "mould, KEPT",
    "starter-inactive, AHEAD",
    "yeast-did-not-foam, AHEAD"
  })
  void a_sign_lies_at_the_moment_at_which_it_shows(String key, Moment moment) {
    assertThat(SHELF.stages())
        .filteredOn(shelf -> shelf.moment() == moment)
        .singleElement()
        .satisfies(shelf -> assertThat(shelf.signs()).anyMatch(sign -> sign.key().equals(key)));
  }

  @Test
  void the_style_sheet_has_a_picture_for_each_sign() {
    assertThat(SHELF.styleSheet().lines())
        .hasSize(PICTURES.drawn().size())
        .contains(".look-pale-crust{background-image:url(/pictures/pale-crust.svg)}");
  }

  @Test
  void what_was_picked_stands_picked_and_its_moment_counts_it() {
    FormPage page = page(Map.of("sign-pale-crust", "saw", "sign-dark-crust", "not"), Units.METRIC);
    Pick crust = pick(page, "pick-crust");
    assertThat(crust.chosen()).isEqualTo(2);
    assertThat(crust.signs())
        .filteredOn(sign -> !sign.choice().isEmpty())
        .extracting(PictureSign::key, PictureSign::choice)
        .containsExactlyInAnyOrder(
            org.assertj.core.groups.Tuple.tuple("pale-crust", "saw"),
            org.assertj.core.groups.Tuple.tuple("dark-crust", "not"));
    assertThat(pick(page, "pick-dough").chosen()).isZero();
    assertThat(page.typed()).isTrue();
    assertThat(FormPage.blank(desk(Units.METRIC)).typed()).isFalse();
  }

  @Test
  void examples_are_in_the_units_of_the_baker() {
    assertThat(hints(page(Map.of(), Units.METRIC))).contains("21 C", "230 C", "450 g", "1600 m");
    assertThat(hints(page(Map.of(), Units.US))).contains("70 F", "450 F", "16 oz", "5200 ft");
    assertThat(hints(page(Map.of(), Units.US)))
        .noneMatch(hint -> hint.matches(".*\\d (C|g|m|cm)\\b.*"));
  }

  @Test
  void faults_stand_at_their_fields_and_what_was_typed_is_kept() {
    FormPage page =
        FormPage.refused(
            new BakeForm(Map.of("room", "warmish", "recipe", "500 g flour")),
            desk(Units.US),
            List.of(new Problem("process.room", "no temperature", "write 70 F")));
    assertThat(page.faults())
        .singleElement()
        .satisfies(f -> assertThat(f.fieldId()).isEqualTo("room"));
    assertThat(page.recipe().text()).isEqualTo("500 g flour");
  }

  @ParameterizedTest
  @ValueSource(strings = {"sign-", "sign-Pale", "sign-a--b", "signs-a", "sign-a\"b", "sign-a b"})
  void what_is_no_sign_is_not_picked(String name) {
    assertThat(PickedSign.of(name, "saw")).isEmpty();
    assertThat(new BakeForm(Map.of(name, "saw")).typed()).isEmpty();
  }

  private static List<String> hints(FormPage page) {
    return page.sections().stream()
        .flatMap(section -> section.rows().stream())
        .flatMap(List::stream)
        .map(FormPage.Input::hint)
        .toList();
  }

  private static Pick pick(FormPage page, String id) {
    return page.picks().stream().filter(pick -> pick.id().equals(id)).findFirst().orElseThrow();
  }

  private static FormPage page(Map<String, String> typed, Units units) {
    return FormPage.kept(new BakeForm(typed), desk(units));
  }

  private static Desk desk(Units units) {
    return new Desk(Texts.english(), units, SHELF, RecipeLayout.EMPTY);
  }
}
