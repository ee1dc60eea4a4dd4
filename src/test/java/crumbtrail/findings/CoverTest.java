package crumbtrail.findings;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.knowledge.ActingTogether;
import crumbtrail.knowledge.Cause;
import crumbtrail.knowledge.Prior;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * Each cause taken into the story costs 12 decibans less its log-odds, and at least 6. The sums
 * beside the tests are worked by hand.
 */
class CoverTest {

  @Test
  void one_cause_that_explains_all_beats_two_that_are_as_likely() {
    // 12 - 4 = 8 against 8 + 8.
    assertThat(
            chosen(
                List.of(
                    finding("left", 4, "dense"),
                    finding("right", 4, "pale"),
                    finding("both", 4, "dense", "pale")),
                Set.of("dense", "pale")))
        .containsExactly("both");
  }

  @Test
  void two_likely_causes_beat_one_far_fetched_that_explains_all() {
    // 6 + 6 = 12 against 12 + 9 = 21.
    assertThat(
            chosen(
                List.of(
                    finding("left", 11, "dense"),
                    finding("right", 10, "pale"),
                    finding("far-fetched", -9, "dense", "pale")),
                Set.of("dense", "pale")))
        .containsExactly("left", "right");
  }

  @Test
  void where_the_two_meet_the_cheaper_story_wins() {
    List<Finding> two = List.of(finding("left", 6, "dense"), finding("right", 5, "pale"));
    // 6 + 7 = 13 for the two. One cause at 0 costs 12, one at -2 costs 14.
    assertThat(chosen(with(two, finding("one", 0, "dense", "pale")), Set.of("dense", "pale")))
        .containsExactly("one");
    assertThat(chosen(with(two, finding("one", -2, "dense", "pale")), Set.of("dense", "pale")))
        .containsExactly("left", "right");
  }

  /** Beyond four to one likelier is not cheaper: 6 against 6 + 6. */
  @Test
  void one_cause_more_likely_than_not_beats_two_that_are_all_but_certain() {
    assertThat(
            chosen(
                List.of(
                    finding("left", 30, "dense"),
                    finding("right", 25, "pale"),
                    finding("both", 1, "dense", "pale")),
                Set.of("dense", "pale")))
        .containsExactly("both");
  }

  @Test
  void of_sets_that_cost_the_same_the_likelier_is_taken() {
    assertThat(
            chosen(
                List.of(
                    finding("likeliest", 20, "dense"),
                    finding("likelier", 9, "pale"),
                    finding("likely", 8, "pale")),
                Set.of("dense", "pale")))
        .containsExactly("likeliest", "likelier");
  }

  /** Without the pair: 6 + 8 against 6 + 9. With it: 15 - 3 = 12. */
  @Test
  void causes_that_act_together_are_taken_before_a_little_likelier_strangers() {
    List<Finding> ranked =
        List.of(
            finding("warm", 7, "dense"),
            finding("stranger", 4, "pale"),
            finding("long", 3, "pale"));
    List<ActingTogether> pair =
        List.of(new ActingTogether("pair", List.of("long", "warm"), "Why.", "common practice"));

    assertThat(chosen(ranked, Set.of("dense", "pale"))).containsExactly("warm", "stranger");
    assertThat(Cover.of(ranked, Set.of("dense", "pale"), pair))
        .extracting(one -> one.cause().key())
        .containsExactly("warm", "long");
  }

  /**
   * Scalded yeast is dead yeast: what the one explains the other does, and both are one too many.
   */
  @Test
  void a_finer_cause_accounts_for_what_its_coarser_one_does_and_never_stands_beside_it() {
    List<Finding> ranked =
        List.of(
            finding("scalded", 8, List.of("dead"), "dense"),
            finding("dead", 6, List.of(), "pale"),
            finding("third", 2, List.of(), "pale"));

    assertThat(chosen(ranked, Set.of("dense", "pale"))).containsExactly("scalded");
  }

  @Test
  void a_cause_that_brings_nothing_new_is_left_out() {
    assertThat(
            chosen(
                List.of(
                    finding("first", 20, "dense"),
                    finding("echo", 19, "dense"),
                    finding("other", 0, "pale")),
                Set.of("dense", "pale")))
        .containsExactly("first", "other");
  }

  @Test
  void without_signs_the_likeliest_stands_alone_and_without_causes_nobody_does() {
    assertThat(chosen(List.of(finding("first", 3), finding("other", 2)), Set.of()))
        .containsExactly("first");
    assertThat(chosen(List.of(), Set.of())).isEmpty();
  }

  @Test
  void a_cause_far_down_the_list_is_reached_if_it_alone_explains_a_sign() {
    List<Finding> ranked = new ArrayList<>();
    for (int rank = 0; rank < 40; rank++) {
      ranked.add(finding("cause-" + rank, 20 - rank, "dense"));
    }
    ranked.add(finding("last", -25, "rare"));

    assertThat(chosen(ranked, Set.of("dense", "rare"))).containsExactly("cause-0", "last");
  }

  @Test
  void more_signs_than_four_causes_carry_are_still_all_accounted_for() {
    List<Finding> ranked = new ArrayList<>();
    for (int rank = 0; rank < 7; rank++) {
      ranked.add(finding("cause-" + rank, 10 - rank, "sign-" + rank));
    }

    assertThat(
            chosen(
                ranked,
                Set.of("sign-0", "sign-1", "sign-2", "sign-3", "sign-4", "sign-5", "sign-6")))
        .containsExactly(
            "cause-0", "cause-1", "cause-2", "cause-3", "cause-4", "cause-5", "cause-6");
  }

  private static List<String> chosen(List<Finding> ranked, Set<String> signs) {
    return Cover.of(ranked, signs, List.of()).stream().map(one -> one.cause().key()).toList();
  }

  private static List<Finding> with(List<Finding> findings, Finding more) {
    List<Finding> all = new ArrayList<>(findings);
    all.add(more);
    return all;
  }

  private static Finding finding(String key, double decibans, String... explains) {
    return finding(key, decibans, List.of(), explains);
  }

  private static Finding finding(
      String key, double decibans, List<String> refines, String... explains) {
    Cause cause =
        new Cause(
            key, key, "proof", Prior.COMMON, refines, List.of(), "", "", "", "", List.of("x"));
    return new Finding(cause, decibans, List.of(), List.of(explains));
  }
}
