package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FormBodyTest {

  @Test
  void readsWhatABrowserPosts() {
    assertThat(read("style=white+tin+loaf&recipe=500+g+flour%0D%0A1%C2%BD+tsp+salt&&x"))
        .hasValueSatisfying(
            fields ->
                assertThat(fields)
                    .containsOnly(
                        entry("style", "white tin loaf"),
                        entry("recipe", "500 g flour\r\n1½ tsp salt"),
                        entry("x", "")));
  }

  @Test
  void keepsTheLastOfTwo() {
    assertThat(read("a=1&a=2=3")).contains(Map.of("a", "2=3"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"a=%", "a=%4", "a=%zz", "a=%C2", "%=a", "a=%C0%AF", "a=%&b=1"})
  void refusesWhatIsBroken(String body) {
    assertThat(read(body)).isEmpty();
  }

  @Property(tries = 500)
  void readsBackWhateverIsEncoded(@ForAll String name, @ForAll String value) {
    // Half of a surrogate pair cannot be sent in UTF-8; the encoder makes a question mark of it.
    String body = encode(name) + "=" + encode(value);
    String sentName = new String(name.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8);
    String sentValue = new String(value.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8);
    assertThat(read(body)).contains(Map.of(sentName, sentValue));
  }

  @Property(tries = 500)
  void neverThrows(@ForAll byte[] body) {
    assertThat(FormBody.read(body)).isNotNull();
  }

  private static Optional<Map<String, String>> read(String body) {
    return FormBody.read(body.getBytes(StandardCharsets.UTF_8));
  }

  private static String encode(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }
}
