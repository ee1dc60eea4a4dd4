package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Random;
import java.util.zip.Deflater;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SheetLinkTest {
  @ParameterizedTest
  @ValueSource(strings = {"", "{}", "{\"seen\": [\"crème, 50 % hydration – «flat»\"]}"})
  void a_sheet_comes_back_as_it_was(String sheet) {
    String letters = SheetLink.pack(sheet).orElseThrow();
    assertThat(letters).matches("[A-Za-z0-9_-]*");
    assertThat(SheetLink.unpack(letters)).isEqualTo(sheet);
  }

  @Test
  void a_long_sheet_gets_no_link() {
    StringBuilder noise = new StringBuilder();
    new Random(7).ints(20_000, 'a', 'z').forEach(letter -> noise.append((char) letter));
    assertThat(SheetLink.pack(noise.toString())).isEmpty();
    assertThat(SheetLink.pack("flour ".repeat(5_000))).isPresent();
  }

  @ParameterizedTest
  @ValueSource(strings = {"*", "AAAA", "____", "////"})
  void damaged_letters_are_refused(String letters) {
    assertThatThrownBy(() -> SheetLink.unpack(letters))
        .isInstanceOfSatisfying(
            Refusal.class, refusal -> assertThat(refusal.status()).isEqualTo(400));
  }

  @Test
  void letters_that_were_cut_off_are_refused() {
    String letters = SheetLink.pack("{\"seen\": [\"pale crust\", \"flat loaf\"]}").orElseThrow();
    assertThatThrownBy(() -> SheetLink.unpack(letters.substring(0, letters.length() - 6)))
        .isInstanceOf(Refusal.class);
  }

  @Test
  void more_letters_than_a_link_may_have_are_told_so() {
    assertThatThrownBy(() -> SheetLink.unpack("A".repeat(SheetLink.LONGEST + 1)))
        .isInstanceOfSatisfying(
            Refusal.class, refusal -> assertThat(refusal.status()).isEqualTo(414))
        .hasMessageContaining("too long");
  }

  // A megabyte of one letter packs into a thousand: it must not be unpacked whole.
  @Test
  void letters_that_swell_are_refused() {
    byte[] many = "a".repeat(1 << 20).getBytes(StandardCharsets.UTF_8);
    Deflater deflater = new Deflater(Deflater.BEST_COMPRESSION, true);
    deflater.setInput(many);
    deflater.finish();
    byte[] packed = new byte[4096];
    int length = deflater.deflate(packed);
    deflater.end();
    String letters = Base64.getUrlEncoder().encodeToString(java.util.Arrays.copyOf(packed, length));
    assertThat(letters.length()).isLessThan(SheetLink.LONGEST);
    assertThatThrownBy(() -> SheetLink.unpack(letters)).isInstanceOf(Refusal.class);
  }
}
